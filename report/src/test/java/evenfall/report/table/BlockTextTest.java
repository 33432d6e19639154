package evenfall.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.LandingFlag;
import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.MeasureKind;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.InventedSessions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BlockTextTest {

    @Test
    void aBlockForAPerson_namesMeasuresAndSidesInWords() throws IOException {
        List<SessionDate> dates = new ArrayList<>();
        List<BlockLanding> landings = new ArrayList<>();
        for (int i = 1; i <= 5; i++) {
            SessionDate date = SessionDate.parse("2026-03-0" + i).orElseThrow();
            dates.add(date);
            landings.addAll(BlockLanding.of(date, InventedSessions.of(6, 20 + i)));
        }
        Block block = BlockAnalysis.of("invented", dates, landings, Map.of());
        StringBuilder text = new StringBuilder();
        BlockText.write(block, text);

        assertThat(block.measures()).isNotEmpty();
        assertThat(text.toString())
                .contains("pelvis turned")
                .contains("impact at the pelvis")
                .contains("pain means stop")
                .doesNotContain("Deg")
                .doesNotContain("overFeetM")
                .doesNotContain("null");
        assertThat(text.toString().lines().filter(line -> line.startsWith("pelvis turned")))
                .singleElement()
                .asString()
                .containsPattern("left|right")
                .doesNotContain("−");
    }

    /** Signs as the contract's: rotation to the left +, lean to the right +, tilt forward +. */
    @ParameterizedTest
    @CsvSource({
        "pelvicRotationDeg.change, deg, 7.42, 7.4° left",
        "pelvicRotationDeg.change, deg, -7.42, 7.4° right",
        "pelvicRotationDeg.change, deg, -0.04, 0.0°",
        "trunkLeanDeg.change, deg, 3.1, 3.1° right",
        "trunkLeanDeg.change, deg, -3.1, 3.1° left",
        "pelvicTiltDeg.change, deg, -8, 8.0° back",
        "lateralShiftM, m, 0.021, 0.02 m left",
        "overFeetM.foreAftLowest, m, -0.06, 0.06 m behind",
        "dropHeightM, m, 0.78, 0.78 m",
        "collapseDegPerS, deg/s, 96.2, 96°/s",
        "stepsAfter, '', 0.5, 0.5"
    })
    void aValue_hasItsUnitAndItsSideInWords(String measure, String unit, double value, String text) {
        assertThat(MeasureWords.value(measure, unit, value)).isEqualTo(text);
    }

    @Test
    void aTrendOfAMeasureWithASide_saysWhichWay() {
        assertThat(MeasureWords.verdict("pelvicRotationDeg.change", "rising")).isEqualTo("further left");
        assertThat(MeasureWords.verdict("trunkLeanDeg.change", "falling")).isEqualTo("further left");
        assertThat(MeasureWords.verdict("peakG", "rising")).isEqualTo("rising");
        assertThat(MeasureWords.verdict("peakG", "too few")).isEqualTo("too few");
        assertThat(MeasureWords.aWeek("trunkLeanDeg.change", "deg", 0.4)).isEqualTo("0.40° further right");
    }

    @Test
    void everyMeasureThatIsCompared_hasWords() {
        assertThat(MeasureList.all())
                .filteredOn(measure -> measure.kind() == MeasureKind.COMPARED)
                .hasSizeGreaterThan(20)
                .allSatisfy(measure ->
                        assertThat(MeasureWords.label(measure.name())).isNotEqualTo(measure.name()));
    }

    @ParameterizedTest
    @EnumSource(LandingFlag.class)
    void everyFlag_hasWords(LandingFlag flag) {
        assertThat(Words.beside(BlockText.class).knows("flag." + flag.code())).isTrue();
    }
}
