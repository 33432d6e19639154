package evenfall.report.round;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.TrainingLog;
import evenfall.report.round.Person.Standing;
import evenfall.report.speech.Unspoken;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way through up to the sensors, without a window: everything is done at once in this thread. */
final class RoundTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 12);

    @TempDir
    Path folder;

    private TrainingLog log;
    private Round round;
    private int changes;

    private static final Surroundings NOWHERE = new Surroundings() {
        @Override
        public void sound(Tone tone) {}

        @Override
        public void browse(URI page) {}
    };

    @BeforeEach
    void begin() throws IOException {
        log = TrainingLog.open(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-05-12T16:00:00Z"), ZoneOffset.UTC);
        Threads threads = new Threads(Runnable::run, Runnable::run);
        round = new Round(log, threads, NOWHERE, Unspoken.WISHED, clock, () -> changes++);
    }

    @Test
    void onceClosed_sendsNothingToABackThatMayHaveEnded() throws Exception {
        CountDownLatch over = new CountDownLatch(1);
        ExecutorService back = Executors.newSingleThreadExecutor();
        Clock clock = Clock.fixed(Instant.parse("2026-05-12T16:00:00Z"), ZoneOffset.UTC);
        Round closing = new Round(log, new Threads(Runnable::run, back), NOWHERE, Unspoken.WISHED, clock, () -> {});
        closing.close(() -> {
            back.shutdown();
            over.countDown();
        });
        over.await();
        // Refused by the back, this would break in the thread that paints.
        closing.add("Ona Vell", true, "");
        assertThat(back.awaitTermination(1, TimeUnit.MINUTES)).isTrue();
        assertThat(closing.busy()).isFalse();
        assertThat(log.athletes()).isEmpty();
    }

    @Test
    void somebodyNew_isAtTheEndOfTheListAndInTheLog() throws IOException {
        round.add("Ona Vell", true, "");
        round.add("Ona Vell", false, "her aunt");
        round.add("...", false, "");
        assertThat(round.people()).extracting(Person::id).containsExactly("Ona-Vell", "Ona-Vell-2");
        assertThat(round.people()).extracting(Person::name).containsOnly("Ona Vell");
        assertThat(round.people()).extracting(Person::consent).containsExactly(true, false);
        assertThat(round.notices().newest()).contains("letters or digits");
        AthleteEntry second = log.athlete("Ona-Vell-2").lastWho(told -> {}).orElseThrow();
        assertThat(second.guardian()).isEqualTo("her aunt");
    }

    @Test
    void elevenAthletes_tenAreOnTheList() {
        List<String> names = new ArrayList<>();
        for (int i = 10; i < 21; i++) {
            names.add("A" + i);
            round.add("A" + i, true, "");
        }
        assertThat(round.people()).extracting(Person::id).isEqualTo(names.subList(0, 10));
        assertThat(round.others()).containsExactly("A20");
        round.unlist(round.people().get(0));
        round.list("A20");
        assertThat(round.people()).extracting(Person::id).first().isEqualTo("A20");
    }

    @Test
    void allWell_leadsToTheSensorsAndIsKept() throws IOException {
        Person person = somebody();
        round.choose(person);
        assertThat(round.step()).isEqualTo(Step.FEEL);
        round.answered();
        assertThat(round.step()).isEqualTo(Step.PUT_ON);
        assertThat(today(person)).singleElement().satisfies(entry -> {
            assertThat(entry.pain()).isEqualTo(Map.of(BodyPart.WHOLE, 0));
            assertThat(entry.soreness()).isEqualTo(Map.of(BodyPart.WHOLE, 0));
            assertThat(entry.stopsDrops()).isFalse();
        });
    }

    @Test
    void soreness_doesNotStopTheDrops() throws IOException {
        Person person = somebody();
        round.choose(person);
        round.feeling().point("right calf");
        round.feeling().rate(6);
        round.answered();
        assertThat(round.step()).isEqualTo(Step.PUT_ON);
        assertThat(today(person).get(0).soreness()).isEqualTo(Map.of("right calf", 6));
    }

    @Test
    void painOfAnySize_endsTheDropsOfTheDay() throws IOException {
        Person person = somebody();
        round.choose(person);
        round.feeling().askForPain(true);
        round.feeling().point("left knee");
        round.feeling().rate(1);
        round.answered();
        assertThat(round.step()).isEqualTo(Step.STOPPED);
        assertThat(today(person).get(0).pain()).isEqualTo(Map.of("left knee", 1));
        round.next();
        assertThat(round.people().get(0).standing()).isEqualTo(Standing.STOPPED);
        round.choose(round.people().get(0));
        assertThat(round.step()).as("nobody comes past it by choosing anew").isEqualTo(Step.STOPPED);
    }

    @Test
    void sign_endsTheDropsOfTheDay_unlessItWasAMistake() throws IOException {
        Person person = somebody();
        round.choose(person);
        round.feeling().sign("locking", true);
        round.answered();
        assertThat(round.step()).isEqualTo(Step.STOPPED);
        round.askAgain();
        round.answered();
        assertThat(round.step()).isEqualTo(Step.PUT_ON);
        assertThat(log.athlete(person.id()).diary(TODAY).all(told -> {}))
                .as("both answers are kept")
                .hasSize(2);
        assertThat(today(person)).noneMatch(DiaryEntry::stopsDrops);
    }

    @Test
    void painDuringTheDrops_countsThoughNobodyNamesAPlace() throws IOException {
        Person person = somebody();
        round.choose(person);
        round.answered();
        round.pain();
        assertThat(round.step()).isEqualTo(Step.FEEL);
        round.answered();
        assertThat(round.step()).isEqualTo(Step.STOPPED);
        assertThat(today(person)).anyMatch(DiaryEntry::stopsDrops);
    }

    @Test
    void painFromTheDiary_stopsTooWithoutTheWindow() throws IOException {
        Person person = somebody();
        log.athlete(person.id()).diary(TODAY).add(DiaryAnswers.feeling(Map.of(), Map.of("left ankle", 2), List.of()));
        round.next();
        assertThat(round.people().get(0).standing()).isEqualTo(Standing.STOPPED);
    }

    @Test
    void painOfAnEarlierDay_isSaidBeforeItIsAskedAgain_untilItIsOver() throws IOException {
        Person person = somebody();
        log.athlete(person.id())
                .diary(TODAY.minusDays(3))
                .add(DiaryAnswers.feeling(Map.of(), Map.of("left ankle", 2), List.of()));
        round.next();
        assertThat(round.people().get(0).heeded()).singleElement().asString().contains("left ankle");
        round.choose(round.people().get(0));
        round.answered();
        round.next();
        assertThat(round.people().get(0).heeded()).as("all well").isEmpty();
    }

    @Test
    void consentGivenLater_isNoted() throws IOException {
        round.add("Ide", false, "");
        round.choose(round.people().get(0));
        round.consent();
        assertThat(log.athlete("Ide").lastWho(told -> {}).orElseThrow().consent())
                .isEqualTo("2026-05-12");
        assertThat(round.person()).isNotNull();
        assertThat(round.people().get(0).consent()).isTrue();
    }

    @Test
    void everyPress_isShown() {
        int before = changes;
        round.add("Ide", true, "");
        assertThat(changes).isGreaterThan(before);
        assertThat(round.busy()).isFalse();
    }

    private Person somebody() {
        round.add("Ide", true, "");
        return round.people().get(0);
    }

    private List<DiaryEntry> today(Person person) throws IOException {
        AthleteFolder athlete = log.athlete(person.id());
        return DiaryEntry.inForce(athlete.diary(TODAY).numbered(told -> {}));
    }
}
