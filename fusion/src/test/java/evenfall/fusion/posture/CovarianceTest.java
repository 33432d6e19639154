package evenfall.fusion.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Rotations;
import evenfall.fusion.rotation.Vector3;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the definition: the mean square along a direction of what is drawn from it. */
class CovarianceTest {

    private static final int TRIALS = 50;

    private final SplittableRandom random = new SplittableRandom(11);

    @Test
    void alongADirection_itIsTheRootSumOfSquaresOfItsParts() {
        for (int k = 0; k < TRIALS; k++) {
            Vector3 one = Rotations.randomVector(random);
            Vector3 other = Rotations.randomVector(random);
            Vector3 along = Rotations.randomVector(random).normalised();
            double square = 0.04 + square(one.dot(along)) + square(other.dot(along));
            assertThat(Covariance.even(0.2).plus(one).plus(other).along(along))
                    .isCloseTo(Math.sqrt(square), within(1e-12));
        }
    }

    @Test
    void turned_itIsAlongWhatTurnsThere() {
        for (int k = 0; k < TRIALS; k++) {
            Covariance covariance = Covariance.even(0.1).plus(Rotations.randomVector(random));
            Quaternion turn =
                    Quaternion.fromBodyRate(Rotations.randomVector(random).times(3), 1);
            Vector3 along = Rotations.randomVector(random).normalised();
            assertThat(covariance.turnedBy(turn).along(turn.rotate(along)))
                    .isCloseTo(covariance.along(along), within(1e-12));
            assertThat(covariance.turnedBy(turn).size()).isCloseTo(covariance.size(), within(1e-12));
        }
    }

    private static double square(double x) {
        return x * x;
    }
}
