package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskRoomTest {

    @TempDir
    private Path folder;

    /** Source: what the file system itself says is usable; others may write meanwhile. */
    @Test
    void minutesAreBytesByRate() throws IOException {
        double bytes = Files.getFileStore(folder).getUsableSpace();

        assertThat(DiskRoom.minutes(folder, 1e6)).isCloseTo(bytes / 6e7, Percentage.withPercentage(5));
    }

    @Test
    void aFolderThatIsNotThereYetHasTheRoomOfItsParents() throws IOException {
        assertThat(DiskRoom.minutes(folder.resolve("log/ada/sessions"), 1e6))
                .isCloseTo(DiskRoom.minutes(folder, 1e6), Percentage.withPercentage(5));
    }
}
