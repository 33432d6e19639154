package evenfall.ingest.recorder;

import java.util.Locale;

/** What happened to a port while it was recorded. A file without an end was cut short. */
enum Remark {
    /** The recording was ended as it should be. */
    END,
    /** The port was unplugged or went away. */
    GONE,
    /** The port is there again. */
    BACK;

    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
