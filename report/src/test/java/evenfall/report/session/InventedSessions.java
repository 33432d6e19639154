package evenfall.report.session;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Side;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.report.form.Form;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Invented sessions for tests of what people see: simple curves, no physics. */
public final class InventedSessions {

    private static final List<Side> FEET = List.of(Side.BOTH, Side.LEFT, Side.RIGHT);

    private InventedSessions() {}

    /** A session of so many landings, heights rising from 0.4 m; above 0.8 m the trunk leans right. */
    public static Session of(int landings, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<SessionLanding> all = new ArrayList<>();
        for (int i = 1; i <= landings; i++) {
            double height = 0.4 + 0.8 * (i - 1) / Math.max(1, landings - 1);
            Side side = FEET.get(i % 3);
            double lean = height > 0.8 ? 7 + 3 * random.nextDouble() : 1 + 2 * random.nextDouble();
            all.add(landing(i, 60.0 + 25 * i, height, side, lean, random));
        }
        return session(all, List.of(), List.of());
    }

    /** A session around these landings. */
    public static Session session(List<SessionLanding> all, List<Finding> findings, List<DiaryEntry> diary) {
        Map<Place, Mounting> mounting = Map.of(
                Place.PELVIS, new Mounting(Quaternion.IDENTITY, MountingMethod.BEND, 1.2),
                Place.UPPER_BACK, new Mounting(Quaternion.IDENTITY, MountingMethod.BEND, 1.4));
        RecordingAnalysis analysis = new RecordingAnalysis(
                120 + 25.0 * all.size(),
                200.3,
                new ClockMap(0.83, 41, 0.8, "heel drops"),
                mounting,
                findings,
                List.of(20.4, 22.9),
                all.stream().map(SessionLanding::landing).toList(),
                Map.of());
        return new Session(
                "invented-athlete",
                "2026-03-02",
                List.of("pelvis.csv", "upper-back.csv"),
                analysis,
                FilterKind.TWO_PASS,
                all,
                diary);
    }

    /** A landing whose trunk leans by so many degrees, right positive. */
    public static SessionLanding landing(
            int index, double contactS, double height, @Nullable Side side, double lean, SplittableRandom random) {
        double speed = Math.sqrt(2 * 9.81 * height);
        double peak = 4 + 5 * height + random.nextDouble();
        double depth = 0.2 + 0.1 * random.nextDouble();
        double turn = -4 + 3 * random.nextDouble();
        Moments moments = new Moments(
                contactS - speed / 9.81,
                contactS,
                contactS + 0.035,
                contactS + 0.22,
                contactS + 0.9 + 0.4 * random.nextDouble());
        LandingTrace trace = trace(speed, peak, lean, turn, random);
        boolean lost = Math.abs(lean) > 8;
        boolean strained = Math.abs(lean) > 6;
        List<Reason> reasons = strained
                ? List.of(new Reason(
                        FormQuestion.STAYS_EVEN,
                        "trunkLeanDeg.change",
                        "trunk leaned " + (lean > 0 ? "right " : "left ") + Math.round(Math.abs(lean) * 10) / 10.0
                                + "° (limit 6°)",
                        true,
                        false))
                : List.of();
        Measures measures = new Measures(
                new Fall(speed / 9.81, speed, height),
                new Impact(peak, peak * 0.7, false, null, 28.0, 210.0),
                new Braking(depth, 0.21, 1 + height / depth, 96.0),
                new Posture(
                        excursion(8, 25, 1.0),
                        excursion(0.5, lean, 0.8),
                        excursion(0.2, turn, 1.1),
                        excursion(2, 12, 0.9),
                        excursion(0.1, lean / 2, 0.8),
                        excursion(0.4, 2 * turn, 1.3),
                        excursion(6, 13, 1.2)),
                new Balance(
                        new Estimate(0.02, 0.008),
                        new Estimate(-0.03, 0.01),
                        new OverFeet(0.01, -0.06, 0.0, 0.03, 0.02, 0.012),
                        0,
                        null,
                        side),
                new Sigma(0.003, 0.01, 0.06, 0.02, 0.2, 0.01, 0.1, 8.0));
        FormVerdict verdict = new FormVerdict(lost ? Form.LOST : strained ? Form.STRAINED : Form.HELD, reasons, false);
        return new SessionLanding(
                new Landing(index, EventKind.LANDING, moments, null, measures, Set.of()),
                verdict,
                trace,
                new LandingNote(side, Math.round(height * 10) / 10.0, null, null, null, null));
    }

    private static Excursion excursion(double contact, double change, double sigma) {
        return new Excursion(contact, contact + change / 4, contact + change * 0.9, contact + change, change, sigma);
    }

    private static LandingTrace trace(double speed, double peak, double lean, double turn, SplittableRandom random) {
        int n = 800;
        double[][] c = new double[11][n];
        for (int i = 0; i < n; i++) {
            double t = -1.5 + i / 200.0;
            boolean air = t < 0 && t > -speed / 9.81;
            double noise = 0.03 * (random.nextDouble() - 0.5);
            double pulse = t < 0 ? 0 : (peak - 1) * Math.exp(-Math.pow((t - 0.035) / 0.02, 2)) + 2 * bump(t, 0.15, 0.1);
            c[0][i] = t;
            c[1][i] = (air ? 0.15 : 1) + pulse + noise;
            c[2][i] = (air ? 0.2 : 1) + 0.7 * (t < 0.01 ? 0 : pulse) + noise;
            c[3][i] = -0.25 * bump(t, 0.25, 0.25);
            c[4][i] = air ? -9.81 * (t + speed / 9.81) : 0;
            c[5][i] = 2 + 12 * bump(t, 0.25, 0.25);
            c[6][i] = lean / 2 * bump(t, 0.3, 0.25);
            c[7][i] = turn * bump(t, 0.2, 0.3);
            c[8][i] = 8 + 25 * bump(t, 0.28, 0.3);
            c[9][i] = lean * bump(t, 0.35, 0.3);
            c[10][i] = 2 * turn * bump(t, 0.25, 0.3);
        }
        return new LandingTrace(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9], c[10]);
    }

    private static double bump(double t, double centre, double width) {
        return Math.exp(-Math.pow((t - centre) / width, 2));
    }
}
