package evenfall.report.command;

import evenfall.report.check.Checks;
import evenfall.report.check.FileChecks;
import evenfall.report.json.CheckDocument;
import evenfall.report.result.RecordingInput;
import evenfall.report.table.CheckText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is wrong or doubtful about recorded files. */
@Command(name = "check", addMethodSubcommands = false)
final class CheckCommand implements Task {

    private static final Set<OutputFormat> WRITTEN = EnumSet.of(OutputFormat.TABLE, OutputFormat.JSON);

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "FILE")
    private List<Path> files;

    @Option(names = "--layout", paramLabel = "FILE")
    private @Nullable Path layout;

    @Option(names = "--format", paramLabel = "FORMAT", converter = OutputFormat.Converter.class)
    private OutputFormat format = OutputFormat.TABLE;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        OutputFormat written = format.among(WRITTEN);
        if (layout != null) {
            RecordingInput.requireFile(layout);
        }
        Checks checks =
                FileChecks.check(files, file -> new RecordingInput(file, null, layout).read(console.progress()));
        if (!checks.files().isEmpty()) {
            ResultFile.at(console, null, files).write(out -> {
                if (written == OutputFormat.JSON) {
                    out.append(CheckDocument.of(checks.files()));
                } else {
                    CheckText.write(checks.files(), out);
                }
            });
        }
        checks.refusals().forEach(console::say);
        return checks.refusals().isEmpty() ? CommandRunner.DONE : CommandRunner.UNUSABLE_INPUT;
    }
}
