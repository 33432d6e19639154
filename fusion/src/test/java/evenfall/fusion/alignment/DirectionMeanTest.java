package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DirectionMeanTest {

    private static Vector3 level(double deg) {
        return new Vector3(Math.cos(Math.toRadians(deg)), Math.sin(Math.toRadians(deg)), 0);
    }

    private static double headingDeg(DirectionMean mean) {
        return Math.toDegrees(Math.atan2(mean.direction().y(), mean.direction().x()));
    }

    private static DirectionMean mean(double... deg) {
        List<Vector3> ways = new ArrayList<>();
        for (double one : deg) {
            ways.add(level(one));
        }
        return Objects.requireNonNull(DirectionMean.of(ways));
    }

    @Test
    void oneDirection_tellsNoMean() {
        assertThat(DirectionMean.of(List.of(level(3)))).isNull();
    }

    @Test
    void directionsOfWhichFewerThanHalfAgree_tellNoMean() {
        assertThat(DirectionMean.of(List.of(level(0), level(90), level(180), level(270), level(45), level(135))))
                .isNull();
    }

    @Test
    void whoWentAnotherWayOnce_isLeftOut() {
        DirectionMean mean = mean(10, 12, 8, 10, 80);

        assertThat(headingDeg(mean)).isCloseTo(10, within(1e-9));
        assertThat(mean.count()).isEqualTo(4);
        assertThat(mean.squaresDeg()).isCloseTo(8, within(1e-9));
    }

    @Test
    void sigma_isThatOfTheMean_whereManyAreSeen() {
        Random random = new Random(5);
        double[] deg = random.doubles(900).map(u -> 4 * random.nextGaussian()).toArray();

        // Standard error of a mean, σ / √n.
        assertThat(mean(deg).sigmaDeg(1, 0)).isCloseTo(4 / 30.0, within(0.01));
        assertThat(mean(deg).sigmaDeg(1, 0.5)).isCloseTo(Math.hypot(4 / 30.0, 0.5), within(0.01));
    }
}
