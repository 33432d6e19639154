package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StandardLinesTest {

    @Test
    void aLineComesWhenItIsWhole() throws IOException {
        PipedOutputStream typed = new PipedOutputStream();
        StandardLines lines = new StandardLines(new PipedInputStream(typed), () -> true);

        assertThat(lines.next()).isEmpty();
        typed.write("go".getBytes(StandardCharsets.US_ASCII));
        assertThat(lines.next()).isEmpty();
        typed.write(" on\r\n\n  \nmira\nhalf".getBytes(StandardCharsets.US_ASCII));
        assertThat(lines.next()).contains("go on");
        assertThat(lines.next()).contains("mira");
        assertThat(lines.next()).isEmpty();
    }

    @Test
    void nothingAndTheEndAreSilence() {
        StandardLines none = new StandardLines(InputStream.nullInputStream(), () -> true);
        assertThat(none.next()).isEmpty();

        StandardLines one = new StandardLines(new ByteArrayInputStream(new byte[] {'x', '\n'}), () -> true);
        assertThat(one.next()).contains("x");
        assertThat(one.next()).isEmpty();
    }

    @Test
    void aClosedStreamIsSilence() {
        StandardLines lines = new StandardLines(
                new InputStream() {
                    @Override
                    public int read() throws IOException {
                        throw new IOException("closed");
                    }

                    @Override
                    public int read(byte[] into, int from, int length) throws IOException {
                        throw new IOException("closed");
                    }

                    @Override
                    public int available() throws IOException {
                        throw new IOException("closed");
                    }
                },
                () -> true);

        assertThat(lines.next()).isEmpty();
        assertThat(lines.next()).isEmpty();
    }

    /** Reading it would stop the program. */
    @Test
    void aKeyboardThatBelongsToAnotherIsNotRead() {
        ByteArrayInputStream typed = new ByteArrayInputStream(new byte[] {'x', '\n'});
        StandardLines lines = new StandardLines(typed, () -> false);

        assertThat(lines.next()).isEmpty();
        assertThat(typed.available()).isEqualTo(2);
    }

    /** A stream that would wait is never asked for more than it has. */
    @Test
    void rubbishWithoutALineNeitherWaitsNorGrows() {
        StandardLines lines = new StandardLines(new ByteArrayInputStream(new byte[1 << 20]), () -> true);

        for (int i = 0; i < 20; i++) {
            assertThat(lines.next()).isEmpty();
        }
    }
}
