package evenfall.fusion.filtering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Channel frequency classes against the reference sheet's section 3.1. */
class ChannelClassTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "G1, CFC_60, 400, 0.416253405, -0.456378620, -0.208635002, 111.20",
        "G2, CFC_60, 1000, 0.097184625, 0.945574009, -0.334312510, 101.82",
        "G3, CFC_180, 1000, 0.566234369, -0.934520210, -0.330417265, 347.08",
        "G4, CFC_60, 2000, 0.029806072, 1.455728214, -0.574952502, 100.45",
        "G5, CFC_180, 2000, 0.185874043, 0.466875271, -0.210371444, 312.31"
    })
    void coefficientsAndTwoPassCutOff(
            String id, ChannelClass type, double rate, double a0, double b1, double b2, double cutoff) {
        Biquad filter = type.design(rate);
        // the standard writes the recursive part with the other sign
        assertThat(new double[] {filter.b0(), filter.b1(), filter.b2(), -filter.a1(), -filter.a2()})
                .containsExactly(new double[] {a0, 2 * a0, a0, b1, b2}, within(1.5e-9));
        assertThat(40 * Math.log10(filter.gain(cutoff, rate))).isCloseTo(-3.0103, within(2e-3));
    }

    @Test
    void whatTheRateCannotCarryIsRefused() {
        // reference 3.1: not realisable
        assertThat(ChannelClass.CFC_60.isRealisable(200)).isFalse();
        assertThat(ChannelClass.CFC_180.isRealisable(200)).isFalse();
        assertThat(ChannelClass.CFC_180.isRealisable(400)).isFalse();
        assertThat(ChannelClass.CFC_600.isRealisable(2000)).isFalse();
        assertThat(ChannelClass.CFC_1000.isRealisable(2000)).isFalse();
        assertThat(ChannelClass.CFC_60.isRealisable(400)).isTrue();
        assertThatThrownBy(() -> ChannelClass.CFC_60.design(200))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("200");
    }
}
