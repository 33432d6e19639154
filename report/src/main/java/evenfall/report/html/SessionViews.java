package evenfall.report.html;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Side;
import evenfall.ingest.place.Place;
import evenfall.report.chart.Mark;
import evenfall.report.chart.StripChart;
import evenfall.report.form.Form;
import evenfall.report.html.view.ColumnGroup;
import evenfall.report.html.view.FigureGroup;
import evenfall.report.html.view.FigureView;
import evenfall.report.html.view.LandingView;
import evenfall.report.html.view.MarkView;
import evenfall.report.html.view.SessionView;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import evenfall.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Puts a session into words and charts. */
final class SessionViews {

    private static final Words WORDS = Words.beside(SessionViews.class);

    /** Drawn wide for a screen or paper, and narrow for a telephone; the page shows one of them. */
    private static final int WIDE = 960;

    private static final int NARROW = 400;

    private SessionViews() {}

    static SessionView of(Session session) {
        List<SessionLanding> landings = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .toList();
        LandingViews views = new LandingViews(landings);
        List<LandingView> told = landings.stream().map(views::view).toList();
        List<String> urgent = urgent(session);
        List<String> cautions = new ArrayList<>(urgent);
        cautions.addAll(standing(landings));
        double duration = session.analysis().durationS();
        List<StripChart.Item> items = landings.stream().map(SessionViews::item).toList();
        return new SessionView(
                title(session),
                worn(session),
                MethodWords.health(session.analysis().findings()),
                SessionSentence.of(session),
                cautions,
                urgent.size(),
                DiaryWords.all(session.diary()),
                new StripChart(WIDE).draw("strip-wide", duration, items),
                new StripChart(NARROW).draw("strip-narrow", duration, items),
                key(),
                columns(told),
                told,
                others(session),
                MethodWords.of(session));
    }

    private static String title(Session session) {
        return session.athlete() == null
                ? WORDS.say("title.files", String.join(", ", session.sources()))
                : WORDS.say("title.session", session.athlete(), session.date() == null ? "" : session.date());
    }

    private static String worn(Session session) {
        boolean both = session.analysis().clock() != null
                || session.analysis().mounting().containsKey(Place.UPPER_BACK);
        return WORDS.say(both ? "worn.both" : "worn.pelvis");
    }

    private static List<String> urgent(Session session) {
        List<String> cautions = new ArrayList<>(DiaryWords.cautions(session.diary()));
        for (SessionLanding event : session.landings()) {
            if (event.landing().kind() == EventKind.FALL) {
                cautions.add(WORDS.say(
                        "caution.fall", Figures.clock(event.landing().moments().contactS())));
            }
        }
        return cautions;
    }

    private static List<String> standing(List<SessionLanding> landings) {
        List<String> cautions = new ArrayList<>();
        long lost = landings.stream()
                .filter(event -> event.verdict() != null
                        && event.verdict().form() == Form.LOST
                        && !event.note().leftOut())
                .count();
        if (lost > 0) {
            cautions.add(WORDS.say("caution.lost", lost));
        }
        cautions.add(WORDS.say("caution.always"));
        cautions.add(WORDS.say("caution.place"));
        return cautions;
    }

    private static StripChart.Item item(SessionLanding event) {
        boolean leftOut = event.note().leftOut();
        String words = WORDS.say(
                "strip.item",
                Integer.toString(event.landing().index()),
                Figures.clock(event.landing().moments().contactS()),
                LandingViews.foot(event),
                LandingViews.height(event),
                LandingViews.form(event));
        return new StripChart.Item(
                LandingViews.id(event),
                leftOut ? WORDS.say("strip.leftOut", words) : words,
                event.landing().moments().contactS(),
                SessionSentence.height(event),
                LandingViews.mark(event),
                leftOut);
    }

    private static List<MarkView> key() {
        return List.of(
                new MarkView(new Mark(Side.LEFT, Form.HELD).inline(), WORDS.say("mark.left")),
                new MarkView(new Mark(Side.BOTH, Form.HELD).inline(), WORDS.say("mark.both")),
                new MarkView(new Mark(Side.RIGHT, Form.HELD).inline(), WORDS.say("mark.right")),
                new MarkView(new Mark(null, Form.HELD).inline(), WORDS.say("mark.unknown")),
                new MarkView(new Mark(Side.BOTH, Form.HELD).inline(), WORDS.say("mark.held")),
                new MarkView(new Mark(Side.BOTH, Form.STRAINED).inline(), WORDS.say("mark.strained")),
                new MarkView(new Mark(Side.BOTH, Form.LOST).inline(), WORDS.say("mark.lost")));
    }

    private static List<ColumnGroup> columns(List<LandingView> landings) {
        List<ColumnGroup> groups = new ArrayList<>();
        for (LandingView landing : landings) {
            if (groups.isEmpty()) {
                for (FigureGroup group : landing.groups()) {
                    groups.add(new ColumnGroup(
                            group.question(),
                            group.figures().stream().map(FigureView::label).toList()));
                }
            }
        }
        return groups;
    }

    private static List<String> others(Session session) {
        List<String> lines = new ArrayList<>();
        for (SessionLanding event : session.landings()) {
            Landing landing = event.landing();
            String at = Figures.clock(landing.moments().contactS());
            if (landing.kind() == EventKind.FALL) {
                lines.add(WORDS.say("other.fall", at));
            } else if (landing.kind() == EventKind.STEPS) {
                lines.add(WORDS.say("other.steps", landing.count() == null ? 0 : landing.count(), at));
            }
        }
        return lines;
    }
}
