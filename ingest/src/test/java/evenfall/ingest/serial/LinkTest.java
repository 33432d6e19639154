package evenfall.ingest.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.FakeBench.Device;
import evenfall.ingest.serial.LinkState.Search;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(value = 60, unit = TimeUnit.SECONDS)
class LinkTest {

    private static final String PATH = "/dev/ttyACM0";
    private static final OptionalInt SAID = OptionalInt.of(921_600);

    /** The word by which these tests know that something readable has come. */
    private static final String WORD = "hello\n";

    private final FakeBench bench = new FakeBench();

    @TempDir
    private Path folder;

    @Test
    void aLostPortComesBackAtItsPath() {
        Device device = bench.plug(PATH, "7", 0);
        try (Link link = open(SAID)) {
            device.send(bytes("one"));
            assertThat(next(link)).isEqualTo("one");

            device.unplug();
            awaitGone(link);
            assertThat(link.state().there()).isFalse();
            assertThat(link.state().losses()).isEqualTo(1);
            device.plugAgain(PATH);
            awaitBack(link);
            device.send(bytes("two"));

            assertThat(next(link)).isEqualTo("two");
            assertThat(link.state().there()).isTrue();
        }
        assertThat(device.isOpen()).isFalse();
    }

    @Test
    void theSameDeviceIsFoundUnderAnotherName() {
        Device device = bench.plug(PATH, "7", 0);
        Device stranger = bench.plug("/dev/ttyACM1", "8", 0);
        try (Link link = open(SAID)) {
            device.unplug();
            awaitGone(link);
            device.plugAgain("/dev/ttyACM2");
            awaitBack(link);

            assertThat(link.state().path()).isEqualTo("/dev/ttyACM2");
            assertThat(link.name()).isEqualTo(PATH);
            assertThat(stranger.openings()).isEmpty();
        }
    }

    @Test
    void anotherDeviceAtThePathIsLeftAlone() {
        Device device = bench.plug(PATH, "7", 0);
        try (Link link = open(SAID)) {
            device.unplug();
            awaitGone(link);
            Device stranger = bench.plug(PATH, "8", 0);
            for (int i = 0; i < 15; i++) {
                assertThat(link.read(new byte[16])).isEqualTo(Port.GONE);
            }
            assertThat(stranger.openings()).isEmpty();
            device.plugAgain("/dev/ttyACM1");
            awaitBack(link);

            assertThat(link.state().path()).isEqualTo("/dev/ttyACM1");
        }
    }

    @Test
    void aPortThatAnotherProgramTookMeanwhileIsSaidAndTriedOn() {
        Device device = bench.plug(PATH, "7", 0);
        try (Link link = open(SAID)) {
            device.unplug();
            awaitGone(link);
            device.takenByAnother(true);
            device.plugAgain(PATH);
            while (link.state().trouble().isEmpty()) {
                assertThat(link.read(new byte[16])).isEqualTo(Port.GONE);
            }
            assertThat(link.state().trouble()).contains(PATH + " is in use");
            device.takenByAnother(false);
            awaitBack(link);

            assertThat(link.state().trouble()).isEmpty();
        }
    }

    @Test
    void oneOfTwoMayBeLostWhileTheOtherGoesOn() {
        Device first = bench.plug(PATH, "7", 0);
        Device second = bench.plug("/dev/ttyACM1", "7b", 0);
        try (Link one = open(SAID);
                Link other = Link.open(bench, "/dev/ttyACM1", SAID, Word::new)) {
            first.unplug();
            awaitGone(one);
            second.send(bytes("on"));
            assertThat(next(other)).isEqualTo("on");
            first.plugAgain("/dev/ttyACM5");
            awaitBack(one);
            first.send(bytes("again"));

            assertThat(next(one)).isEqualTo("again");
            assertThat(second.openings()).hasSize(1);
        }
    }

    /** Twins without a number of their own cannot be told apart; the one that is open is not opened twice. */
    @Test
    void twinsWithoutNumbersAreNotMixedUp() {
        Device first = bench.plug(PATH, "", 0);
        Device second = bench.plug("/dev/ttyACM1", "", 0);
        try (Link one = open(SAID);
                Link other = Link.open(bench, "/dev/ttyACM1", SAID, Word::new)) {
            first.unplug();
            awaitGone(one);
            for (int i = 0; i < 15; i++) {
                assertThat(one.read(new byte[16])).isEqualTo(Port.GONE);
            }
            first.plugAgain("/dev/ttyACM2");
            awaitBack(one);

            assertThat(one.state().path()).isEqualTo("/dev/ttyACM2");
            assertThat(other.state().there()).isTrue();
            assertThat(second.openings()).hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {115_200, 921_600, 57_600})
    void theSpeedIsFoundAndNothingReadableIsLost(int speed) throws Exception {
        Device device = bench.plug(PATH, "7", speed);
        try (Link link = open(OptionalInt.empty())) {
            String text = "";
            while (text.isEmpty() && link.state().search() != Search.IN_VAIN) {
                device.send(bytes(WORD));
                Thread.sleep(1);
                text = text(link);
            }

            assertThat(text).startsWith(WORD);
            assertThat(link.state().search()).isEqualTo(Search.FOUND);
            assertThat(link.state().speed()).isEqualTo(speed);
            device.unplug();
            awaitGone(link);
            device.plugAgain(PATH);
            awaitBack(link);
            device.send(bytes("after"));
            assertThat(next(link)).as("the speed is kept").isEqualTo("after");
        }
    }

    @Test
    void whatIsReadableAtNoSpeedIsSaid() {
        Device device = bench.plug(PATH, "7", 31_250);
        try (Link link = open(OptionalInt.empty())) {
            while (link.state().search() != Search.IN_VAIN) {
                device.send(bytes(WORD));
                assertThat(link.read(new byte[16])).isZero();
            }

            assertThat(link.state().bytes()).isPositive();
        }
    }

    /** Silence is no reason to leave a speed: the first bytes that come are those of a sensor just switched on. */
    @Test
    void silenceKeepsTheSpeed() {
        Device device = bench.plug(PATH, "7", 115_200);
        try (Link link = open(OptionalInt.empty())) {
            for (int i = 0; i < 40; i++) {
                assertThat(link.read(new byte[16])).isZero();
            }
            assertThat(link.state().speed()).isEqualTo(115_200);
            device.send(bytes(WORD));

            assertThat(next(link)).isEqualTo(WORD);
        }
    }

    @Test
    void aPortWithoutSpeedIsNotSearched() {
        Device device = bench.plug(PATH, "7", 0);
        try (Link link = open(OptionalInt.empty())) {
            device.send(bytes("anything"));

            assertThat(next(link)).isEqualTo("anything");
            assertThat(link.state().search()).isEqualTo(Search.NONE);
        }
    }

    @Test
    void noiseWithoutEndTakesNoMemory() {
        SpeedSearch search = new SpeedSearch(Word::new);
        byte[] noise = new byte[50_000];
        for (int i = 0; i < 1000; i++) {
            assertThat(search.heard(noise, noise.length, 5)).isFalse();
            assertThat(search.held().length).isLessThanOrEqualTo(1 << 16);
        }
    }

    @Test
    void aClosedLinkIsNotOpenedAgain() {
        Device device = bench.plug(PATH, "7", 0);
        Link link = open(SAID);
        link.close();
        for (int i = 0; i < 15; i++) {
            assertThat(link.read(new byte[16])).isEqualTo(Port.GONE);
        }

        assertThat(device.openings()).hasSize(1);
        assertThat(link.state().losses()).isZero();
    }

    @Test
    void aLinkToAMissingPortIsOneSentence() {
        assertThatThrownBy(() -> open(SAID))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageStartingWith("There is no port " + PATH);
    }

    /** A new pair of pseudo-terminals has other names; the links to them in the file system lead to those. */
    @Test
    void aLinkInTheFileSystemIsFollowedAgain() throws Exception {
        PtyPair first = new PtyPair(folder);
        try (Link link = Link.open(SerialPorts.MACHINE, first.left, OptionalInt.empty(), Word::new)) {
            assertThat(link.state().search()).isEqualTo(Search.NONE);
            first.unplug();
            awaitGone(link);
            Files.deleteIfExists(Path.of(first.left));
            Files.deleteIfExists(Path.of(first.right));
            try (PtyPair second = new PtyPair(folder)) {
                awaitBack(link);
                try (Port other = SerialPorts.open(second.right, SerialPorts.USUAL_BAUD)) {
                    other.write(bytes(WORD), 0, WORD.length());
                    assertThat(next(link)).isEqualTo(WORD);
                }
            }
        }
    }

    private Link open(OptionalInt baud) {
        return Link.open(bench, PATH, baud, judges());
    }

    private static Supplier<SpeedJudge> judges() {
        return Word::new;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** The next that comes. */
    private static String next(Link link) {
        for (int i = 0; i < 200; i++) {
            String text = text(link);
            if (!text.isEmpty()) {
                return text;
            }
        }
        return "";
    }

    private static String text(Link link) {
        byte[] into = new byte[64];
        int count = link.read(into);
        return count > 0 ? new String(into, 0, count, StandardCharsets.US_ASCII) : "";
    }

    private static void awaitGone(Link link) {
        int count = 0;
        while (count != Port.GONE) {
            count = link.read(new byte[16]);
        }
    }

    private static void awaitBack(Link link) {
        while (!link.state().there()) {
            link.read(new byte[16]);
        }
    }

    /** Knows the word. */
    private static final class Word implements SpeedJudge {

        private final ByteArrayOutputStream heard = new ByteArrayOutputStream();

        @Override
        public boolean readable(byte[] bytes, int count) {
            heard.write(bytes, 0, count);
            return heard.toString(StandardCharsets.US_ASCII).contains(WORD);
        }
    }
}
