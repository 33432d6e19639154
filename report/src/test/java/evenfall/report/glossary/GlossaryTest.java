package evenfall.report.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GlossaryTest {

    @ParameterizedTest
    @EnumSource(Term.class)
    void everyTerm_isExplained(Term term) {
        Glossary.Entry entry = Glossary.of(term);

        assertThat(entry.name()).isNotBlank();
        for (String sentence : new String[] {entry.what(), entry.how(), entry.usual(), entry.not()}) {
            assertThat(sentence).endsWith(".").hasSizeGreaterThan(4).doesNotContain("''", "{");
        }
    }
}
