package evenfall.report.log;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Files and folders that only their owner may read: a log holds health data. Where the system keeps no such
 * permissions, the folder's own settings hold.
 */
final class OwnerOnly {

    private static final String FOLDER = "rwx------";
    private static final String FILE = "rw-------";

    private OwnerOnly() {}

    /** Makes a folder and those above it that are missing. */
    static void makeFolders(Path folder) throws IOException {
        List<Path> made = new ArrayList<>();
        for (Path each = folder.toAbsolutePath(); each != null && !Files.exists(each); each = each.getParent()) {
            made.add(each);
        }
        Files.createDirectories(folder, attributes(folder, FOLDER));
        for (Path each : made) {
            WholeFile.syncFolder(each.getParent());
        }
    }

    /** Opens a file for writing; a new one is its owner's alone. */
    static OutputStream open(Path file, Set<? extends OpenOption> options) throws IOException {
        return Channels.newOutputStream(Files.newByteChannel(file, options, attributes(file, FILE)));
    }

    /** Opens a file as a channel; a new one is its owner's alone. */
    static FileChannel channel(Path file, Set<? extends OpenOption> options) throws IOException {
        return FileChannel.open(file, options, attributes(file, FILE));
    }

    private static FileAttribute<?>[] attributes(Path path, String permissions) {
        if (!path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return new FileAttribute<?>[0];
        }
        Set<PosixFilePermission> set = PosixFilePermissions.fromString(permissions);
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(set)};
    }
}
