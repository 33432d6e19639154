package evenfall.report.html;

import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.chart.LandingChart;
import evenfall.report.chart.LandingScale;
import evenfall.report.chart.Mark;
import evenfall.report.chart.Svg;
import evenfall.report.form.Form;
import evenfall.report.form.Reason;
import evenfall.report.html.view.FigureGroup;
import evenfall.report.html.view.FigureView;
import evenfall.report.html.view.LandingView;
import evenfall.report.log.LandingNote;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import evenfall.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Each landing of a session in words and charts, all on one scale. */
final class LandingViews {

    private static final Words WORDS = Words.beside(LandingViews.class);

    private final LandingChart chart;

    /** For these landings and no others: they set the scale. */
    LandingViews(List<SessionLanding> landings) {
        chart = new LandingChart(LandingScale.over(landings.stream()
                .map(SessionLanding::trace)
                .filter(Objects::nonNull)
                .toList()));
    }

    LandingView view(SessionLanding event) {
        int number = event.landing().index();
        Measures measures = event.landing().measures();
        List<FigureGroup> groups = measures == null ? List.of() : FigureWords.groups(measures);
        List<FigureView> science = measures == null ? List.of() : FigureWords.science(measures);
        LandingTrace trace = event.trace();
        return new LandingView(
                id(event),
                number,
                WORDS.say("landing.title", Integer.toString(number)),
                mark(event).inline(),
                Figures.clock(event.landing().moments().contactS()),
                foot(event),
                height(event),
                form(event),
                !event.note().leftOut(),
                reasons(event),
                groups,
                science,
                remarks(event),
                trace == null
                        ? new Svg("")
                        : chart.draw(
                                id(event) + "-chart",
                                number,
                                trace,
                                event.landing().moments()));
    }

    static String id(SessionLanding event) {
        return WORDS.say("id.landing", Integer.toString(event.landing().index()));
    }

    static Mark mark(SessionLanding event) {
        return new Mark(side(event), verdict(event));
    }

    static String foot(SessionLanding event) {
        Side side = side(event);
        return WORDS.say("foot." + (side == null ? "unknown" : side.code()));
    }

    static String form(SessionLanding event) {
        Form form = verdict(event);
        return WORDS.say("form." + (form == null ? "unknown" : form.code()));
    }

    static String height(SessionLanding event) {
        Double height = SessionSentence.height(event);
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

    private static @Nullable Side side(SessionLanding event) {
        Side noted = event.note().side();
        Measures measures = event.landing().measures();
        return noted != null || measures == null ? noted : measures.balance().footSuggested();
    }

    private static @Nullable Form verdict(SessionLanding event) {
        return event.verdict() == null ? null : event.verdict().form();
    }

    private static List<String> reasons(SessionLanding event) {
        if (event.verdict() == null || event.verdict().form() == null) {
            return List.of(WORDS.say("reason.unknown"));
        }
        List<String> reasons =
                event.verdict().reasons().stream().map(Reason::text).toList();
        return reasons.isEmpty() ? List.of(WORDS.say("reason.none")) : reasons;
    }

    private static List<String> remarks(SessionLanding event) {
        List<String> remarks = new ArrayList<>();
        LandingNote note = event.note();
        add(remarks, "note.leftOut", note.leaveOut());
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
