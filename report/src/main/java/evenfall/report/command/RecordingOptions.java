package evenfall.report.command;

import evenfall.report.result.RecordingInput;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The options that name the files of one recording. */
@Command
final class RecordingOptions {

    @Option(names = "--pelvis", required = true, paramLabel = "FILE", description = "Table of the pelvis sensor.")
    private Path pelvis;

    @Option(
            names = "--upper-back",
            paramLabel = "FILE",
            description = "Table of the upper-back sensor; without it nothing is said of the trunk.")
    private @Nullable Path upperBack;

    @Option(
            names = "--layout",
            paramLabel = "FILE",
            description = "How the tables are laid out, where their header does not say.")
    private @Nullable Path layout;

    RecordingInput files() {
        return new RecordingInput(pelvis, upperBack, layout);
    }
}
