package evenfall.report.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.Port;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A rehearsal's port must hand over what would be sent, no more and no less, and lose what is said while unplugged. */
final class RehearsalBenchTest {

    private static final int SAMPLES = 1000;
    private static final double RATE_HZ = 100;

    private final Steps steps = new Steps();
    private final RehearsalBench bench = new RehearsalBench(new Playback(recording()), () -> steps);

    @Test
    void handsOverWhatWouldBeSent() {
        Port port = bench.open(RehearsalBench.PATH, 115_200);
        StringBuilder heard = new StringBuilder();
        steps.nowS = 0.995;
        read(port, heard);
        assertThat(heard.toString().lines()).hasSize(100);
        assertThat(bench.ended()).isFalse();
        steps.nowS = 1000;
        read(port, heard);
        assertThat(heard.toString())
                .isEqualTo(new String(new Playback(recording()).due(1000, 2 * SAMPLES), StandardCharsets.US_ASCII));
        assertThat(bench.ended()).isTrue();
    }

    @Test
    void losesWhatIsSaidWhileUnplugged() {
        Port port = bench.open(RehearsalBench.PATH, 115_200);
        StringBuilder heard = new StringBuilder();
        steps.nowS = 1.995;
        read(port, heard);
        bench.unplug();
        assertThat(port.read(new byte[10])).isEqualTo(Port.GONE);
        assertThat(bench.present()).isEmpty();
        assertThatThrownBy(() -> bench.open(RehearsalBench.PATH, 115_200)).isInstanceOf(UnusableInputException.class);
        steps.nowS = 4.995;
        bench.plug();
        Port again = bench.open(RehearsalBench.PATH, 115_200);
        steps.nowS = 1000;
        read(again, heard);
        assertThat(heard.toString().lines()).hasSize(SAMPLES - 300);
    }

    @Test
    void beginsWhenItIsOpened() {
        assertThat(steps.asked).isZero();
        assertThatThrownBy(() -> bench.open("COM7", 115_200)).hasMessageContaining("COM7");
        assertThat(bench.present()).hasSize(1);
    }

    private static void read(Port port, StringBuilder heard) {
        byte[] some = new byte[50];
        for (int count = port.read(some); count > 0; count = port.read(some)) {
            heard.append(new String(some, 0, count, StandardCharsets.US_ASCII));
        }
    }

    private static Recording recording() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < SAMPLES; i++) {
            builder.add(i / RATE_HZ, i % 7, 0, 9.8, 0, i % 3, 0);
        }
        return new Recording(new SensorRecording("test", builder.build(), null, List.of()), null);
    }

    /** Time stands where it is put. */
    private static final class Steps implements Pace {

        private double nowS;
        private int asked;

        @Override
        public double nowS() {
            asked++;
            return nowS;
        }

        @Override
        public void rest() {}
    }
}
