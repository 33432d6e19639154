package evenfall.report.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
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

    /** A reader of the documents and a reader of a page must find the same words. */
    @Test
    void theDocument_saysTheSame() throws IOException {
        StringBuilder expected = new StringBuilder("# Glossary\n\nWhat pages, papers and the window call a measure, and"
                + " what they say of it. The same words stand at the end of each\nsession page; both come from"
                + " `report/src/main/resources/evenfall/report/glossary/words.properties`.\n");
        for (Glossary.Entry entry : Glossary.all()) {
            expected.append("\n## ").append(entry.name()).append("\n\n");
            expected.append(entry.what()).append("\n\n");
            expected.append("- How it is measured: ").append(entry.how()).append('\n');
            expected.append("- What is usual: ").append(entry.usual()).append('\n');
            expected.append("- What it cannot say: ").append(entry.not()).append('\n');
        }
        assertThat(Files.readString(Path.of("..", "docs", "glossary.md"))).isEqualTo(expected.toString());
    }
}
