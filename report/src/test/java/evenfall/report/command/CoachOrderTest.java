package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import evenfall.report.coaching.TalkChoice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoachOrderTest {

    @Test
    void whatLinesAskFor() {
        assertThat(CoachOrder.of(" Go  on ")).isEqualTo(new CoachOrder.GoOn());
        assertThat(CoachOrder.of("help")).isEqualTo(new CoachOrder.Help());
        assertThat(CoachOrder.of("end")).isEqualTo(new CoachOrder.End());
        assertThat(CoachOrder.of("talk third")).isEqualTo(new CoachOrder.Choose(TalkChoice.THIRD));
        assertThat(CoachOrder.of("pelvis 1a2b")).isEqualTo(new CoachOrder.Worn(0x1A2B, Place.PELVIS));
        assertThat(CoachOrder.of("upper-back F")).isEqualTo(new CoachOrder.Worn(15, Place.UPPER_BACK));
        assertThat(CoachOrder.of("Mira")).isEqualTo(new CoachOrder.HandOver("Mira"));
        assertThat(CoachOrder.of("next end")).isEqualTo(new CoachOrder.HandOver("end"));
        assertThat(CoachOrder.of("åsa.2")).isEqualTo(new CoachOrder.HandOver("åsa.2"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"go on now", "talk loud", "pelvis xyz", "pelvis 12345", "../ada", "a b", "next", "con", "?"})
    void whatIsNotUnderstoodStartsNobodysSession(String line) {
        assertThat(CoachOrder.of(line)).isIn(new CoachOrder.Unknown(line), new CoachOrder.HandOver("next"));
    }
}
