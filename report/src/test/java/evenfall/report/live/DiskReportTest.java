package evenfall.report.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.ingest.recorder.DiskFullException;
import evenfall.report.log.SmallDisk;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * On real disks of a few megabytes. The fastest that is reckoned with is 2 x 92 160 bytes a second, so five minutes are 55 MB,
 * six 66 MB and three hours 2 GB.
 */
class DiskReportTest {

    private static final double SLOW = 20_000;

    @TempDir
    private Path folder;

    @Test
    void onADiskWithoutRoomNothingIsBegun() throws Exception {
        Path at = folder.resolve("disk");
        try (SmallDisk disk = new SmallDisk(at, "70m")) {
            disk.fill(54_000_000);

            assertThatThrownBy(() -> new DiskReport(at).before())
                    .isInstanceOf(DiskFullException.class)
                    .hasMessageContaining(at.toString())
                    .hasMessageContaining("make room and start again");
        }
    }

    @Test
    void lessThanThreeHoursIsSaidBefore_lessThanTenAndTwoMinutesMeanwhile() throws Exception {
        Path at = folder.resolve("disk");
        try (SmallDisk disk = new SmallDisk(at, "70m")) {
            DiskReport report = new DiskReport(at);
            assertThat(report.before())
                    .hasValueSatisfying(said -> assertThat(said).contains("has room for 6 minutes of the fastest"));
            assertThat(report.during(10, 200_000)).isEmpty();

            disk.fill((long) (8 * 60 * SLOW));
            assertThat(report.during(14, 280_000)).as("looked at every 5 s").isEmpty();
            assertThat(report.during(15, 300_000))
                    .hasValue("The disk has room for 8 more minutes of this recording; make room now.");
            assertThat(report.during(20, 400_000)).as("said once").isEmpty();

            disk.fill((long) (60 * SLOW) - 8192);
            assertThat(report.during(25, 500_000))
                    .hasValue("The disk has room for less than a minute of this recording; make room now.");
            assertThat(report.during(30, 600_000)).isEmpty();
        }
    }

    /** The same room is shorter for those that send faster. */
    @Test
    void timeIsCountedByWhatCame() throws Exception {
        Path at = folder.resolve("disk");
        try (SmallDisk disk = new SmallDisk(at, "70m")) {
            disk.fill(30 << 20);
            assertThat(new DiskReport(at).during(100, 2_000_000)).isEmpty();
            assertThat(new DiskReport(at).during(100, 10_000_000))
                    .hasValue("The disk has room for 6 more minutes of this recording; make room now.");
        }
    }
}
