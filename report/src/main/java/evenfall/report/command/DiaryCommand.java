package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.heed.BodyRegion;
import evenfall.report.heed.Standing;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.Now;
import evenfall.report.table.DiaryText;
import evenfall.report.table.OutlookText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Adds to an athlete's diary, or prints it. */
@Command(name = "diary", addMethodSubcommands = false)
final class DiaryCommand implements Task {

    private static final Words WORDS = Words.beside(DiaryCommand.class);

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", converter = DateOption.OfDay.class)
    private @Nullable LocalDate date;

    @Option(names = "--soreness", paramLabel = "REGION=0..10")
    private List<String> soreness = List.of();

    @Option(names = "--pain", paramLabel = "REGION=0..10")
    private List<String> pain = List.of();

    @Option(names = "--sign", paramLabel = "SIGN")
    private List<String> signs = List.of();

    @Option(names = "--effort", paramLabel = "0..10")
    private @Nullable String effort;

    @Option(names = "--minutes", paramLabel = "N")
    private @Nullable String minutes;

    @Option(names = "--result", paramLabel = "NAME=VALUE[UNIT]")
    private List<String> results = List.of();

    @Option(names = "--cue", paramLabel = "TEXT")
    private @Nullable String cue;

    @Option(names = "--note", paramLabel = "TEXT")
    private @Nullable String note;

    @Option(names = "--correct", paramLabel = "N")
    private @Nullable Integer correct;

    DiaryCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        DiaryEntry entry = entry();
        if (saysNothing(entry)) {
            if (correct != null) {
                throw new UsageException(WORDS.say("diary.correction.empty"));
            }
            print(log.open(console));
            return CommandRunner.DONE;
        }
        LocalDate day = date;
        if (day == null) {
            throw new UsageException(WORDS.say("diary.day"));
        }
        AthleteFolder athlete = log.open(console);
        athlete.locked(console::say, () -> add(athlete, day, entry));
        DateOption.tellIfAhead(day, console);
        sayUnknown(entry.soreness().keySet());
        sayUnknown(entry.pain().keySet());
        if (entry.stopsDrops()) {
            console.say(WORDS.say("diary.stops", day));
        }
        Standing.of(athlete, sentence -> {}).sentences().forEach(console::say);
        return CommandRunner.DONE;
    }

    private Path add(AthleteFolder athlete, LocalDate day, DiaryEntry entry) throws IOException {
        if (correct != null && !athlete.diary(day).numbered(sentence -> {}).containsKey(correct)) {
            throw new UsageException(WORDS.say("diary.correction.none", correct, day));
        }
        return athlete.diary(day).add(entry);
    }

    /** A place that is not known is kept as it is written, for no pain may be lost by its name. */
    private void sayUnknown(Set<String> regions) {
        for (String region : regions) {
            if (BodyRegion.named(region).isEmpty()) {
                console.say(WORDS.say(
                        "diary.place",
                        region,
                        String.join(", ", BodyRegion.PAIRED),
                        String.join(", ", BodyRegion.SINGLE)));
            }
        }
    }

    private DiaryEntry entry() {
        if ((effort == null) != (minutes == null)) {
            throw new UsageException(WORDS.say("diary.effort.alone"));
        }
        return new DiaryEntry(
                Now.text(),
                DiaryValues.regions("--soreness", soreness),
                DiaryValues.regions("--pain", pain),
                DiaryValues.signs(signs),
                effort == null ? null : DiaryValues.effort(effort),
                minutes == null ? null : DiaryValues.minutes(minutes),
                DiaryValues.results(results),
                DiaryValues.text("--cue", cue),
                DiaryValues.text("--note", note),
                correct);
    }

    private static boolean saysNothing(DiaryEntry entry) {
        return entry.soreness().isEmpty()
                && entry.pain().isEmpty()
                && entry.signs().isEmpty()
                && entry.effort() == null
                && entry.results().isEmpty()
                && entry.cue() == null
                && entry.note() == null;
    }

    private void print(AthleteFolder athlete) throws IOException {
        SortedMap<LocalDate, SortedMap<Integer, DiaryEntry>> diary = new TreeMap<>();
        for (LocalDate day : athlete.diaryDays()) {
            if (date == null || day.equals(date)) {
                diary.put(day, athlete.diary(day).numbered(console::say));
            }
        }
        List<String> first = Standing.of(athlete, sentence -> {}).sentences();
        ResultFile.at(console, null, List.of()).write(out -> {
            OutlookText.first(first, out);
            DiaryText.write(diary, out);
        });
    }
}
