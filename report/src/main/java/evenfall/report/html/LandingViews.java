package evenfall.report.html;

import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import evenfall.report.chart.LandingChart;
import evenfall.report.chart.LandingScale;
import evenfall.report.chart.Mark;
import evenfall.report.chart.Picture;
import evenfall.report.chart.Signal;
import evenfall.report.chart.Svg;
import evenfall.report.form.Form;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Reason;
import evenfall.report.html.view.LandingView;
import evenfall.report.log.LandingNote;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Each landing of a session in words, figures and charts, all on one scale. */
final class LandingViews {

    private static final Words WORDS = Words.beside(LandingViews.class);

    private static final String FRAME = "frame";

    private final LandingChart chart;
    private final Crowds crowds;
    private final List<SessionLanding> landings;
    private final List<SessionLanding> earlier;
    private final FormStandard standard;

    /**
     * For these landings and no others: they set the scale.
     *
     * @param earlier landings of earlier sessions, oldest first
     * @param standard what they were judged by
     */
    LandingViews(List<SessionLanding> landings, List<SessionLanding> earlier, FormStandard standard) {
        this.standard = standard;
        this.landings = List.copyOf(landings);
        this.earlier = List.copyOf(earlier);
        chart = new LandingChart(LandingScale.over(landings.stream()
                .map(SessionLanding::trace)
                .filter(Objects::nonNull)
                .toList()));
        crowds = new Crowds(landings);
    }

    /** What several charts lay behind their own lines. */
    List<Svg> shared() {
        List<Svg> shared = new ArrayList<>(crowds.drawn(chart));
        shared.add(chart.frame(FRAME));
        return shared;
    }

    LandingView view(SessionLanding event) {
        int number = event.landing().index();
        Measures measures = event.landing().measures();
        Moments moments = event.landing().moments();
        LandingTrace trace = event.trace();
        FigureWords figures = new FigureWords(UsualHalf.beside(event, earlier), standard, event);
        Side side = event.side();
        Form form = event.form();
        Double height = event.heightM();
        SessionLanding best = Best.beside(event, landings);
        return new LandingView(
                id(event),
                number,
                WORDS.say("landing.title", Integer.toString(number)),
                mark(event).inline(),
                Figures.clock(moments.contactS()),
                Digits.fixed(moments.contactS(), 3),
                side == null ? "unknown" : side.code(),
                foot(event),
                height(event),
                height == null ? "" : Digits.fixed(height, 2),
                form == null ? "unknown" : form.code(),
                form(event),
                !event.note().leftOut(),
                best == null ? "" : Integer.toString(best.landing().index()),
                reasons(event),
                figures.groups(measures),
                figures.science(measures),
                remarks(event),
                trace == null
                        ? List.of()
                        : BodyViews.of(
                                id(event),
                                trace,
                                moments,
                                measures == null ? null : measures.balance().overFeet(),
                                side),
                trace == null
                        ? Picture.NONE
                        : chart.svg(id(event) + "-chart", number, trace, moments, sigma(measures), behind(event)));
    }

    private List<String> behind(SessionLanding event) {
        String crowd = crowds.of(event);
        return crowd == null ? List.of(FRAME) : List.of(FRAME, crowd);
    }

    /** One standard deviation of each line's error. */
    private static Map<Signal, Double> sigma(@Nullable Measures measures) {
        Map<Signal, Double> sigma = new EnumMap<>(Signal.class);
        if (measures != null) {
            put(sigma, Signal.PELVIC_TILT, measures.posture().pelvicTilt());
            put(sigma, Signal.TRUNK_FLEXION, measures.posture().trunkFlexion());
            put(sigma, Signal.PELVIC_ROTATION, measures.posture().pelvicRotation());
            put(sigma, Signal.TWIST, measures.posture().twist());
            put(sigma, Signal.PELVIC_OBLIQUITY, measures.posture().pelvicObliquity());
            put(sigma, Signal.TRUNK_LEAN, measures.posture().trunkLean());
            put(sigma, Signal.HEIGHT, measures.sigma().depthM());
            put(sigma, Signal.SPEED, measures.sigma().impactSpeedMS());
        }
        return sigma;
    }

    private static void put(Map<Signal, Double> sigma, Signal signal, @Nullable Excursion angle) {
        put(sigma, signal, angle == null ? null : Double.valueOf(angle.sigma()));
    }

    private static void put(Map<Signal, Double> sigma, Signal signal, @Nullable Double size) {
        if (size != null && Double.isFinite(size)) {
            sigma.put(signal, size);
        }
    }

    static String id(SessionLanding event) {
        return WORDS.say("id.landing", Integer.toString(event.landing().index()));
    }

    static Mark mark(SessionLanding event) {
        return new Mark(event.side(), event.form());
    }

    static String foot(SessionLanding event) {
        Side side = event.side();
        return WORDS.say("foot." + (side == null ? "unknown" : side.code()));
    }

    static String form(SessionLanding event) {
        Form form = event.form();
        return WORDS.say("form." + (form == null ? "unknown" : form.code()));
    }

    static String height(SessionLanding event) {
        Double height = event.heightM();
        if (height == null) {
            return WORDS.say("height.unknown");
        }
        if (event.note().heightM() != null) {
            return WORDS.say("height.noted", Figures.fixed(height, 2));
        }
        Measures measures = event.landing().measures();
        Double sigma = measures == null ? null : measures.sigma().dropHeightM();
        return WORDS.say("height.measured", Figures.fixed(height, 2), FigureWords.error(sigma, 2))
                .strip();
    }

    private static List<String> reasons(SessionLanding event) {
        if (event.verdict() == null || event.verdict().form() == null) {
            return List.of(WORDS.say("reason.unknown"));
        }
        return event.verdict().reasons().stream().map(Reason::text).toList();
    }

    private static List<String> remarks(SessionLanding event) {
        List<String> remarks = new ArrayList<>();
        LandingNote note = event.note();
        add(remarks, "note.leftOut", note.leftOut() ? note.leaveOut() : null);
        add(remarks, "note.surface", note.surface());
        add(remarks, "note.shoes", note.shoes());
        add(remarks, "note.remark", note.remark());
        for (LandingFlag flag : event.flags()) {
            remarks.add(WORDS.say("flag." + flag.code()));
        }
        return remarks;
    }

    private static void add(List<String> remarks, String key, @Nullable String value) {
        if (value != null && !value.isBlank()) {
            remarks.add(WORDS.say(key, value));
        }
    }
}
