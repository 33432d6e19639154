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
@Command(name = "landings", description = "The landings of one recording, without a training log.")
final class LandingsCommand implements Task {

    private static final Set<OutputFormat> WRITTEN =
            EnumSet.complementOf(EnumSet.of(OutputFormat.PDF, OutputFormat.VTT, OutputFormat.MOTION_BIDS));

    private final Console console;

    @Mixin
    private RecordingOptions recording;

    @Option(
            names = "--filter",
            paramLabel = "NAME",
            converter = FilterOption.class,
            description = FilterOption.DESCRIPTION)
    private FilterKind filter = FilterKind.TWO_PASS;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            converter = OutputFormat.Converter.class,
            description =
                    "table (the default), csv, spreadsheet (csv that a spreadsheet opens; spreadsheet-comma with decimal"
                            + " commas), json or html.")
    private OutputFormat format = OutputFormat.TABLE;

    @Option(
            names = "--limits",
            paramLabel = "FILE",
            description = "What form is judged by, if not where a coach starts; 'settings --write' writes such a file.")
    private @Nullable Path limits;

    @Option(names = "--out", paramLabel = "FILE", description = "Where the result goes, if not to standard output.")
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
