package evenfall.report.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.jspecify.annotations.Nullable;

/** Standard output that remembers why a write failed, which a print stream would swallow. */
final class StandardOutput extends OutputStream {

    private final FileOutputStream out = new FileOutputStream(FileDescriptor.out);
    private @Nullable IOException failure;

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        try {
            out.write(bytes, offset, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    /** Why the last write failed, or null. */
    @Nullable IOException failure() {
        return failure;
    }
}
