package evenfall.fusion.filtering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DerivativeTest {

    @Test
    void parabolasAreExactEverywhere() {
        SplittableRandom random = new SplittableRandom(6);
        for (int draw = 0; draw < 50; draw++) {
            double a = random.nextDouble(-5, 5);
            double b = random.nextDouble(-5, 5);
            double rate = random.nextDouble(50, 400);
            double[] x = new double[40];
            for (int i = 0; i < x.length; i++) {
                double t = i / rate;
                x[i] = a * t * t + b * t + 2;
            }
            double[] first = Derivative.first(x, rate);
            double[] second = Derivative.second(x, rate);
            for (int i = 0; i < x.length; i++) {
                assertThat(first[i]).as("seed 6, draw %d", draw).isCloseTo(2 * a * i / rate + b, within(1e-9));
                assertThat(second[i]).as("seed 6, draw %d", draw).isCloseTo(2 * a, within(1e-7));
            }
        }
    }

    @Test
    void aSineComesOutAsItsCosineButForTheKnownLoss() {
        // a central difference reads a sine of u rad a sample low by sin(u)/u: common practice, no source
        double u = 0.3;
        double[] x = new double[100];
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.sin(u * i);
        }
        double[] d = Derivative.first(x, 1);
        for (int i = 1; i < 99; i++) {
            assertThat(d[i]).isCloseTo(Math.sin(u) * Math.cos(u * i), within(1e-12));
        }
    }

    @Test
    void shortSignals() {
        assertThat(Derivative.first(new double[0], 100)).isEmpty();
        assertThat(Derivative.first(new double[] {3}, 100)).containsExactly(0);
        assertThat(Derivative.first(new double[] {3, 4}, 100)).containsExactly(100, 100);
        assertThat(Derivative.second(new double[] {3, 4}, 100)).containsExactly(0, 0);
    }
}
