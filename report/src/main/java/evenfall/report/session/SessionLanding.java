package evenfall.report.session;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.form.Circumstance;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.log.LandingNote;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One event of a session with everything known of it.
 *
 * @param landing what was measured
 * @param verdict how it was held, or null for steps and falls
 * @param trace its signals for a chart, or null for steps and falls
 * @param note what the coach noted
 * @param approved whether the coach approved it for the athlete's baseline
 */
public record SessionLanding(
        Landing landing,
        @Nullable FormVerdict verdict,
        @Nullable LandingTrace trace,
        LandingNote note,
        boolean approved) {

    /** A landing that is no part of a baseline. */
    public SessionLanding(
            Landing landing, @Nullable FormVerdict verdict, @Nullable LandingTrace trace, LandingNote note) {
        this(landing, verdict, trace, note, false);
    }

    /** The foot or feet landed on: as noted, else as the sensors suggest; null where neither tells. */
    public @Nullable Side side() {
        Measures measures = landing.measures();
        return note.side() != null || measures == null
                ? note.side()
                : measures.balance().footSuggested();
    }

    /** Whether only the sensors tell {@link #side}. */
    public boolean sideSuggested() {
        return note.side() == null && side() != null;
    }

    /** Drop height as the coach noted it, else as measured, m; null where neither is known. */
    public @Nullable Double heightM() {
        Measures measures = landing.measures();
        return note.heightM() != null || measures == null
                ? note.heightM()
                : measures.fall().dropHeightM();
    }

    /** The verdict in a word, or null where there is none. */
    public @Nullable Form form() {
        return verdict == null ? null : verdict.form();
    }

    /** The same event with another note. */
    public SessionLanding noted(LandingNote other) {
        return new SessionLanding(landing, verdict, trace, other, approved);
    }

    /** What was so when a landing with these measures was made: as noted, else as measured. */
    public static Circumstance circumstance(Measures measures, LandingNote note) {
        return Circumstance.measured(measures).noted(note.side(), note.heightM(), note.surface(), note.shoes());
    }

    /** Why something is missing or weaker than usual, the verdict's own flag included, in a fixed order. */
    public Set<LandingFlag> flags() {
        EnumSet<LandingFlag> flags = EnumSet.noneOf(LandingFlag.class);
        flags.addAll(landing.flags());
        if (verdict != null && verdict.partial()) {
            flags.add(LandingFlag.FORM_PARTIAL);
        }
        return Collections.unmodifiableSet(flags);
    }
}
