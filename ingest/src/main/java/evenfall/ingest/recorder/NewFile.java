package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Makes the files of a recording; a test makes some that fail as a full disk does. */
@FunctionalInterface
interface NewFile {

    /** On the disk; never over a file that is there. */
    NewFile ON_DISK = file -> FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    FileChannel make(Path file) throws IOException;
}
