package evenfall.report.speech;

/** Somebody who speaks, or does not. */
public interface Speech extends AutoCloseable {

    /** Speaks to nobody. */
    Speech SILENT = new Speech() {
        @Override
        public void say(String sentence) {}

        @Override
        public void sayAtOnce(String sentence) {}

        @Override
        public void hush() {}

        @Override
        public void close() {}
    };

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
