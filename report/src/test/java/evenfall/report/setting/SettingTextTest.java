package evenfall.report.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.ingest.recording.UnusableInputException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingTextTest {

    private static final SettingList LIST = new SettingList(
            "limits.txt",
            "Limits.",
            List.of(
                    new Setting("trunk-lean", "deg", 6, 1, 90, false, "Farthest the trunk may lean."),
                    new Setting("beside-feet", "m", 0.06, 0.01, 0.5, false, "Farthest beside the feet."),
                    new Setting("steps-back", "", 0, 0, 10, true, "Steps that are still no fault.")));

    @Test
    void lines_setWhatTheyName_andTheRestStaysAsItStarts() {
        String text = "\uFEFF# mine\r\n\r\n  Trunk-Lean=7,5 deg   # was 6\r\nsteps-back = 1\n";

        Settings settings = Settings.starting(LIST).with(SettingText.read(LIST, "limits.txt", text));

        assertThat(settings.value("trunk-lean")).isEqualTo(7.5);
        assertThat(settings.of("trunk-lean").from()).isEqualTo("limits.txt, line 3");
        assertThat(settings.value("steps-back")).isEqualTo(1);
        assertThat(settings.value("beside-feet")).isEqualTo(0.06);
        assertThat(settings.of("beside-feet").isSet()).isFalse();
    }

    @Test
    void nearerFile_goesBeforeTheOther_nameByName() {
        Settings all = Settings.starting(LIST)
                .with(SettingText.read(LIST, "all", "trunk-lean = 8\nbeside-feet = 0.08"))
                .with(SettingText.read(LIST, "one", "trunk-lean = 4"));

        assertThat(all.value("trunk-lean")).isEqualTo(4);
        assertThat(all.value("beside-feet")).isEqualTo(0.08);
        assertThat(all.of("beside-feet").from()).isEqualTo("all, line 2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trunk lean 7        | f, line 2: 'trunk lean 7' sets nothing; write name = value",
                "trunk = 7           | f, line 2: nothing is called 'trunk'; known are trunk-lean, beside-feet, steps-back",
                "trunk-lean = much   | f, line 2: 'much' is no figure for trunk-lean; write a number such as 6 deg",
                "trunk-lean = 7 m    | f, line 2: '7 m' is no figure",
                "trunk-lean =        | f, line 2: '' is no figure",
                "trunk-lean = -7     | f, line 2: trunk-lean cannot be -7 deg; it may be from 1 to 90 deg",
                "beside-feet = 6     | f, line 2: beside-feet cannot be 6 m; it may be from 0.01 to 0.5 m",
                "steps-back = 0.5    | f, line 2: steps-back cannot be 0.5; it may be a whole number from 0 to 10",
                "trunk-lean = 1e400  | f, line 2: '1e400' is no figure",
                "trunk-lean = NaN    | f, line 2: 'NaN' is no figure",
            })
    void lineThatCannotBeUnderstood_isOneSentenceThatHelps(String line, String sentence) {
        assertThatThrownBy(() -> SettingText.read(LIST, "f", "# first\n" + line))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageStartingWith(sentence);
    }

    @Test
    void nameSetTwice_isRefused() {
        assertThatThrownBy(() -> SettingText.read(
                        LIST, "f", "twist = 5\n".replace("twist", "trunk-lean").repeat(2)))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageStartingWith("f, line 2: trunk-lean was set further up");
    }

    @Test
    void writtenFile_changesNothing_andSetsWhatItSaysOnceTheMarkIsGone() {
        String text = SettingText.starting(LIST);

        assertThat(SettingText.read(LIST, "f", text)).isEmpty();
        assertThat(SettingText.read(LIST, "f", text.replaceAll("(?m)^#(?=\\S)", "")))
                .extracting(SettingValue::value)
                .containsExactly(6.0, 0.06, 0.0);
        assertThat(text).contains("Farthest the trunk may lean. It may be from 1 to 90 deg.");
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void anyText_isReadOrRefusedInASentence() {
        Random random = new Random(20260302);
        String good = "trunk-lean = 7 deg # x\nsteps-back = 1\n\nbeside-feet=0,05\n";
        for (int round = 0; round < 5000; round++) {
            StringBuilder text = new StringBuilder(good);
            for (int k = random.nextInt(6); k >= 0; k--) {
                text.setCharAt(random.nextInt(text.length()), (char) random.nextInt(k == 0 ? 0x10000 : 128));
            }
            try {
                assertThat(SettingText.read(LIST, "f", text.toString()))
                        .allMatch(value -> value.setting().allows(value.value()));
            } catch (UnusableInputException e) {
                assertThat(e).hasMessageStartingWith("f, line ").hasMessageEndingWith(".");
            }
        }
    }
}
