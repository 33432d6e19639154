package evenfall.ingest.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.ingest.recording.UnusableInputException;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Through a pair of pseudo-terminals. Those have no line speed; that they keep every byte says nothing of a cable. */
class SerialPortsTest {

    private static final long SEED = 4;

    @TempDir
    private Path folder;

    @Test
    void bytesArriveAsTheyWereSent() throws Exception {
        byte[] sent = new byte[200_000];
        new SplittableRandom(SEED).nextBytes(sent);
        try (PtyPair pair = new PtyPair(folder);
                Port from = SerialPorts.open(pair.left, SerialPorts.USUAL_BAUD);
                Port to = SerialPorts.open(pair.right, 921_600)) {
            ByteArrayOutputStream received = new ByteArrayOutputStream();
            Thread reader = new Thread(() -> {
                byte[] buffer = new byte[4096];
                while (received.size() < sent.length) {
                    int count = to.read(buffer);
                    if (count < 0) {
                        return;
                    }
                    received.write(buffer, 0, count);
                }
            });
            reader.start();
            for (int at = 0; at < sent.length; at += 1000) {
                from.write(sent, at, at + 1000);
            }
            reader.join(20_000);

            assertThat(received.toByteArray()).as("seed %d", SEED).isEqualTo(sent);
        }
    }

    @Test
    void aSilentPortGivesNothingAndAnUnpluggedOneIsGone() throws Exception {
        try (PtyPair pair = new PtyPair(folder);
                Port port = SerialPorts.open(pair.left, SerialPorts.USUAL_BAUD)) {
            byte[] buffer = new byte[16];
            assertThat(port.read(buffer)).isZero();

            pair.unplug();
            int count = 0;
            for (int i = 0; i < 20 && count == 0; i++) {
                count = port.read(buffer);
            }

            assertThat(count).isEqualTo(Port.GONE);
            assertThat(port.read(buffer)).isEqualTo(Port.GONE);
            assertThatThrownBy(() -> port.write(buffer, 0, 16)).hasMessageContaining("is gone");
        }
    }

    @Test
    void writingToALostPortEnds() throws Exception {
        try (PtyPair pair = new PtyPair(folder);
                Port port = SerialPorts.open(pair.left, SerialPorts.USUAL_BAUD)) {
            port.write(new byte[16], 0, 16);
            pair.unplug();

            assertThatThrownBy(() -> {
                        for (int i = 0; i < 100; i++) {
                            port.write(new byte[16], 0, 16);
                        }
                    })
                    .hasMessageContaining("is gone");
        }
    }

    @Test
    void aMissingPortIsOneSentence() {
        String path = folder.resolve("none").toString();

        assertThatThrownBy(() -> SerialPorts.open(path, SerialPorts.USUAL_BAUD))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageStartingWith("There is no port " + path);
    }

    /** A path may always be typed, so anything may be typed. */
    @Test
    void whatIsNoPortIsOneSentence() throws Exception {
        Path file = Files.createFile(folder.resolve("plain.txt"));

        for (Path path : List.of(file, folder)) {
            assertThatThrownBy(() -> SerialPorts.open(path.toString(), SerialPorts.USUAL_BAUD))
                    .isInstanceOf(UnusableInputException.class)
                    .hasMessage(path + " is no serial port; give the path of the receiver.");
        }
    }

    /** Which ports a machine has is not known here; those that are offered must open. */
    @Test
    void onlyFreePortsAreOffered() {
        for (PortIdentity free : SerialPorts.free()) {
            SerialPorts.open(free.path(), SerialPorts.USUAL_BAUD).close();
        }
        assertThat(SerialPorts.MACHINE.present()).containsAll(SerialPorts.free());
    }

    @Test
    void aPortThatIsTakenIsOneSentence() throws Exception {
        try (PtyPair pair = new PtyPair(folder);
                Port first = SerialPorts.open(pair.left, SerialPorts.USUAL_BAUD)) {
            assertThat(first.name()).isEqualTo(pair.left);
            assertThatThrownBy(() -> SerialPorts.open(pair.left, SerialPorts.USUAL_BAUD))
                    .isInstanceOf(UnusableInputException.class)
                    .hasMessageContaining("is in use");
        }
    }
}
