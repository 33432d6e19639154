package evenfall.report.coaching;

import evenfall.fusion.landing.Moments;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Reason;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Decides what is said after landings of one session, and when. A fall is told at once and silences the rest until the next
 * landing, or until the coach says go on. Not safe for use from several threads.
 */
public final class Talk {

    private static final Words WORDS = Words.beside(Talk.class);
    private static final int EVERY_SO_MANY = 3;
    private static final double NO_FALL = Double.NEGATIVE_INFINITY;

    private final Supplier<FormStandard> standard;
    private final Supplier<List<SessionLanding>> earlier;
    private final List<SessionLanding> session = new ArrayList<>();
    private final TalkWindow window = new TalkWindow();
    private TalkChoice choice;
    private double fallS = NO_FALL;
    private int lostInARow;

    /**
     * A talk through a session.
     *
     * @param choice when the athlete hears something
     * @param standard what form is judged by, as far as it is known yet
     * @param earlier landings of the athlete's earlier sessions as far as they are known yet, oldest first
     */
    public Talk(TalkChoice choice, Supplier<FormStandard> standard, Supplier<List<SessionLanding>> earlier) {
        this.choice = choice;
        this.standard = standard;
        this.earlier = earlier;
    }

    /** Changes when the athlete hears something. */
    public void choose(TalkChoice newChoice) {
        choice = newChoice;
    }

    /** When the athlete hears something. */
    public TalkChoice choice() {
        return choice;
    }

    /** Whether a fall silenced it. */
    public boolean paused() {
        return fallS > NO_FALL;
    }

    /** The coach says that all is well after a fall. */
    public void goOn() {
        fallS = NO_FALL;
    }

    /**
     * What to say now.
     *
     * @param news what is new
     * @param nowS time of the newest sample, s
     * @param goesOn whether another jump, step or landing began after the last of the news
     */
    public List<Utterance> hear(News news, double nowS, boolean goesOn) {
        List<Utterance> said = new ArrayList<>();
        for (double fall : news.falls()) {
            fallS = Math.max(fallS, fall);
            lostInARow = 0;
            said.add(new Utterance(WORDS.say("fall"), false, true, true));
        }
        List<SessionLanding> landings = news.landings();
        for (int i = 0; i < landings.size(); i++) {
            SessionLanding landing = landings.get(i);
            Moments moments = landing.landing().moments();
            if (moments.contactS() > fallS) {
                goOn();
            }
            window.landed(moments.contactS(), moments.settledS(), goesOn || i < landings.size() - 1);
            List<SessionLanding> past = new ArrayList<>(earlier.get());
            past.addAll(session);
            session.add(landing);
            String sentence = sentence(landing, past);
            if (!sentence.isEmpty() && mayTalk(nowS)) {
                said.add(Utterance.said(sentence));
            }
        }
        return said;
    }

    /** Says how long the person has been standing still, s; returns whether nothing may be said (any more). */
    public boolean mustBeSilent(double nowS, double standingS) {
        window.stands(standingS);
        return !mayTalk(nowS);
    }

    private boolean mayTalk(double nowS) {
        return !paused() && window.isOpen(nowS);
    }

    private String sentence(SessionLanding landing, List<SessionLanding> past) {
        lostInARow = isLost(landing) ? lostInARow + 1 : 0;
        if (choice == TalkChoice.NONE || choice == TalkChoice.END) {
            return "";
        }
        if (lostInARow == 2) {
            return WORDS.say("lost.twice");
        }
        return choice == TalkChoice.THIRD && session.size() % EVERY_SO_MANY != 0
                ? ""
                : LandingRemark.of(landing, past, standard.get()).orElse("");
    }

    /** Whether form was lost beyond doubt: two questions failed, neither on the edge. */
    private static boolean isLost(SessionLanding landing) {
        if (landing.verdict() == null || landing.verdict().form() != Form.LOST) {
            return false;
        }
        Set<FormQuestion> failed = EnumSet.noneOf(FormQuestion.class);
        for (Reason reason : landing.verdict().reasons()) {
            if (reason.over() && !reason.onEdge()) {
                failed.add(reason.question());
            }
        }
        return failed.size() > 1;
    }
}
