package evenfall.report.html;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Measures;
import evenfall.ingest.words.Words;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.FormHeight;
import evenfall.report.form.Form;
import evenfall.report.form.Reason;
import evenfall.report.heed.Standing;
import evenfall.report.html.view.SheetView;
import evenfall.report.html.view.SheetView.Shown;
import evenfall.report.log.SessionDate;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Puts what an athlete should see of their own landings into words and pictures, in plain words. */
public final class SheetViews {

    private static final Words WORDS = Words.beside(SheetViews.class);

    /** Form height "now" is that of so many days up to the last session, and of as many ending four weeks before. */
    private static final int DAYS_TOGETHER = 14;

    private static final int DAYS_AGO = 28;

    /** What gave way once may be chance. */
    private static final int FEWEST = 2;

    private SheetViews() {}

    /**
     * The sheet.
     *
     * @param last the last session, with traces
     * @param earlier the sessions before it, oldest first
     * @param standing what stands above everything
     */
    public static SheetView of(Session last, List<Session> earlier, Standing standing) {
        List<SessionLanding> landings = counted(last);
        List<Session> all = new ArrayList<>(earlier);
        all.add(last);
        return new SheetView(
                WORDS.say(
                        "sheet.title", String.valueOf(last.athlete()), SessionDate.words(String.valueOf(last.date()))),
                SessionSentence.of(last),
                standing.sentences(),
                shown("sheet.typical", typical(landings)),
                shown("sheet.best", best(landings)),
                heights(all),
                task(all, standing),
                List.of(WORDS.say("sheet.pain"), WORDS.say("sheet.place")));
    }

    /** One thing to work on; none while something hurts, and nothing beyond what a practitioner set. */
    private static String task(List<Session> sessions, Standing standing) {
        if (standing.stops()) {
            return WORDS.say("sheet.task.stop");
        }
        return standing.clinicianLimit() == null ? task(sessions) : WORDS.say("sheet.task.limit", task(sessions));
    }

    private static List<SessionLanding> counted(Session session) {
        return session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING
                        && !event.note().leftOut())
                .toList();
    }

    /** Of the height most landings came from, the one that used its limits as much as half of them did. */
    private static @Nullable SessionLanding typical(List<SessionLanding> landings) {
        Map<String, List<SessionLanding>> byHeight = new TreeMap<>();
        for (SessionLanding event : landings) {
            byHeight.computeIfAbsent(
                            Figures.height(event.heightM()) + LandingViews.foot(event), key -> new ArrayList<>())
                    .add(event);
        }
        return byHeight.values().stream()
                .max(Comparator.comparingInt(List::size))
                .map(alike -> alike.stream()
                        .sorted(Comparator.comparingDouble(Best::closeness))
                        .toList()
                        .get((alike.size() - 1) / 2))
                .orElse(null);
    }

    /** From the greatest height from which form held, the one that stayed farthest within its limits. */
    private static @Nullable SessionLanding best(List<SessionLanding> landings) {
        return landings.stream()
                .filter(event -> event.form() == Form.HELD && event.heightM() != null)
                .max(Comparator.<SessionLanding>comparingDouble(event -> Math.round(10 * heightOf(event)))
                        .thenComparing(
                                Comparator.comparingDouble(Best::closeness).reversed()))
                .orElse(null);
    }

    private static double heightOf(SessionLanding event) {
        Double height = event.heightM();
        return height == null ? 0 : height;
    }

    private static Shown shown(String key, @Nullable SessionLanding event) {
        if (event == null || event.trace() == null) {
            return new Shown(WORDS.say(key + ".none"), List.of());
        }
        Measures measures = event.landing().measures();
        return new Shown(
                WORDS.say(
                        key,
                        Integer.toString(event.landing().index()),
                        LandingViews.foot(event),
                        LandingViews.height(event)),
                BodyViews.of(
                        key.replace('.', '-'),
                        event.trace(),
                        event.landing().moments(),
                        measures == null ? null : measures.balance().overFeet(),
                        event.side()));
    }

    private static List<String> heights(List<Session> all) {
        LocalDate last = day(all.get(all.size() - 1));
        return List.of(
                height("sheet.height.now", all, last.minusDays(DAYS_TOGETHER), last),
                height("sheet.height.then", all, last.minusDays(DAYS_AGO + DAYS_TOGETHER), last.minusDays(DAYS_AGO)));
    }

    /** Form height of the sessions after {@code after} up to {@code to}. */
    private static String height(String key, List<Session> all, LocalDate after, LocalDate to) {
        List<BlockLanding> landings = new ArrayList<>();
        for (Session session : all) {
            LocalDate day = day(session);
            SessionDate date = SessionDate.parse(String.valueOf(session.date())).orElse(new SessionDate(day, 0));
            if (day.isAfter(after) && !day.isAfter(to)) {
                BlockLanding.of(date, session).stream()
                        .filter(landing -> !landing.leftOut())
                        .forEach(landings::add);
            }
        }
        FormHeight height = FormHeight.of(landings);
        return height.heightM() == null
                ? WORDS.say(key + ".none")
                : WORDS.say(key, Figures.fixed(height.heightM(), 2), range(height));
    }

    private static String range(FormHeight height) {
        return height.low() == null || height.high() == null
                ? ""
                : WORDS.say("sheet.height.range", Figures.fixed(height.low(), 2), Figures.fixed(height.high(), 2));
    }

    private static LocalDate day(Session session) {
        return SessionDate.parse(String.valueOf(session.date()))
                .map(SessionDate::day)
                .orElse(LocalDate.EPOCH);
    }

    /** What passed its limit most often in the last session, in plain words; in the one before where nothing did. */
    private static String task(List<Session> all) {
        List<SessionLanding> landings = counted(all.get(all.size() - 1));
        Map<String, Integer> counts = new TreeMap<>();
        for (SessionLanding event : landings) {
            if (event.verdict() != null) {
                event.verdict().reasons().stream()
                        .filter(Reason::over)
                        .map(Reason::measure)
                        .distinct()
                        .filter(measure -> WORDS.knows("sheet.task." + measure))
                        .forEach(measure -> counts.merge(measure, 1, Integer::sum));
            }
        }
        return counts.entrySet().stream()
                .filter(count -> count.getValue() >= FEWEST)
                .max(Map.Entry.comparingByValue())
                .map(most -> WORDS.say("sheet.task." + most.getKey(), most.getValue(), landings.size()))
                .orElseGet(() -> WORDS.say("sheet.task.none"));
    }
}
