package evenfall.ingest.recorder;

import java.util.Locale;

/** How a port's file ended. A file without either was cut short. */
enum Remark {
    /** The recording was ended as it should be. */
    END,
    /** The port was unplugged or went away. */
    GONE;

    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
