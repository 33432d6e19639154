package evenfall.report.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Lines that somebody types while a command goes on. Only what has come already is ever read, so nothing waits, whatever
 * standard input is: a terminal, a pipe, an empty device or closed.
 */
final class StandardLines {

    private static final int LONGEST = 1000;

    private final InputStream in;
    private final BooleanSupplier mayRead;
    private final byte[] line = new byte[LONGEST];
    private final Deque<String> lines = new ArrayDeque<>();
    private int length;
    private boolean open = true;

    /**
     * Lines of a stream.
     *
     * @param mayRead whether it may be read at the moment: the system stops a program that reads a terminal whose
     *     keyboard belongs to another
     */
    StandardLines(InputStream in, BooleanSupplier mayRead) {
        this.in = in;
        this.mayRead = mayRead;
    }

    /** The next line, blank ones left out; empty while none has come. */
    Optional<String> next() {
        if (open && lines.isEmpty()) {
            read();
        }
        return Optional.ofNullable(lines.poll());
    }

    private void read() {
        try {
            int ready = in.available();
            if (ready <= 0 || !mayRead.getAsBoolean()) {
                return;
            }
            byte[] bytes = new byte[Math.min(ready, 1 << 16)];
            int count = in.read(bytes);
            open = count >= 0;
            for (int i = 0; i < count; i++) {
                take(bytes[i]);
            }
        } catch (IOException e) {
            open = false;
        }
    }

    private void take(byte next) {
        if (next != '\n' && next != '\r') {
            if (length < LONGEST) {
                line[length++] = next;
            }
            return;
        }
        String text = new String(line, 0, length, charset()).strip();
        length = 0;
        if (!text.isEmpty()) {
            lines.add(text);
        }
    }

    /** What the system's terminals write in. */
    private static Charset charset() {
        @Nullable String named = System.getProperty("native.encoding");
        return named != null && Charset.isSupported(named) ? Charset.forName(named) : Charset.defaultCharset();
    }
}
