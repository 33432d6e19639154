package evenfall.report.round;

import evenfall.report.live.LiveLandings.News;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was told of the landings of a turn. For the front thread. */
public final class Drops {

    private final List<LandingMark> strip = new ArrayList<>();
    private final List<PlanFrom> plans = new ArrayList<>();
    private @Nullable SessionLanding last;
    private String headline = "";
    private String second = "";
    private List<String> reasons = List.of();
    private Plan plan = Plan.NONE;
    private String heard = "";
    private boolean fallen;

    /** A plan and the moment it holds from, s. */
    private record PlanFrom(double fromS, Plan plan) {}

    /** What holds for the landings to come. */
    public Plan plan() {
        return plan;
    }

    void plan(Plan next, double fromS) {
        plan = next;
        plans.add(new PlanFrom(fromS, next));
    }

    /** All landings so far, in order. */
    public List<LandingMark> strip() {
        return List.copyOf(strip);
    }

    /** The last landing, or null before the first. */
    public @Nullable SessionLanding last() {
        return last;
    }

    /** The last landing in a few words; empty before the first. */
    public String headline() {
        return headline;
    }

    /** Which it was; empty before the first. */
    public String second() {
        return second;
    }

    /** What speaks against it. */
    public List<String> reasons() {
        return reasons;
    }

    /** Whether somebody fell and the coach has not said that all is well. */
    public boolean fallen() {
        return fallen;
    }

    /** What the athlete heard of the last landing; empty if nothing. */
    public String heard() {
        return heard;
    }

    void heard(String sentence) {
        heard = sentence;
    }

    void goOn() {
        fallen = false;
    }

    void came(News news) {
        double fallS =
                news.falls().stream().mapToDouble(Double::doubleValue).max().orElse(Double.NEGATIVE_INFINITY);
        fallen |= !news.falls().isEmpty();
        for (SessionLanding landing : news.landings()) {
            double contactS = landing.landing().moments().contactS();
            if (contactS > fallS && news.falls().isEmpty()) {
                fallen = false;
            }
            Plan held = at(contactS);
            last = landing;
            heard = "";
            SessionLanding noted = landing.noted(held.note());
            strip.add(LandingWords.mark(noted));
            headline = LandingWords.headline(landing);
            second = LandingWords.second(strip.size(), noted);
            reasons = LandingWords.reasons(landing);
        }
    }

    private Plan at(double contactS) {
        Plan held = Plan.NONE;
        for (PlanFrom each : plans) {
            held = each.fromS() <= contactS ? each.plan() : held;
        }
        return held;
    }
}
