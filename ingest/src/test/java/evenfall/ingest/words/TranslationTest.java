package evenfall.ingest.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A translation is a file; what it leaves out is said in English. */
final class TranslationTest {

    @Test
    void sentences_areThoseOfTheLanguage_orEnglish() {
        Words translated = new Words(TranslationTest.class, Locale.forLanguageTag("eo"));
        assertThat(translated.say("seen", 2)).isEqualTo("2 viditaj");
        assertThat(translated.say("plain")).isEqualTo("a sentence");
    }

    @Test
    void aLanguageNobodyTranslated_isEnglish() {
        Words none = new Words(TranslationTest.class, Locale.forLanguageTag("tlh"));
        assertThat(none.say("seen", 1)).isEqualTo("one was seen");
        assertThat(Words.beside(TranslationTest.class).say("seen", 0)).isEqualTo("nothing was seen");
    }
}
