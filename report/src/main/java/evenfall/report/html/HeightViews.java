package evenfall.report.html;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.FormHeight;
import evenfall.report.chart.HeightChart;
import evenfall.report.chart.HeldShare;
import evenfall.report.chart.LandingMark;
import evenfall.report.deciding.WorkingHeight;
import evenfall.report.form.Form;
import evenfall.report.html.view.HeightView;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.Weeks;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where form gives way, in this session and in the ones before it. */
final class HeightViews {

    private static final Words WORDS = Words.beside(HeightViews.class);

    /** Older sessions say little about now. */
    private static final int SESSIONS_BEFORE = 5;

    /** For recordings that are in no log: one day is as good as another. */
    private static final SessionDate SOME_DAY = SessionDate.parse("2000-01-01").orElseThrow();

    private HeightViews() {}

    static HeightView of(Session session, List<Session> earlier, List<LandingMark> marks, int wide, int narrow) {
        List<Session> before = earlier.subList(Math.max(0, earlier.size() - SESSIONS_BEFORE), earlier.size());
        List<LandingMark> shown = marks.stream()
                .filter(mark -> mark.heightM() != null && mark.mark().form() != null && !mark.leftOut())
                .toList();
        FormHeight now = formHeight(List.of(session));
        FormHeight then = formHeight(before);
        HeightChart.Course course = course(List.of(session), now);
        HeightChart.Course earlierCourse = course(before, then);
        List<String> lines = new ArrayList<>();
        if (!shown.isEmpty()) {
            lines.add(shares(course.shares()));
        }
        lines.add(words(now));
        if (then.heightM() != null) {
            lines.add(WORDS.say(
                    "height.before",
                    before.size(),
                    Figures.fixed(then.heightM(), 2),
                    Figures.fixed(then.low(), 2),
                    Figures.fixed(then.high(), 2)));
        }
        if (!shown.isEmpty()) {
            lines.add(WORDS.say("height.key", earlierCourse.shares().isEmpty() ? 0 : before.size()));
        }
        return new HeightView(
                lines,
                WORDS.say("caution.height"),
                new HeightChart(wide, shown, course, earlierCourse).svg("heights-wide"),
                new HeightChart(narrow, shown, course, earlierCourse).svg("heights-narrow"));
    }

    private static String words(FormHeight height) {
        if (height.heightM() != null) {
            return WORDS.say(
                    "height.found",
                    Figures.fixed(height.heightM(), 2),
                    Figures.fixed(height.low(), 2),
                    Figures.fixed(height.high(), 2));
        }
        return WORDS.say("height.none", height.why() == null ? "" : height.why())
                .strip();
    }

    private static String shares(List<HeldShare> shares) {
        return WORDS.say(
                "height.shares",
                String.join(
                        ", ",
                        shares.stream()
                                .map(share -> WORDS.say(
                                        "height.share", Figures.height(share.heightM()), share.held(), share.judged()))
                                .toList()));
    }

    private static HeightChart.Course course(List<Session> sessions, FormHeight height) {
        List<HeldShare.Judged> judged = new ArrayList<>();
        for (Session session : sessions) {
            for (SessionLanding event : session.landings()) {
                Double from = event.heightM();
                Form form = event.form();
                if (event.landing().kind() == EventKind.LANDING
                        && from != null
                        && form != null
                        && !event.note().leftOut()) {
                    judged.add(new HeldShare.Judged(from, form == Form.HELD));
                }
            }
        }
        return new HeightChart.Course(HeldShare.of(judged), height.heightM(), height.low(), height.high());
    }

    /** Up to which height form was held in that share of the landings; null where at none. */
    static @Nullable HeightCount heldUpTo(Session session, double share) {
        return WorkingHeight.of(Weeks.heights(counted(List.of(session))), share);
    }

    private static FormHeight formHeight(List<Session> sessions) {
        return FormHeight.of(counted(sessions));
    }

    private static List<BlockLanding> counted(List<Session> sessions) {
        List<BlockLanding> landings = new ArrayList<>();
        for (Session session : sessions) {
            SessionDate date = session.date() == null
                    ? SOME_DAY
                    : SessionDate.parse(session.date()).orElse(SOME_DAY);
            BlockLanding.of(date, session).stream()
                    .filter(landing -> !landing.leftOut())
                    .forEach(landings::add);
        }
        return landings;
    }
}
