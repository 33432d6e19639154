package evenfall.report.speech;

/** Somebody who speaks, or does not. */
public interface Speech extends AutoCloseable {

    /** Why nothing is heard though it was wished, in a sentence; empty where it is heard or was not wished. */
    default String unheard() {
        return "";
    }

    /** Speaks a sentence as soon as what is being spoken is over; one that still waits is dropped for it. Returns at once. */
    void say(String sentence);

    /** The same, but breaks off what is being spoken. */
    void sayAtOnce(String sentence);

    /** Breaks off what is being spoken and drops what waits. */
    void hush();

    /** Lets the last sentence come to its end, within its time, and speaks no more. */
    @Override
    void close();
}
