package evenfall.ingest.table;

import evenfall.ingest.progress.Progress;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Counts the bytes of a file as they pass and tells how far it has been read. */
final class CountingInput extends FilterInputStream {

    private static final long STEPS = 200;

    private final long size;
    private final String stage;
    private final Progress progress;
    private long passed;
    private long nextTold;

    CountingInput(InputStream in, long size, String stage, Progress progress) {
        super(in);
        this.size = Math.max(1, size);
        this.stage = stage;
        this.progress = progress;
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        tell(value < 0 ? 0 : 1);
        return value;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int n = super.read(into, offset, length);
        tell(n);
        return n;
    }

    private void tell(int n) {
        passed += Math.max(0, n);
        if (passed >= nextTold) {
            nextTold = passed + size / STEPS + 1;
            progress.at(stage, Math.min(1, (double) passed / size));
        }
    }
}
