package evenfall.report.command;

import evenfall.report.result.RecordingInput;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The options that name the files of one recording. */
@Command(addMethodSubcommands = false)
final class RecordingOptions {

    @Option(names = "--pelvis", required = true, paramLabel = "FILE")
    private Path pelvis;

    @Option(names = "--upper-back", paramLabel = "FILE")
    private @Nullable Path upperBack;

    @Option(names = "--layout", paramLabel = "FILE")
    private @Nullable Path layout;

    RecordingInput files() {
        return new RecordingInput(pelvis, upperBack, layout);
    }
}
