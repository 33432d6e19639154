package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Vector3;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How sure forward bends are of a heading. */
class BendMountingTest {

    private static final Vector3 UP = new Vector3(0, 0, 9.8);

    private static List<ForwardBend> bends(double share, double... axisDeg) {
        Stance stance = new Stance(0, 100, 0, 1, UP, Vector3.ZERO);
        return Arrays.stream(axisDeg)
                .mapToObj(deg -> new ForwardBend(
                        stance,
                        stance,
                        2,
                        5,
                        new Vector3(-Math.sin(Math.toRadians(deg)), Math.cos(Math.toRadians(deg)), 0),
                        share,
                        1))
                .toList();
    }

    private static double sigma(List<ForwardBend> bends, Straying straying) {
        return MountingFinder.ofBends(UP, bends, straying).sigmaDeg();
    }

    @Test
    void bendsAreSurer_theMoreThereAre_andTheMoreTheyAreAlike() {
        double alike = sigma(bends(1, 3, 3), Straying.USUAL);

        assertThat(sigma(bends(1, 3, 3, 3), Straying.USUAL)).isLessThan(alike);
        assertThat(sigma(bends(1, 3), Straying.USUAL)).isGreaterThan(alike);
        assertThat(sigma(bends(1, 2, 4), Straying.USUAL)).isGreaterThan(2 * alike);
        assertThat(sigma(bends(0.98, 3, 3), Straying.USUAL)).isGreaterThan(10 * alike);
    }

    @Test
    void whoStraysInTheDrops_isTrustedLessInBendsThatHappenToBeAlike_butNotWithoutEnd() {
        double usual = sigma(bends(1, 3, 3), Straying.USUAL);
        double straying = sigma(bends(1, 3, 3), new Straying(9 * 1000, 1000));
        double toTheSides = sigma(bends(1, 3, 3), new Straying(400 * 1000, 1000));

        assertThat(straying / usual).isCloseTo(Math.pow(3, 1.5), within(0.1));
        assertThat(toTheSides).isLessThan(2);
    }

    @Test
    void crookedBends_tellNothingOfStraying() {
        assertThat(MountingFinder.strayingOf(UP, bends(0.98, 0, 6))).isEqualTo(Straying.USUAL);
        assertThat(MountingFinder.strayingOf(UP, bends(1, 0, 2)).factor()).isGreaterThan(2);
    }
}
