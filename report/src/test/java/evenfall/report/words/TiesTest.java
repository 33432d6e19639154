package evenfall.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An underscore stands for the no-break space. */
final class TiesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.30 m | 0.30_m",
                "from 0.3 to 0.8 m. Form | from 0.3 to 0.8_m. Form",
                "(0.66 to 0.80, 95 %), rising by 2.3 cm a week | (0.66 to 0.80, 95_%), rising by 2.3_cm a week",
                "6.3 g ± 0.1 | 6.3_g ±_0.1",
                "89 ± 5 | 89_±_5",
                "154 g/s | 154_g/s",
                "200 Hz, 3 min | 200_Hz, 3_min"
            })
    void numbers_stayWithTheirUnits(String text, String tied) {
        assertThat(Ties.tied(text)).isEqualTo(tied.replace('_', '\u00a0'));
        assertThat(Ties.tied(Ties.tied(text))).isEqualTo(Ties.tied(text));
        assertThat(Ties.loose(Ties.tied(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "5", "2 steps", "4 months", "in 3 sessions", "8 May 2026", "a m", " m", "3 ", "2 of 10"
            })
    void everythingElse_staysAsItIs(String text) {
        assertThat(Ties.tied(text)).isEqualTo(text);
    }

    @Test
    void lineOfTables_isNotTouchedWhereNothingIsToTie() {
        String text = "no number here";
        assertThat(Ties.tied(text)).isSameAs(text);
    }
}
