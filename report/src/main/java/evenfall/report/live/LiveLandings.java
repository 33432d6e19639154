package evenfall.report.live;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.ingest.recording.Recording;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Gives each landing once, as soon as it has settled or three seconds after contact, from analyses of the data so far.
 *
 * <p>Two analyses see a landing at slightly different moments; contacts closer than {@value #SAME_S} s are the same.
 * Not safe for use from several threads.
 */
public final class LiveLandings {

    private static final double SAME_S = 0.3;

    /** A landing that has not settled is given this long after contact. */
    private static final double PATIENCE_S = 3;

    /** How long the body has to be still for a landing to have settled. */
    private static final double STILL_S = 0.3;

    /** No news. */
    public static final News NOTHING = new News(List.of(), List.of());

    private final Function<Recording, Session> analysis;
    private final List<Double> given = new ArrayList<>();
    private final List<Double> falls = new ArrayList<>();

    /**
     * A giver of landings.
     *
     * @param analysis the causal analysis of a recording
     */
    public LiveLandings(Function<Recording, Session> analysis) {
        this.analysis = analysis;
    }

    /**
     * What the data so far adds.
     *
     * @param landings landings to show, in order
     * @param falls moments of falls, s, in order
     */
    public record News(List<SessionLanding> landings, List<Double> falls) {

        public News {
            landings = List.copyOf(landings);
            falls = List.copyOf(falls);
        }
    }

    /** Analyses the data so far and gives what is new and settled. */
    public News soFar(Recording recording) {
        return news(recording, false);
    }

    /** Analyses the whole and gives what is left, settled or not. */
    public News atEnd(Recording recording) {
        return news(recording, true);
    }

    private News news(Recording recording, boolean end) {
        double now = recording.pelvis().stream().durationS();
        List<SessionLanding> landings = new ArrayList<>();
        List<Double> fallen = new ArrayList<>();
        for (SessionLanding event : analysis.apply(recording).landings()) {
            Landing landing = event.landing();
            double contact = landing.moments().contactS();
            if (landing.kind() == EventKind.LANDING && (end || settled(landing, now)) && isNew(given, contact)) {
                given.add(contact);
                landings.add(event);
            } else if (landing.kind() == EventKind.FALL && isNew(falls, contact)) {
                falls.add(contact);
                fallen.add(contact);
            }
        }
        return new News(landings, fallen);
    }

    private static boolean settled(Landing landing, double now) {
        Double settled = landing.moments().settledS();
        return now >= landing.moments().contactS() + PATIENCE_S || (settled != null && now >= settled + STILL_S);
    }

    private static boolean isNew(List<Double> known, double contact) {
        return known.stream().noneMatch(before -> Math.abs(before - contact) < SAME_S);
    }
}
