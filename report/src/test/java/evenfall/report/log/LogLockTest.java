package evenfall.report.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code TwoProgramsTest} and {@code KilledLogTest} do not show. */
class LogLockTest {

    @TempDir
    private Path folder;

    /** A recording that ends because the disk is full must still be analysed. */
    @Test
    void aDiskThatTakesNotOneByteCanBeLocked() throws Exception {
        try (SmallDisk disk = new SmallDisk(folder.resolve("disk"), "1m")) {
            AthleteFolder athlete = TrainingLog.open(folder.resolve("disk/log")).athlete("ada");
            athlete.locked(sentence -> {}, () -> 0);
            disk.fill(0);

            assertThat(athlete.locked(sentence -> {}, () -> "done")).isEqualTo("done");

            Files.delete(folder.resolve("disk/full"));
            assertThat(athlete.locked(sentence -> {}, () -> "done")).isEqualTo("done");
        }
    }
}
