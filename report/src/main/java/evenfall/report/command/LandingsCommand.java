package evenfall.report.command;

import evenfall.fusion.orientation.FilterKind;
import evenfall.report.form.FormStandard;
import evenfall.report.form.LimitSettings;
import evenfall.report.result.RecordingInput;
import evenfall.report.result.SessionReading;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.setting.SettingText;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the landings of one recording. */
@Command(name = "landings", addMethodSubcommands = false)
final class LandingsCommand implements Task {

    private static final Set<OutputFormat> WRITTEN =
            EnumSet.complementOf(EnumSet.of(OutputFormat.PDF, OutputFormat.VTT, OutputFormat.MOTION_BIDS));

    private final Console console;

    @Mixin
    private RecordingOptions recording;

    @Option(names = "--filter", paramLabel = "NAME", converter = FilterOption.class)
    private FilterKind filter = FilterKind.TWO_PASS;

    @Option(names = "--format", paramLabel = "FORMAT", converter = OutputFormat.Converter.class)
    private OutputFormat format = OutputFormat.TABLE;

    @Option(names = "--limits", paramLabel = "FILE")
    private @Nullable Path limits;

    @Option(names = "--out", paramLabel = "FILE")
    private @Nullable Path out;

    LandingsCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        OutputFormat written = format.among(WRITTEN);
        RecordingInput files = recording.files();
        FormStandard standard = standard();
        ResultFile result = ResultFile.at(console, out, files.all());
        Session session = SessionReading.ofFiles(files, filter, standard, console.progress());
        if (written == OutputFormat.CSV) {
            FoundWrong.say(session, console);
        }
        result.write(text -> SessionPrinter.print(session, Background.NONE, written, text));
        return CommandRunner.DONE;
    }

    private FormStandard standard() throws IOException {
        return limits == null
                ? FormStandard.STARTING
                : FormStandard.of(Settings.starting(LimitSettings.LIST)
                        .with(SettingText.read(LimitSettings.LIST, limits.toString(), TextFile.read(limits))));
    }
}
