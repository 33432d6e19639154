package evenfall.ingest.serial;

import java.io.IOException;

/**
 * A port that is lent: whoever has it may close it as often as they like, and it stays open for the next.
 *
 * @param lender the port
 */
public record LentPort(Port lender) implements Port {

    @Override
    public String name() {
        return lender.name();
    }

    @Override
    public int read(byte[] into) {
        return lender.read(into);
    }

    @Override
    public void write(byte[] bytes, int from, int to) throws IOException {
        lender.write(bytes, from, to);
    }

    @Override
    public boolean speed(int baud) {
        return lender.speed(baud);
    }

    @Override
    public void close() {}
}
