package evenfall.report.coaching;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.form.FormStandard;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits are those of the results page: lean 6 deg, turn 6 deg, behind the feet 0.10 m, no step back. */
class LandingRemarkTest {

    private static final int ENOUGH = 12;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 11})
    void withTooFewLandingsOnlyLimitsCount(int known) {
        List<SessionLanding> past = many(known, l -> l.lean = 1.0);

        assertThat(remark(past, l -> l.lean = 5.9)).isEmpty();
        assertThat(remark(past, l -> l.lean = 9.0)).isEqualTo("Leaned right, over the limit.");
        assertThat(remark(past, l -> l.lean = -9.0)).isEqualTo("Leaned left, over the limit.");
    }

    /** The limit is 6 and sigma 0.8, so it is passed clearly above 7.6. */
    @ParameterizedTest
    @CsvSource({"6.0, false", "6.1, false", "7.5, false", "7.7, true"})
    void aLimitIsPassedOnlyClearly(double lean, boolean said) {
        assertThat(remark(List.of(), l -> l.lean = lean).isEmpty()).isEqualTo(!said);
    }

    /** All alike: the spread is the floor of 1 degree, and the reach 3 (1 + 4/12) = 4 of it. */
    @ParameterizedTest
    @CsvSource({"4.9, false", "5.1, true"})
    void withEnoughLandingsWhatIsUnusualCounts(double lean, boolean said) {
        List<SessionLanding> past = many(ENOUGH, l -> l.lean = 1.0);

        assertThat(remark(past, l -> l.lean = lean)).isEqualTo(said ? "Leaned right, more than usual." : "");
    }

    /** The error of the measurement takes the place of a smaller spread: 4 times 2 degrees. */
    @ParameterizedTest
    @CsvSource({"8.9, false", "9.1, true"})
    void theErrorOfTheMeasurementCounts(double lean, boolean said) {
        List<SessionLanding> past = many(ENOUGH, l -> l.lean = 1.0);

        assertThat(remark(past, l -> {
                            l.lean = lean;
                            l.leanSigma = 2;
                        })
                        .isEmpty())
                .isEqualTo(!said);
    }

    @Test
    void whatIsUsualIsNotSaid_evenPastItsLimit() {
        assertThat(remark(many(ENOUGH, l -> l.lean = 12.0), l -> l.lean = 12.5)).isEmpty();
    }

    @Test
    void lessThanUsualIsNotSaid() {
        assertThat(remark(many(ENOUGH, l -> l.lean = 14.0), l -> l.lean = 4.0)).isEmpty();
    }

    @Test
    void theOtherSideThanUsualIsSaidWithItsSide() {
        assertThat(remark(many(ENOUGH, l -> l.lean = 4.0), l -> l.lean = -5.0))
                .isEqualTo("Leaned left, more than usual.");
    }

    @Test
    void unusualButSmallIsNotWorthAWord() {
        List<SessionLanding> past = many(ENOUGH, l -> l.lean = -2.9);

        assertThat(remark(past, l -> l.lean = 2.95)).isEmpty();
    }

    @Test
    void hardForThisHeight_byLandingsOfThisHeight() {
        List<SessionLanding> past = new ArrayList<>(many(ENOUGH, l -> l.peakG = 6));
        past.addAll(many(ENOUGH, l -> {
            l.heightM = 1.2;
            l.peakG = 12;
        }));

        assertThat(remark(past, l -> l.peakG = 9)).isEqualTo("Harder than usual for this height.");
        assertThat(remark(past, l -> l.peakG = 3)).isEmpty();
        assertThat(remark(past, l -> {
                    l.peakG = 12;
                    l.heightM = 1.2;
                }))
                .isEmpty();
    }

    @Test
    void aHeightThatIsNotSureHasNoUsual() {
        List<SessionLanding> past = many(ENOUGH, l -> l.peakG = 6);

        assertThat(remark(past, l -> {
                    l.peakG = 9;
                    l.heightSigma = 0.2;
                }))
                .isEmpty();
        assertThat(remark(past, l -> {
                    l.peakG = 9;
                    l.heightM = null;
                }))
                .isEmpty();
    }

    /** Cut off, a peak is at least what was seen: that may be enough to say it, and more than half of them tell no median. */
    @Test
    void clippedPeaks() {
        assertThat(remark(many(ENOUGH, l -> l.peakG = 6), l -> {
                    l.peakG = 9;
                    l.clipped = true;
                }))
                .isEqualTo("Harder than usual for this height.");
        List<SessionLanding> past = new ArrayList<>(many(5, l -> l.peakG = 6));
        past.addAll(many(7, l -> {
            l.peakG = 8;
            l.clipped = true;
        }));
        assertThat(remark(past, l -> l.peakG = 15)).isEmpty();
    }

    @Test
    void leftOutLandingsAreNeitherToldNorUsual() {
        assertThat(remark(List.of(), l -> {
                    l.lean = 20.0;
                    l.leaveOut = "slipped";
                }))
                .isEmpty();
        List<SessionLanding> past = many(ENOUGH, l -> {
            l.lean = 15.0;
            l.leaveOut = "slipped";
        });
        assertThat(remark(past, l -> l.lean = 15.0)).isEqualTo("Leaned right, over the limit.");
    }

    @ParameterizedTest
    @EnumSource(
            value = LandingFlag.class,
            names = {"GAP", "DEAD_SENSOR", "CUT_SHORT", "HEADING_UNKNOWN"})
    void whatCannotBeTrustedIsNotSaid(LandingFlag flag) {
        assertThat(remark(List.of(), l -> {
                    l.lean = 20.0;
                    l.flags = Set.of(flag);
                }))
                .isEmpty();
    }

    @Test
    void aPlaceAtALowestMomentThatIsNotSureIsNotSaid() {
        assertThat(remark(List.of(), l -> l.behindM = 0.15)).isEqualTo("Pelvis behind the feet, over the limit.");
        assertThat(remark(List.of(), l -> {
                    l.behindM = 0.15;
                    l.flags = Set.of(LandingFlag.LOWEST_UNSURE);
                }))
                .isEmpty();
    }

    @Test
    void missingMeasuresAndOtherEventsAreSilent() {
        assertThat(remark(List.of(), l -> l.lean = null)).isEmpty();
        assertThat(remark(List.of(), l -> l.kind = EventKind.FALL)).isEmpty();
        assertThat(remark(List.of(), l -> l.kind = EventKind.STEPS)).isEmpty();
    }

    @Test
    void onlyOneThing_theWorst() {
        String said = remark(List.of(), l -> {
            l.lean = 9.0;
            l.rotation = -14;
        });

        assertThat(said).isEqualTo("Pelvis turned right, over the limit.");
    }

    @Test
    void aStepBack() {
        Consumer<Landings> stepped = l -> {
            l.steps = 1;
            l.direction = StepDirection.BACK;
        };

        assertThat(remark(List.of(), stepped)).isEqualTo("A step back.");
        assertThat(remark(many(ENOUGH, l -> {}), stepped)).isEqualTo("A step back, more than usual.");
        assertThat(remark(many(ENOUGH, stepped), stepped)).isEmpty();
        assertThat(remark(List.of(), l -> {
                    l.steps = 1;
                    l.direction = StepDirection.LEFT;
                }))
                .isEmpty();
    }

    /**
     * Somebody who lands as usual should seldom hear anything. Measured when set: 11 of 1000 landings with 12 known, 15 with
     * 30; three values vary, each normal, spread twice its floor.
     */
    @ParameterizedTest
    @CsvSource({"12, 20", "30, 25"})
    void whoLandsAsUsualIsSeldomSpokenTo(int known, int most) {
        Random random = new Random(known);
        int said = 0;
        for (int trial = 0; trial < 1000; trial++) {
            Consumer<Landings> usual = l -> {
                l.lean = 3 + 2 * random.nextGaussian();
                l.rotation = -2 + 2 * random.nextGaussian();
                l.peakG = 6 + random.nextGaussian();
            };
            said += remark(many(known, usual), usual).isEmpty() ? 0 : 1;
        }

        assertThat(said).isLessThan(most);
    }

    private static List<SessionLanding> many(int count, Consumer<Landings> as) {
        List<SessionLanding> many = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            many.add(one(as));
        }
        return many;
    }

    private static SessionLanding one(Consumer<Landings> as) {
        Landings landing = new Landings();
        as.accept(landing);
        return landing.make();
    }

    private static String remark(List<SessionLanding> past, Consumer<Landings> as) {
        return LandingRemark.of(one(as), past, FormStandard.STARTING).orElse("");
    }
}
