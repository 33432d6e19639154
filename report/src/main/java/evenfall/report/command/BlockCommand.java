package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.Needed;
import evenfall.report.block.TidyTable;
import evenfall.report.deciding.Outlook;
import evenfall.report.handout.BlockHandout;
import evenfall.report.html.BlockPage;
import evenfall.report.json.BlockDocument;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.TrainingLog;
import evenfall.report.paper.Paper;
import evenfall.report.result.LoggedBlock;
import evenfall.report.result.LoggedOutlook;
import evenfall.report.result.LoggedSessions;
import evenfall.report.table.BlockText;
import evenfall.report.table.ScienceText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints a block of training. */
@Command(name = "block", addMethodSubcommands = false)
final class BlockCommand implements Task {

    private static final Words WORDS = Words.beside(BlockCommand.class);

    private static final Set<OutputFormat> WRITTEN =
            EnumSet.of(OutputFormat.TABLE, OutputFormat.JSON, OutputFormat.HTML, OutputFormat.PDF);

    private final Console console;

    @Option(names = "--log", paramLabel = "DIR")
    private @Nullable Path log;

    @Option(names = "--athlete", paramLabel = "ID")
    private @Nullable String athlete;

    @Option(names = "--table", paramLabel = "FILE.csv")
    private @Nullable Path table;

    @Option(names = "--from", paramLabel = "YYYY-MM-DD", converter = DateOption.OfDay.class)
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "YYYY-MM-DD", converter = DateOption.OfDay.class)
    private @Nullable LocalDate to;

    @Option(names = "--format", paramLabel = "FORMAT", converter = OutputFormat.Converter.class)
    private OutputFormat format = OutputFormat.TABLE;

    @Option(names = "--out", paramLabel = "FILE")
    private @Nullable Path out;

    @Mixin
    private ScienceOptions science = new ScienceOptions();

    BlockCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        OutputFormat written = format.among(WRITTEN);
        if (from != null && to != null && to.isBefore(from)) {
            throw new UsageException(WORDS.say("block.days", to, from));
        }
        Map<String, Double> differences = science.differences(written);
        ResultFile result = ResultFile.at(console, out, table == null ? List.of() : List.of(table));
        if (table != null) {
            if (log != null) {
                throw new UsageException(WORDS.say("block.table"));
            }
            write(result, written, ofTable(table), new TreeMap<>(), null, differences);
            return CommandRunner.DONE;
        }
        AthleteFolder folder = folder();
        LoggedSessions sessions = new LoggedSessions(folder, console.progress(), console::say);
        Block block = LoggedBlock.of(folder, sessions, from, to, console::say);
        Outlook outlook = LoggedOutlook.of(folder, sessions, block, console::say);
        SortedMap<LocalDate, List<DiaryEntry>> diary = sessions.diary().days();
        boolean drawn = written == OutputFormat.HTML || written == OutputFormat.PDF;
        Block shown = drawn ? block.named(folder.calledName(sentence -> {})) : block;
        write(result, written, shown, to == null ? diary : diary.headMap(to.plusDays(1)), outlook, differences);
        return CommandRunner.DONE;
    }

    private void write(
            ResultFile result,
            OutputFormat written,
            Block block,
            SortedMap<LocalDate, List<DiaryEntry>> diary,
            @Nullable Outlook outlook,
            Map<String, Double> differences)
            throws IOException {
        if (written == OutputFormat.PDF) {
            Paper paper = BlockHandout.of(BlockPage.view(block, diary, outlook));
            result.writeBytes(paper::write);
            return;
        }
        List<Needed> needed = ScienceOptions.needed(block, differences);
        result.write(text -> {
            switch (written) {
                case JSON -> text.append(BlockDocument.of(block, outlook, needed));
                case HTML -> BlockPage.write(block, diary, outlook, text);
                default -> {
                    BlockText.write(block, outlook, text);
                    if (science.table()) {
                        ScienceText.write(block, needed, text);
                    }
                }
            }
        });
    }

    private AthleteFolder folder() throws IOException {
        if (log == null || athlete == null) {
            throw new UsageException(WORDS.say("block.which"));
        }
        if (!TrainingLog.isAthleteId(athlete)) {
            throw LogOptions.noId(athlete);
        }
        TrainingLog whole = TrainingLog.open(log);
        return NewAthlete.madeIfMissing(whole, whole.athlete(athlete), console);
    }

    private Block ofTable(Path file) throws IOException {
        List<BlockLanding> landings = TidyTable.read(file.toString(), TextFile.read(file)).stream()
                .filter(landing -> from == null || !landing.date().day().isBefore(from))
                .filter(landing -> to == null || !landing.date().day().isAfter(to))
                .toList();
        return BlockAnalysis.of(athlete, List.of(), landings, Map.of());
    }
}
