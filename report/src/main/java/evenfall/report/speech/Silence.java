package evenfall.report.speech;

/**
 * Speaks to nobody.
 *
 * @param unheard why, though it was wished, in a sentence; empty where it was not wished
 */
record Silence(String unheard) implements Speech {

    @Override
    public void say(String sentence) {}

    @Override
    public void sayAtOnce(String sentence) {}

    @Override
    public void hush() {}

    @Override
    public void close() {}
}
