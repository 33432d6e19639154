package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints what the live analysis tells of the simulated sessions, and how it errs beside the batch with the same filter. */
final class LiveAccuracy {

    private LiveAccuracy() {}

    /** Sessions by name, all nine without; {@code each} prints where live and batch differ by more than half a sigma. */
    public static void main(String[] args) {
        List<String> names = new ArrayList<>(List.of(args));
        boolean each = names.remove("each");
        Path folder = OpenData.folder("landings").orElseThrow();
        List<LandingErrors> live = new ArrayList<>();
        List<LandingErrors> batch = new ArrayList<>();
        List<LandingErrors> both = new ArrayList<>();
        List<LandingErrors> until = new ArrayList<>();
        List<Double> delays = new ArrayList<>();
        int unsettled = 0;
        for (String name : names.isEmpty() ? SimulatedSession.NAMES : names) {
            SimulatedSession session = SimulatedSession.read(folder, name);
            RecordingAnalysis whole =
                    new RecordingAnalyser(FilterKind.LIVE).analyse(session.recording(), Progress.NONE);
            RecordingAnalysis twoPass =
                    new RecordingAnalyser(FilterKind.TWO_PASS).analyse(session.recording(), Progress.NONE);
            long start = System.nanoTime();
            LivePlay play = LivePlay.of(session.recording(), 0.03);
            double took = (System.nanoTime() - start) * 1e-9;
            List<Landing> landings =
                    play.landings().stream().map(LivePlay.Told::landing).toList();
            System.out.printf(
                    Locale.ROOT,
                    "%s live %d batch %d truth %d falls %d took %.2f s of %.0f s%n",
                    name,
                    landings.size(),
                    whole.landings().size(),
                    session.landings().size(),
                    play.falls().size(),
                    took,
                    whole.durationS());
            live.add(LandingErrors.of(landings, session.landings()));
            batch.add(LandingErrors.of(whole, session.landings()));
            both.add(LandingErrors.of(twoPass, session.landings()));
            List<Landing> prefixes = new ArrayList<>();
            for (LivePlay.Told told : play.landings()) {
                RecordingAnalysis then = new RecordingAnalyser(FilterKind.LIVE)
                        .analyse(LivePlay.until(session.recording(), told.toldS()), Progress.NONE);
                int before = prefixes.size();
                for (Landing one : then.landings()) {
                    if (Math.abs(one.moments().contactS()
                                    - told.landing().moments().contactS())
                            < 0.2) {
                        prefixes.add(one);
                    }
                }
                if (prefixes.size() != before + 1) {
                    System.out.println("   in the batch until then: " + (prefixes.size() - before) + " at "
                            + told.landing().moments().contactS());
                }
            }
            until.add(LandingErrors.of(prefixes, session.landings()));
            for (LivePlay.Told told : play.landings()) {
                Double settled = told.landing().moments().settledS();
                if (settled == null) {
                    unsettled++;
                    System.out.printf(
                            Locale.ROOT,
                            "   not settled: %d contact %.2f told %.2f %s%n",
                            told.landing().index(),
                            told.landing().moments().contactS(),
                            told.toldS(),
                            told.landing().flags());
                } else {
                    delays.add(told.toldS() - settled);
                }
            }
        }
        double[] d = delays.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "delay after settled: n %d, median %.2f, 95%% %.2f, max %.2f; not settled %d%n",
                d.length,
                d[d.length / 2],
                d[(int) (0.95 * (d.length - 1))],
                d[d.length - 1],
                unsettled);
        LandingErrors l = LandingErrors.together(live);
        LandingErrors b = LandingErrors.together(batch);
        LandingErrors u = LandingErrors.together(until);
        LandingErrors t = LandingErrors.together(both);
        System.out.printf(
                "%-22s %30s | %30s | %30s | %30s%n", "", "live", "batch until then", "batch, whole", "two-pass, whole");
        for (Figure figure : Figure.values()) {
            System.out.printf(
                    "%-22s %s | %s | %s | %s%n",
                    figure, text(l, figure), text(u, figure), text(b, figure), text(t, figure));
            for (int k = 0; each && k < l.of(figure).size() && k < u.of(figure).size(); k++) {
                double x = l.of(figure).get(k).error();
                double y = u.of(figure).get(k).error();
                double s = l.of(figure).get(k).sigma();
                if (!(Math.abs(x - y) < 0.5 * s) && !Double.isNaN(s)) {
                    System.out.printf(
                            "      %d: live %.4f until then %.4f whole %.4f sigma %.4f%n",
                            k, x, y, b.of(figure).get(k).error(), s);
                }
            }
        }
    }

    private static String text(LandingErrors errors, Figure figure) {
        ErrorSummary e = errors.summary(figure);
        return String.format(
                Locale.ROOT,
                "%8.4f max %8.4f %3.0f %3.0f %2d",
                e.rms(),
                e.largest(),
                e.withinOne(),
                e.withinTwo(),
                e.missing());
    }
}
