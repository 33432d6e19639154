package evenfall.report.live;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.Heard;
import evenfall.ingest.serial.LinkState;
import evenfall.ingest.serial.LinkState.Search;
import evenfall.ingest.wire.WireCounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every case: what is said, that it is one sentence, said once, and within three seconds. */
class LinkReportTest {

    private static final String PORT = "/dev/ttyACM0";
    private static final double STEP_S = 0.1;

    private final LinkReport report =
            new LinkReport(List.of(new LinkState(PORT, PORT, true, 0, 0, 115_200, Search.SAID, "")));
    private final List<String> said = new ArrayList<>();
    private double nowS;

    private boolean there = true;
    private int losses;
    private long bytes;
    private long good;
    private Search search = Search.SAID;
    private String path = PORT;
    private String trouble = "";
    private int pelvis;
    private int upperBack;

    @Test
    void aSilentPort() {
        go(2.9, () -> {});

        assertThat(said).singleElement().asString().startsWith("Nothing comes from " + PORT);
        go(10, () -> {});
        assertThat(said).hasSize(1);
        go(1, this::bothSpeak);
        assertThat(said).hasSize(2);
        assertThat(said.get(1)).contains("now");
    }

    @Test
    void aPortThatSpeaksWellIsNoNews() {
        go(60, this::bothSpeak);

        assertThat(said).isEmpty();
    }

    @Test
    void aWrongSpeedThatWasSaid() {
        go(2.9, () -> bytes += 100);

        assertThat(said)
                .singleElement()
                .asString()
                .contains("cannot be read at 115200")
                .contains("--baud");
        go(20, () -> bytes += 100);
        assertThat(said).hasSize(1);
    }

    @Test
    void noSpeedIsRight() {
        search = Search.GOING_ON;
        go(2.2, () -> bytes += 100);
        assertThat(said).isEmpty();
        search = Search.IN_VAIN;
        go(0.2, () -> bytes += 100);

        assertThat(said).singleElement().asString().contains("at any usual speed (115200,");
    }

    @Test
    void theSpeedThatWasFound() {
        search = Search.GOING_ON;
        go(1, () -> bytes += 100);
        search = Search.FOUND;
        go(30, this::bothSpeak);

        assertThat(said).containsExactly(PORT + " speaks at 115200 bits a second.");
    }

    @Test
    void aPortThatIsLostAndComesBackElsewhere() {
        go(10, this::bothSpeak);
        there = false;
        losses = 1;
        go(0.2, () -> {});
        assertThat(said).singleElement().asString().startsWith("The port " + PORT + " is gone; look at the cable.");
        go(60, () -> {});
        assertThat(said).hasSize(1);
        there = true;
        path = "/dev/ttyACM1";
        go(30, this::bothSpeak);

        assertThat(said).hasSize(2);
        assertThat(said.get(1)).isEqualTo("The port " + PORT + " is back as /dev/ttyACM1; the recording goes on.");
    }

    @Test
    void aLossSoShortThatNobodySawIt() {
        go(10, this::bothSpeak);
        losses = 1;
        go(1, this::bothSpeak);

        assertThat(said).hasSize(2);
    }

    @Test
    void whyAPortCannotBeOpenedAgain() {
        go(1, this::bothSpeak);
        there = false;
        losses = 1;
        trouble = "The port is in use.";
        go(20, () -> {});

        assertThat(said).hasSize(2).contains("The port is in use.");
    }

    @Test
    void onlyThePelvisSpeaks() {
        go(2.9, this::pelvisSpeaks);

        assertThat(said).singleElement().asString().startsWith("Only the pelvis sensor is talking");
        go(20, this::pelvisSpeaks);
        assertThat(said).hasSize(1);
        go(1, this::bothSpeak);
        assertThat(said.get(1)).isEqualTo("The upper-back sensor speaks now.");
    }

    @Test
    void onlyTheUpperBackSpeaks() {
        go(2.9, () -> {
            speak();
            upperBack += 20;
        });

        assertThat(said).singleElement().asString().startsWith("Only the upper-back sensor is talking");
    }

    @Test
    void aSensorThatFallsSilentInASession() {
        go(30, this::bothSpeak);
        go(2.9, this::pelvisSpeaks);

        assertThat(said).singleElement().asString().startsWith("The upper-back sensor has fallen silent");
    }

    private void go(double seconds, Runnable meanwhile) {
        for (double end = nowS + seconds; nowS < end; nowS += STEP_S) {
            meanwhile.run();
            LinkState link = new LinkState(PORT, path, there, losses, bytes, 115_200, search, trouble);
            List<String> news = report.news(
                    nowS,
                    List.of(link),
                    List.of(new Heard(there, bytes, new WireCounts(good, 0, 0, 0))),
                    Map.of(Place.PELVIS, pelvis, Place.UPPER_BACK, upperBack));
            assertThat(news).allMatch(sentence -> sentence.endsWith(".") && !sentence.contains("\n"));
            said.addAll(news);
        }
    }

    private void bothSpeak() {
        pelvisSpeaks();
        upperBack += 20;
    }

    private void pelvisSpeaks() {
        speak();
        pelvis += 20;
    }

    private void speak() {
        bytes += 2000;
        good += 20;
    }
}
