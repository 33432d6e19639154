package evenfall.report.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The commands and what makes them. The name on the command line is the constant's in lower case. */
enum CommandName {
    LANDINGS,
    ORIENTATION,
    CHECK,
    SEND,
    RECORD,
    IMPORT,
    NOTE,
    DIARY,
    SESSION,
    BLOCK,
    SHEET,
    ATHLETE,
    SETTINGS,
    EXPORT,
    WINDOW,
    DEMO;

    static final List<CommandName> ALL = List.of(values());

    String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A fresh command of this name; its class is loaded only now. */
    Task create(Console console) {
        return switch (this) {
            case LANDINGS -> new LandingsCommand(console);
            case ORIENTATION -> new OrientationCommand(console);
            case CHECK -> new CheckCommand(console);
            case SEND -> new SendCommand(console);
            case RECORD -> new RecordCommand(console);
            case IMPORT -> new ImportCommand(console);
            case NOTE -> new NoteCommand(console);
            case DIARY -> new DiaryCommand(console);
            case SESSION -> new SessionCommand(console);
            case BLOCK -> new BlockCommand(console);
            case SHEET -> new SheetCommand(console);
            case ATHLETE -> new AthleteCommand(console);
            case SETTINGS -> new SettingsCommand(console);
            case EXPORT -> new ExportCommand(console);
            case WINDOW -> new WindowCommand(console);
            case DEMO -> new DemoCommand(console);
        };
    }

    static Optional<CommandName> named(String code) {
        return ALL.stream().filter(name -> name.code().equals(code)).findFirst();
    }

    static String list() {
        return ALL.stream().map(CommandName::code).collect(Collectors.joining(", "));
    }
}
