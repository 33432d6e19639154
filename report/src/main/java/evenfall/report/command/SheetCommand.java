package evenfall.report.command;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.handout.AthleteSheet;
import evenfall.report.html.SheetViews;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.paper.Paper;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.SessionBackground;
import evenfall.report.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the athlete's own page. */
@Command(name = "sheet", addMethodSubcommands = false)
final class SheetCommand implements Task {

    private static final Words WORDS = Words.beside(SheetCommand.class);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--out", paramLabel = "FILE.pdf")
    private @Nullable Path out;

    SheetCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        ResultFile result = ResultFile.at(console, out, List.of());
        AthleteFolder athlete = log.open(console);
        List<SessionDate> dates = athlete.sessions();
        if (dates.isEmpty()) {
            throw new UnusableInputException(WORDS.say("sheet.none", athlete.id()));
        }
        SessionDate newest = dates.get(dates.size() - 1);
        LoggedSessions sessions = new LoggedSessions(athlete, console.progress(), console::say);
        Session last = sessions.withTraces(newest);
        List<Session> earlier = SessionBackground.earlier(athlete, newest);
        Paper paper = AthleteSheet.of(
                SheetViews.of(last.named(athlete.calledName(sentence -> {})), earlier, last.standing()));
        result.writeBytes(paper::write);
        return CommandRunner.DONE;
    }
}
