package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.deciding.RuleSettings;
import evenfall.report.form.LimitSettings;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import evenfall.report.setting.SettingList;
import evenfall.report.setting.SettingValue;
import evenfall.report.setting.Settings;
import evenfall.report.table.TextGrid;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints what the coach set and what holds for the rest, and writes files to set it in. */
@Command(name = "settings", addMethodSubcommands = false)
final class SettingsCommand implements Task {

    private static final Words WORDS = Words.beside(SettingsCommand.class);

    /** All that a coach may set, a file each. */
    private static final List<SettingList> LISTS = List.of(LimitSettings.LIST, RuleSettings.LIST);

    private final Console console;

    @Option(names = "--log", required = true, paramLabel = "DIR")
    private Path log;

    @Option(names = "--athlete", paramLabel = "ID")
    private @Nullable String athlete;

    @Option(names = "--write")
    private boolean write;

    SettingsCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        if (athlete != null && !TrainingLog.isAthleteId(athlete)) {
            throw LogOptions.noId(athlete);
        }
        TrainingLog training = TrainingLog.open(log);
        AthleteFolder folder = athlete == null ? null : training.athlete(athlete);
        for (SettingList list : LISTS) {
            if (write) {
                say(list, folder == null ? training.writeSettings(list) : written(folder, list));
            }
        }
        TextGrid grid = new TextGrid();
        for (SettingList list : LISTS) {
            Settings settings = folder == null ? training.settings(list) : folder.settings(list);
            grid.line(list.file() + ". " + list.title());
            for (SettingValue value : settings.all()) {
                String from = value.from();
                grid.row(
                        "  " + value.setting().name(),
                        value.setting().say(value.value()),
                        from == null ? WORDS.say("settings.start") : from,
                        value.setting().explanation());
            }
        }
        ResultFile.at(console, null, List.of()).write(grid::write);
        return CommandRunner.DONE;
    }

    private Optional<Path> written(AthleteFolder folder, SettingList list) throws IOException {
        return folder.locked(console::say, () -> folder.writeSettings(list));
    }

    private void say(SettingList list, Optional<Path> written) {
        console.say(
                written.isPresent()
                        ? WORDS.say("settings.wrote", written.get())
                        : WORDS.say("settings.there", list.file()));
    }
}
