package evenfall.ingest.serial;

/**
 * How a link stands.
 *
 * @param name the port as the person named it
 * @param path where it is open now, or was last
 * @param there whether it is open
 * @param losses how often it was lost
 * @param bytes how many bytes came, noise included
 * @param speed bits a second: the one asked for or found, or the one tried now
 * @param search how far it is known that this speed is right
 * @param trouble why it could not be opened again, one sentence; empty if nothing is in the way but its absence
 */
public record LinkState(
        String name, String path, boolean there, int losses, long bytes, int speed, Search search, String trouble) {

    /** How far the right speed is known. */
    public enum Search {
        /** It was said. */
        SAID,
        /** There is no such thing here. */
        NONE,
        /** It is looked for. */
        GOING_ON,
        /** It is looked for, and something came at every usual speed that was readable at none. */
        IN_VAIN,
        /** It was found. */
        FOUND
    }
}
