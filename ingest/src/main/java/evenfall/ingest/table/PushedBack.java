package evenfall.ingest.table;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** A stream whose first bytes can be looked at before they are read. */
final class PushedBack extends InputStream {

    private static final int LOOK_AHEAD = 4096;

    private final InputStream in;
    private final byte[] head;
    private int position;

    PushedBack(InputStream in) throws IOException {
        this.in = in;
        this.head = in.readNBytes(LOOK_AHEAD);
    }

    /** The first bytes, at most 4096. */
    byte[] head() {
        return Arrays.copyOf(head, head.length);
    }

    /** Whether the stream starts with these bytes. */
    boolean startsWith(int... magic) {
        if (head.length < magic.length) {
            return false;
        }
        for (int i = 0; i < magic.length; i++) {
            if ((head[i] & 0xFF) != magic[i]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int read() throws IOException {
        return position < head.length ? head[position++] & 0xFF : in.read();
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (position < head.length) {
            int n = Math.min(length, head.length - position);
            System.arraycopy(head, position, into, offset, n);
            position += n;
            return n;
        }
        return in.read(into, offset, length);
    }

    @Override
    public int available() throws IOException {
        return position < head.length ? head.length - position : in.available();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
