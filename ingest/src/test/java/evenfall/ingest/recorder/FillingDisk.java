package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/** A disk with room for so many bytes: a write beyond takes what fits, the next one fails as Linux says it. */
final class FillingDisk implements NewFile {

    private long room;

    FillingDisk(long room) {
        this.room = room;
    }

    @Override
    public FileChannel make(Path file) throws IOException {
        return new ChannelOf(NewFile.ON_DISK.make(file)) {

            @Override
            public int write(ByteBuffer bytes) throws IOException {
                int limit = bytes.limit();
                bytes.limit(bytes.position() + take(bytes.remaining()));
                int written = super.write(bytes);
                bytes.limit(limit);
                return written;
            }
        };
    }

    private synchronized int take(int wanted) throws IOException {
        if (room == 0) {
            throw new IOException("No space left on device");
        }
        int taken = (int) Math.min(room, wanted);
        room -= taken;
        return taken;
    }
}
