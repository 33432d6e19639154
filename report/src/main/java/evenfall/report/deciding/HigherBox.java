package evenfall.report.deciding;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.heed.Standing;
import evenfall.report.weeks.HeightCount;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a higher box may be named at all: only with no pain, the next day's soreness entered and small, nothing standing
 * above, the same plan argued for; then no higher than the lower end of the form height's interval, and one small step.
 */
final class HigherBox {

    private static final Words WORDS = Words.beside(HigherBox.class);
    private static final double LEAST_STEP_M = 0.01;

    private final Block block;
    private final LastSession last;
    private final DaysAfter after;
    private final Standing standing;
    private final Rules rules;

    HigherBox(Block block, LastSession last, DaysAfter after, Standing standing, Rules rules) {
        this.block = block;
        this.last = last;
        this.after = after;
        this.standing = standing;
        this.rules = rules;
    }

    /**
     * The height no box should pass, m, or null.
     *
     * @param whyNot gets a sentence for each reason why none is named
     */
    @Nullable Double find(Choice argued, List<String> whyNot) {
        require(!standing.stops(), "no.box.pain", whyNot);
        require(standing.clinicianLimit() == null, "no.box.limit", whyNot);
        require(!standing.unreadable() && !rules.unreadable(), "no.box.unreadable", whyNot);
        require(after.painAsked(), "no.box.pain.asked", whyNot);
        require(!after.hurt() || standing.stops(), "no.box.hurt", whyNot);
        require(after.nextDayAsked(), "no.box.sore.asked", whyNot);
        require(after.sorest() < rules.sore(), "no.box.sore", whyNot);
        require(argued == Choice.SAME_PLAN || standing.stops(), "no.box.argued", whyNot);
        Double low = block.formHeight().low();
        HeightCount held = last.workingHeight(rules.heldShare());
        if (low == null || held == null) {
            whyNot.add(WORDS.say("no.box.height"));
            return null;
        }
        double working = held.heightM();
        double box = Math.floor(Math.min(working + rules.stepUpM(), low) * 100 + 1e-6) / 100;
        if (box < working + LEAST_STEP_M - 1e-9) {
            whyNot.add(WORDS.say(
                    "no.box.interval",
                    NextSessionFinder.metres(low),
                    NextSessionFinder.metres(working),
                    block.sessions().size()));
        }
        return whyNot.isEmpty() ? box : null;
    }

    private static void require(boolean holds, String key, List<String> whyNot) {
        if (!holds) {
            whyNot.add(WORDS.say(key));
        }
    }
}
