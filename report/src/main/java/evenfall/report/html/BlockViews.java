package evenfall.report.html;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.BlockSession;
import evenfall.report.block.StrapPlace;
import evenfall.report.chart.DifferenceChart;
import evenfall.report.chart.Mark;
import evenfall.report.chart.Picture;
import evenfall.report.deciding.Outlook;
import evenfall.report.form.Form;
import evenfall.report.html.view.BlockView;
import evenfall.report.html.view.DayView;
import evenfall.report.html.view.MarkView;
import evenfall.report.html.view.RowView;
import evenfall.report.html.view.Span;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.ProgramVersion;
import evenfall.report.words.Days;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Puts a block into words and charts. */
final class BlockViews {

    private static final Words WORDS = Words.beside(BlockViews.class);
    private static final double CENTIMETRES = 100;

    private final Block block;
    private final SortedMap<LocalDate, List<DiaryEntry>> diary;
    private final @Nullable Outlook outlook;
    private final @Nullable LocalDate from;
    private final @Nullable LocalDate to;

    BlockViews(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, @Nullable Outlook outlook) {
        this.block = block;
        this.outlook = outlook;
        List<LocalDate> days = new ArrayList<>(diary.keySet());
        block.sessions().forEach(session -> days.add(session.date().day()));
        from = block.sessions().isEmpty()
                ? null
                : block.sessions().get(0).date().day();
        // The diary of the days after the last session belongs to it: soreness comes late.
        to = days.stream().max(Comparator.naturalOrder()).orElse(null);
        this.diary = from == null ? new TreeMap<>() : diary.tailMap(from);
    }

    BlockView view() {
        List<String> urgent = urgent();
        List<String> cautions = new ArrayList<>(urgent);
        cautions.add(WORDS.say("caution.always"));
        cautions.add(WORDS.say("caution.place"));
        BlockCharts charts = new BlockCharts(block, diary);
        BlockChanges changes = new BlockChanges(block);
        List<DifferenceChart.Row> pairs = changes.pairs();
        LocalDate first = from == null ? LocalDate.EPOCH : from;
        LocalDate last = to == null ? first : to;
        return new BlockView(
                block.athlete() == null ? WORDS.say("title.block.table") : WORDS.say("title.block", block.athlete()),
                from == null ? "" : WORDS.say("block.span", Days.words(first), Days.words(last)),
                BlockSentence.of(block, diary),
                cautions,
                urgent.size(),
                linked(weeks(changes)),
                linked(changes.tiring()),
                linked(changes.sides()),
                pairs(pairs, BlockCharts.WIDE, "pairs-wide"),
                pairs(pairs, BlockCharts.NARROW, "pairs-narrow"),
                charts.done("block-wide", BlockCharts.WIDE, first, last),
                charts.done("block-narrow", BlockCharts.NARROW, first, last),
                charts.told("diary-wide", BlockCharts.WIDE, first, last),
                charts.told("diary-narrow", BlockCharts.NARROW, first, last),
                feet(),
                heights(),
                sessions(),
                days(),
                outlook == null ? List.of() : NextSessionLines.of(outlook),
                outlook == null ? List.of() : NextSessionLines.rules(outlook),
                method());
    }

    /** What changed over the weeks, and where the strap may have. */
    private List<String> weeks(BlockChanges changes) {
        List<String> lines = new ArrayList<>(changes.weeks());
        for (BlockSession session : block.sessions()) {
            for (StrapPlace strap : session.straps()) {
                lines.add(WORDS.say(
                        "block.strap",
                        session.date().words(),
                        strap.place().words(),
                        Math.round(strap.offDeg()),
                        Math.round(strap.usualDeg())));
            }
        }
        return lines;
    }

    private static List<List<Span>> linked(List<String> sentences) {
        return sentences.stream().map(TermLinks::in).toList();
    }

    private static Picture pairs(List<DifferenceChart.Row> rows, int width, String id) {
        return rows.isEmpty() ? Picture.NONE : new DifferenceChart(width, rows).picture(id);
    }

    private List<String> urgent() {
        List<String> lines = new ArrayList<>();
        if (outlook != null) {
            lines.addAll(outlook.standing().sentences());
        }
        for (String line : DiaryWords.lastDayCautions(diary)) {
            lines.add(line);
        }
        return lines;
    }

    private boolean footUnknown() {
        return block.landings().stream().anyMatch(landing -> landing.side() == null);
    }

    /** The columns of {@link #heights}; feet that are not known have one only where there are such. */
    private List<MarkView> feet() {
        List<MarkView> feet = new ArrayList<>(List.of(
                new MarkView(new Mark(Side.LEFT, Form.HELD).inline(), WORDS.say("foot.left")),
                new MarkView(new Mark(Side.BOTH, Form.HELD).inline(), WORDS.say("foot.both")),
                new MarkView(new Mark(Side.RIGHT, Form.HELD).inline(), WORDS.say("foot.right"))));
        if (footUnknown()) {
            feet.add(new MarkView(new Mark(null, Form.HELD).inline(), WORDS.say("foot.unknown")));
        }
        return feet;
    }

    /** Landings by height, noted or to a tenth of a metre, and by foot: how many, and in how many form held. */
    private List<RowView> heights() {
        SortedMap<Long, List<BlockLanding>> byHeight = new TreeMap<>(Comparator.reverseOrder());
        List<BlockLanding> unknown = new ArrayList<>();
        for (BlockLanding landing : block.landings()) {
            Double height = landing.toldHeightM();
            if (height == null) {
                unknown.add(landing);
            } else {
                byHeight.computeIfAbsent(Math.round(height * CENTIMETRES), key -> new ArrayList<>())
                        .add(landing);
            }
        }
        List<RowView> rows = new ArrayList<>();
        byHeight.forEach((height, landings) ->
                rows.add(row(WORDS.say("height.noted", Figures.height(height / CENTIMETRES)), landings)));
        if (!unknown.isEmpty()) {
            rows.add(row(WORDS.say("height.unknown"), unknown));
        }
        return rows;
    }

    private RowView row(String head, List<BlockLanding> landings) {
        List<String> cells = new ArrayList<>(List.of(
                cell(landings, landing -> landing.side() == Side.LEFT),
                cell(landings, landing -> landing.side() == Side.BOTH),
                cell(landings, landing -> landing.side() == Side.RIGHT)));
        if (footUnknown()) {
            cells.add(cell(landings, landing -> landing.side() == null));
        }
        SessionDate last = block.sessions().get(block.sessions().size() - 1).date();
        cells.add(cell(landings, landing -> landing.date().equals(last)));
        return new RowView(head, cells);
    }

    private static String cell(List<BlockLanding> landings, Predicate<BlockLanding> which) {
        List<BlockLanding> chosen = landings.stream().filter(which).toList();
        long held =
                chosen.stream().filter(landing -> landing.form() == Form.HELD).count();
        return chosen.isEmpty() ? Figures.MISSING : WORDS.say("block.held", held, chosen.size());
    }

    private List<RowView> sessions() {
        List<RowView> rows = new ArrayList<>();
        for (BlockSession session : block.sessions()) {
            List<BlockLanding> landings = block.landings().stream()
                    .filter(landing -> landing.date().equals(session.date()))
                    .toList();
            rows.add(new RowView(
                    session.date().words(),
                    List.of(
                            Integer.toString(session.landings()),
                            Integer.toString(session.left()),
                            Integer.toString(session.both()),
                            Integer.toString(session.right()),
                            Long.toString(landings.stream()
                                    .filter(landing -> landing.form() == Form.HELD)
                                    .count()),
                            BlockSentence.heights(landings),
                            Figures.fixed(session.effortMinutes(), 0))));
        }
        return rows;
    }

    private List<DayView> days() {
        List<DayView> days = new ArrayList<>();
        diary.forEach((day, entries) -> {
            List<String> lines = DiaryWords.all(entries);
            if (!lines.isEmpty()) {
                days.add(new DayView(Days.words(day), lines));
            }
        });
        return days;
    }

    private static List<String> method() {
        return List.of(
                WORDS.say("block.method.median"),
                WORDS.say("block.method.leftOut"),
                WORDS.say("block.method.band"),
                WORDS.say("block.method.among"),
                WORDS.say("method.sides"),
                WORDS.say("method.version", ProgramVersion.PROGRAM, ProgramVersion.version()));
    }
}
