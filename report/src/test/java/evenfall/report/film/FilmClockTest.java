package evenfall.report.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FilmClockTest {

    private static final double EXACT_S = 1e-6;

    @Test
    void oneMoment_setsTheClock_withoutDrift() {
        FilmClock clock = FilmClock.through(85.5, 73.16);

        assertThat(clock.startsS()).isEqualTo(12.34, within(EXACT_S));
        assertThat(clock.driftPpm()).isZero();
        assertThat(clock.filmS(85.5)).isEqualTo(73.16, within(EXACT_S));
    }

    @Test
    void twoMoments_giveBackAnyClock() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 500; i++) {
            FilmClock clock = new FilmClock(random.nextDouble(-500, 500), random.nextDouble(-5000, 5000));
            double first = random.nextDouble(0, 600);
            double later = first + random.nextDouble(FilmClock.LEAST_APART_S, 600);
            FilmClock found = FilmClock.through(first, clock.filmS(first), later, clock.filmS(later));

            assertThat(found.driftPpm()).as("case %s", i).isEqualTo(clock.driftPpm(), within(1e-3));
            assertThat(found.filmS(321)).as("case %s", i).isEqualTo(clock.filmS(321), within(EXACT_S));
        }
    }

    @Test
    void twoMomentsNearOneAnother_sayNothingOfDrift() {
        FilmClock clock = FilmClock.through(100, 90, 100 + FilmClock.LEAST_APART_S - 0.01, 120.1);

        assertThat(clock.driftPpm()).isZero();
        assertThat(clock.filmS(129.99)).isEqualTo(120.1, within(EXACT_S));
    }

    @Test
    void impossibleClocks_areRefused() {
        assertThatThrownBy(() -> new FilmClock(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FilmClock(0, -1e6)).isInstanceOf(IllegalArgumentException.class);
    }
}
