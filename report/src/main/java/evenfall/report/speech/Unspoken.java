package evenfall.report.speech;

/**
 * Speaks to nobody.
 *
 * @param unheard why, though it was wished, in a sentence; empty where it was not wished
 */
public record Unspoken(String unheard) implements Speech {

    /** As was wished. */
    public static final Unspoken WISHED = new Unspoken("");

    @Override
    public void say(String sentence) {}

    @Override
    public void sayAtOnce(String sentence) {}

    @Override
    public void hush() {}

    @Override
    public void close() {}
}
