package evenfall.report.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the platform's decimal arithmetic, digit by digit. */
class PlainNumberTest {

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                1,
                -1,
                0.1,
                0.000001,
                -0.000001,
                0.0000005,
                -0.0000005,
                0.0000015,
                0.00000049999999,
                123.4565,
                1.0000005,
                2.5e-7,
                999_999_999.999_999,
                1e9,
                -1e9,
                1e15,
                1e300,
                Double.MIN_VALUE,
                Double.MAX_VALUE,
                1e-7
            })
    void edges(double value) {
        check(value);
    }

    @Test
    void manyValuesOfAllSizes() {
        Random random = new Random(5);
        for (int k = 0; k < 200_000; k++) {
            check((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20) - 8));
            // Ends in a five just beyond the last decimal, the tie that rounding is about.
            check((random.nextInt(2_000_000) - 1_000_000) / 1e6 + 5e-7);
        }
    }

    private static void check(double value) {
        BigDecimal expected = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
        String text =
                expected.signum() == 0 ? "0" : expected.stripTrailingZeros().toPlainString();
        assertEquals(text, PlainNumber.of(value), () -> "text of " + value);
        assertEquals(Double.parseDouble(text), PlainNumber.rounded(value), () -> "rounding of " + value);
    }
}
