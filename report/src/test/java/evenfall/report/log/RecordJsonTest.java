package evenfall.report.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.fusion.landing.Side;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;

/** A general-purpose mapper (Jackson) is the witness: it must write the same and read what was written. */
class RecordJsonTest {

    private static final JsonMapper WITNESS = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
            .build();

    private static final String SIGNS = "aé\"\\/\b\f\n\r\t\u0001\u2028😀{}[]:,#<>&'";

    private final SplittableRandom random = new SplittableRandom(20260302);

    @Test
    void whatIsWritten_isWhatTheWitnessWrites_andReadsBackTheSame() {
        for (int k = 0; k < 2000; k++) {
            for (Record record : List.of(who(), diary(), note(), manifest(), approval(), film(), plan())) {
                String text = RecordJson.write(record);

                assertThat(text.replace("\r\n", "\n"))
                        .as("round " + k)
                        .isEqualTo(WITNESS.writeValueAsString(record).replace("\r\n", "\n"));
                assertThat((Object) RecordJson.read(text, record.getClass())).isEqualTo(record);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "7",
                "{\"first\": 1, \"last\": 2}",
                "{\"first\": 1, \"last\": 2, \"approved\": true, \"more\": 1}",
                "{\"first\": 1, \"first\": 1, \"last\": 2, \"approved\": true}",
                "{\"first\": 1.0, \"last\": 2, \"approved\": true}",
                "{\"first\": \"1\", \"last\": 2, \"approved\": true}",
                "{\"first\": null, \"last\": 2, \"approved\": true}",
                "{\"first\": 1, \"last\": 2, \"approved\": 1}",
                "{\"first\": 2, \"last\": 1, \"approved\": true}",
                "{\"first\": 1, \"last\": 2, \"approved\": true} {}"
            })
    void whatIsNotJustTheRecord_isRefused(String text) {
        assertThatThrownBy(() -> RecordJson.read(text, ApprovalEntry.Approval.class))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Cut off anywhere, a file is never taken for a whole one. */
    @Test
    void cutOffAnywhere_isNotWhole() {
        String text = RecordJson.write(diary());
        for (int end = 1; end < text.stripTrailing().length(); end++) {
            String cut = text.substring(0, end);
            assertThatThrownBy(() -> RecordJson.read(cut, DiaryEntry.class))
                    .as(cut)
                    .isInstanceOfAny(StreamReadException.class, IllegalArgumentException.class);
        }
    }

    private AthleteEntry who() {
        return new AthleteEntry(text(), orNull(text()), orNull(whole()), orNull(text()), orNull(text()), null);
    }

    private DiaryEntry diary() {
        return new DiaryEntry(
                text(),
                sizes(),
                sizes(),
                List.of(text(), text()),
                orNull(10 * random.nextDouble()),
                orNull(number()),
                new TreeMap<>(Map.of(text(), text())),
                orNull(text()),
                orNull(text()),
                orNull(whole()));
    }

    private NoteEntry note() {
        LandingNote note = new LandingNote(
                orNull(random.nextBoolean() ? Side.BOTH : Side.RIGHT),
                orNull(number()),
                orNull(text()),
                orNull(text()),
                orNull(text()),
                orNull(text()));
        return new NoteEntry(text(), text(), random.nextBoolean() ? List.of() : List.of(new RangeNote(1, 9, note)));
    }

    private Manifest manifest() {
        RawFile file = new RawFile("pelvis", "pelvis.csv", text(), random.nextLong(), text());
        return new Manifest(text(), text(), text(), text(), List.of(file, file), orNull(text()));
    }

    private ApprovalEntry approval() {
        return new ApprovalEntry(text(), text(), List.of(new ApprovalEntry.Approval(1, 2, random.nextBoolean())));
    }

    private FilmEntry film() {
        return new FilmEntry(text(), text(), number(), number());
    }

    private PlanEntry plan() {
        return new PlanEntry(text(), number(), orNull(Side.LEFT), orNull(number()), orNull(text()));
    }

    private Map<String, Integer> sizes() {
        Map<String, Integer> sizes = new TreeMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            sizes.put(text(), random.nextInt(11));
        }
        return sizes;
    }

    private int whole() {
        return random.nextInt();
    }

    private double number() {
        return random.nextInt(3) == 0
                ? random.nextInt(100)
                : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 4);
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.appendCodePoint(SIGNS.codePointAt(SIGNS.offsetByCodePoints(0, random.nextInt(20))));
        }
        return text.toString();
    }

    private <T> @Nullable T orNull(T value) {
        return random.nextInt(3) == 0 ? null : value;
    }
}
