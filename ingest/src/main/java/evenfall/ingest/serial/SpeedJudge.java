package evenfall.ingest.serial;

/** Says whether what comes from a port makes sense; asked piece by piece. */
@FunctionalInterface
public interface SpeedJudge {

    /** Whether something readable has come by the end of {@code bytes[0..count)}, which follow those asked about before. */
    boolean readable(byte[] bytes, int count);
}
