package evenfall.report.html;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.chart.LandingMark;
import evenfall.report.chart.Mark;
import evenfall.report.chart.StripChart;
import evenfall.report.chart.Svg;
import evenfall.report.form.Form;
import evenfall.report.html.view.ColumnGroup;
import evenfall.report.html.view.FigureGroup;
import evenfall.report.html.view.FigureView;
import evenfall.report.html.view.LandingView;
import evenfall.report.html.view.MarkView;
import evenfall.report.html.view.SessionView;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;

/** Puts a session into words and charts. */
final class SessionViews {

    private static final Words WORDS = Words.beside(SessionViews.class);

    /** Drawn wide for a screen or paper, and narrow for a telephone; the page shows one of them. */
    private static final int WIDE = 960;

    private static final int NARROW = 400;

    private SessionViews() {}

    static SessionView of(Session session, Background background) {
        List<SessionLanding> landings = landings(session);
        LandingViews views = new LandingViews(
                landings,
                background.earlier().stream()
                        .flatMap(earlier -> landings(earlier).stream())
                        .toList(),
                session.standard());
        // Each is drawn by itself; drawing takes most of the time a page takes.
        List<LandingView> told = landings.parallelStream().map(views::view).toList();
        double duration = session.analysis().durationS();
        List<LandingMark> marks = landings.stream().map(SessionViews::mark).toList();
        return new SessionView(
                FirstWords.title(session),
                FirstWords.worn(session, background),
                FirstWords.health(session, landings),
                SessionSentence.of(session),
                FirstWords.worst(landings),
                FirstWords.pain(session, background),
                FirstWords.urgent(session),
                FirstWords.standing(session, landings, background),
                DiaryWords.all(session.diary()),
                new StripChart(WIDE).svg("strip-wide", duration, marks),
                new StripChart(NARROW).svg("strip-narrow", duration, marks),
                key(marks),
                HeightViews.of(session, background.earlier(), marks, WIDE, NARROW),
                columns(told),
                told,
                MostPassed.of(landings).map(LandingViews::id).orElse(""),
                views.shared(),
                others(session),
                FilmViews.of(session, background),
                SidesViews.of(landings, WIDE, NARROW),
                MethodWords.of(session));
    }

    private static List<SessionLanding> landings(Session session) {
        return session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .toList();
    }

    private static LandingMark mark(SessionLanding event) {
        boolean leftOut = event.note().leftOut();
        String words = WORDS.say(
                "strip.item",
                Integer.toString(event.landing().index()),
                Figures.clock(event.landing().moments().contactS()),
                LandingViews.foot(event),
                LandingViews.height(event),
                LandingViews.form(event));
        return new LandingMark(
                LandingViews.id(event),
                leftOut ? WORDS.say("strip.leftOut", words) : words,
                event.landing().moments().contactS(),
                event.heightM(),
                LandingViews.mark(event),
                leftOut);
    }

    /** What the signs mean: shapes, then fills; the one for feet that are not known only where there are such. */
    private static List<MarkView> key(List<LandingMark> marks) {
        List<MarkView> key = new ArrayList<>(List.of(
                new MarkView(new Mark(Side.LEFT, Form.HELD).inline(), WORDS.say("mark.left")),
                new MarkView(new Mark(Side.BOTH, Form.HELD).inline(), WORDS.say("mark.both")),
                new MarkView(new Mark(Side.RIGHT, Form.HELD).inline(), WORDS.say("mark.right"))));
        if (marks.stream().anyMatch(landing -> landing.mark().side() == null)) {
            key.add(new MarkView(new Mark(null, Form.HELD).inline(), WORDS.say("mark.unknown")));
        }
        key.addAll(List.of(
                new MarkView(new Svg(""), WORDS.say("mark.held")),
                new MarkView(new Mark(Side.BOTH, Form.STRAINED).inline(), WORDS.say("mark.strained")),
                new MarkView(new Mark(Side.BOTH, Form.LOST).inline(), WORDS.say("mark.lost"))));
        return key;
    }

    private static List<ColumnGroup> columns(List<LandingView> landings) {
        List<ColumnGroup> groups = new ArrayList<>();
        for (LandingView landing : landings) {
            if (groups.isEmpty()) {
                for (FigureGroup group : landing.groups()) {
                    groups.add(new ColumnGroup(
                            group.question(),
                            group.figures().stream()
                                    .map(figure -> new ColumnGroup.Column(
                                            figure.label(), figure.term(), limit(figure.term(), landings)))
                                    .toList()));
                }
            }
        }
        return groups;
    }

    /** The limit that all landings have in common, or empty. */
    private static String limit(String term, List<LandingView> landings) {
        List<String> limits = landings.stream()
                .flatMap(landing -> landing.groups().stream())
                .flatMap(group -> group.figures().stream())
                .filter(figure -> figure.term().equals(term))
                .map(FigureView::limit)
                .filter(limit -> !limit.isEmpty())
                .distinct()
                .toList();
        return limits.size() == 1 ? limits.get(0) : "";
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
