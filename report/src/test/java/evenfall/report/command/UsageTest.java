package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.words.Words;
import java.util.Arrays;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the command line says of itself comes from one bundle: nothing in it is left unsaid, nothing is missing from it. */
final class UsageTest {

    private static final ResourceBundle USAGE = Words.bundle(CommandRunner.class, CommandRunner.USAGE);

    @ParameterizedTest
    @EnumSource(CommandName.class)
    void everyOption_isExplained(CommandName name) {
        String help = help(name.code());
        assertThat(help).startsWith("Usage: evenfall " + name.code()).containsPattern("(?m)^[A-Z][^:]*[.:,]");
        assertThat(help.split("\n      --", -1)).as("options").hasSizeGreaterThan(1);
        // An option without a text of its own is followed by the next one, or by nothing.
        assertThat(help + "\n").doesNotContainPattern("(?m)^  (-\\w, |    )--[\\w-]+(=\\S+)?\\n(?! {20})");
    }

    @Test
    void theProgram_namesItsCommands_andItsStatus() {
        String help = help();
        for (CommandName name : CommandName.values()) {
            assertThat(help).containsPattern("(?m)^  " + name.code() + " +[A-Z]");
        }
        assertThat(help).contains("Exit status: 0 done").contains("Pain means stop");
    }

    @Test
    void everyText_isSaidSomewhere() {
        String all = (help()
                        + Arrays.stream(CommandName.values())
                                .map(name -> help(name.code()))
                                .collect(Collectors.joining()))
                .replaceAll("\\s+", "");
        Set<String> unsaid = new TreeSet<>(USAGE.keySet());
        unsaid.removeIf(
                key -> all.contains(USAGE.getString(key).replace("%%", "%").replaceAll("\\s+", "")));
        assertThat(unsaid).isEmpty();
    }

    private static String help(String... command) {
        Object[] words = Arrays.copyOf(command, command.length + 1, Object[].class);
        words[command.length] = "--help";
        Ran ran = Ran.command(words);
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
        return ran.out();
    }
}
