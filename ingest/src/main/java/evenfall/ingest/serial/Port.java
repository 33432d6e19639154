package evenfall.ingest.serial;

import java.io.Closeable;
import java.io.IOException;

/** An open line to sensors. Reading and writing may go on in two threads; closing may come from a third. */
public interface Port extends Closeable {

    /** What {@link #read} gives once the port is gone. */
    int GONE = -1;

    /** The port as a person names it. */
    String name();

    /**
     * Waits for bytes, but no longer than about 0.3 s.
     *
     * @param into takes the bytes from its beginning
     * @return how many came, 0 if none did, {@link #GONE} while the port is unplugged or once it is closed
     */
    int read(byte[] into);

    /**
     * Writes all of {@code bytes[from..to)}.
     *
     * @throws IOException if the port is gone, with a sentence for a person
     */
    void write(byte[] bytes, int from, int to) throws IOException;

    /**
     * Changes the speed of the line.
     *
     * @param baud bits a second
     * @return false where there is no such thing: any speed is right
     */
    boolean speed(int baud);

    /** Closes the port; once is enough, more does no harm. */
    @Override
    void close();
}
