package evenfall.report.round;

import java.net.URI;

/** What a round needs of the machine besides a screen. */
public interface Surroundings {

    /** Sounds a tone; returns at once. */
    void sound(Tone tone);

    /** Shows a page; returns at once. */
    void browse(URI page);
}
