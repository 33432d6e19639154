package evenfall.ingest.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** UTF-16 bytes handed on as UTF-8; what is no character becomes a replacement character. */
final class Utf16Input extends InputStream {

    private final Reader reader;
    private final char[] characters = new char[8192];
    private byte[] bytes = new byte[0];
    private int position;

    Utf16Input(InputStream in, Charset charset) {
        this.reader = new InputStreamReader(in, charset);
    }

    @Override
    public int read() throws IOException {
        return fill() ? bytes[position++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (!fill()) {
            return -1;
        }
        int n = Math.min(length, bytes.length - position);
        System.arraycopy(bytes, position, into, offset, n);
        position += n;
        return n;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }

    private boolean fill() throws IOException {
        while (position >= bytes.length) {
            int n = reader.read(characters, 0, characters.length - 1);
            if (n < 0) {
                return false;
            }
            if (n > 0 && Character.isHighSurrogate(characters[n - 1])) {
                int low = reader.read();
                if (low >= 0) {
                    characters[n++] = (char) low;
                }
            }
            bytes = new String(characters, 0, n).getBytes(StandardCharsets.UTF_8);
            position = 0;
        }
        return true;
    }
}
