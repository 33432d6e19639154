package evenfall.report.turn;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.live.LiveLandings.News;
import java.util.Optional;

/** Counts landings against the coach's own cap and says once that it is reached. */
final class LandingCap {

    private static final Words WORDS = Words.beside(LandingCap.class);

    private final int cap;
    private int landings;
    private boolean told;

    /**
     * A cap.
     *
     * @param cap most landings of a session
     */
    LandingCap(int cap) {
        this.cap = cap;
    }

    /** Counts; gives the sentence when the cap has just been reached. */
    Optional<String> count(News news) {
        landings += (int) news.landings().stream()
                .filter(landing -> landing.landing().kind() == EventKind.LANDING)
                .count();
        if (told || landings < cap) {
            return Optional.empty();
        }
        told = true;
        return Optional.of(WORDS.say("cap", cap));
    }
}
