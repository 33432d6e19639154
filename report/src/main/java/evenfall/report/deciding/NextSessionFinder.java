package evenfall.report.deciding;

import static evenfall.report.deciding.Choice.CHANGE_ONE;
import static evenfall.report.deciding.Choice.GO_LOWER;
import static evenfall.report.deciding.Choice.SAME_PLAN;
import static evenfall.report.deciding.Choice.STAY;
import static evenfall.report.deciding.Choice.STOP;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.form.FormQuestion;
import evenfall.report.heed.Standing;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import evenfall.report.weeks.CueSpan;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.Weeks;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/** Weighs the ways on with the next session. */
public final class NextSessionFinder {

    private static final Words WORDS = Words.beside(NextSessionFinder.class);
    private static final double CENTIMETRES = 100;

    private final Block block;
    private final SortedMap<LocalDate, List<DiaryEntry>> diary;
    private final Standing standing;
    private final Rules rules;
    private final Facts facts = new Facts();

    private NextSessionFinder(
            Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, Standing standing, Rules rules) {
        this.block = block;
        this.diary = diary;
        this.standing = standing;
        this.rules = rules;
    }

    /**
     * Weighs.
     *
     * @param block the sessions and their landings
     * @param last the last session of the block with its verdicts, or null if it cannot be read
     * @param weeks the block week by week
     * @param diary what holds of the whole diary
     * @param standing what stands above
     * @param rules the coach's
     */
    public static NextSession of(
            Block block,
            @Nullable Session last,
            Weeks weeks,
            SortedMap<LocalDate, List<DiaryEntry>> diary,
            Standing standing,
            Rules rules) {
        return new NextSessionFinder(block, diary, standing, rules).weigh(last, weeks);
    }

    private NextSession weigh(@Nullable Session session, Weeks weeks) {
        stop();
        if (block.sessions().isEmpty()) {
            facts.say("none").speaksFor(STAY).against(SAME_PLAN);
            facts.name(STAY, "choice.stay.none");
            return next(null, standing.stops() ? STOP : STAY, null, List.of(WORDS.say("no.box.none")));
        }
        SessionDate date = block.sessions().get(block.sessions().size() - 1).date();
        LastSession last = LastSession.of(block, date, session);
        DaysAfter after = DaysAfter.of(date.day(), diary);
        boolean lower = lower(last, after);
        boolean stay = stay(last, after);
        boolean change = change(last, weeks);
        same(last);
        Choice argued = standing.stops() ? STOP : lower ? GO_LOWER : stay ? STAY : change ? CHANGE_ONE : SAME_PLAN;
        List<String> whyNot = new ArrayList<>();
        Double box = new HigherBox(block, last, after, standing, rules).find(argued, whyNot);
        if (box != null) {
            facts.say(
                            "box",
                            metres(box),
                            metres(rules.stepUpM()),
                            block.sessions().size())
                    .speaksFor(SAME_PLAN);
        }
        return next(date, argued, box, whyNot);
    }

    private NextSession next(@Nullable SessionDate after, Choice argued, @Nullable Double box, List<String> whyNot) {
        return new NextSession(
                after,
                standing,
                argued,
                facts.options(),
                box,
                whyNot,
                rules.settings().all());
    }

    private void stop() {
        standing.sentences().forEach(sentence -> {
            if (standing.stops()) {
                facts.fact(sentence).speaksFor(STOP).against(GO_LOWER, STAY, CHANGE_ONE, SAME_PLAN);
            } else {
                facts.fact(sentence).against(SAME_PLAN);
            }
        });
        if (!standing.stops()) {
            facts.say("no.pain.open").against(STOP);
        }
    }

    private boolean lower(LastSession last, DaysAfter after) {
        boolean lower = false;
        int run = last.lostInARow();
        if (run >= rules.lostInARow()) {
            Double height = last.lowestOfLost(rules.lostInARow());
            facts.say(
                            height == null ? "lost.run" : "lost.run.height",
                            run,
                            rules.lostInARow(),
                            height == null ? "" : metres(height))
                    .speaksFor(GO_LOWER)
                    .against(STAY, SAME_PLAN);
            lower = true;
        } else if (last.judged() > 0) {
            facts.say("lost.no.run", rules.lostInARow()).against(GO_LOWER);
        }
        if (last.falls() > 0) {
            facts.say("fall", last.falls()).speaksFor(STOP, GO_LOWER).against(SAME_PLAN);
            lower = true;
        }
        if (after.sorest() >= rules.sore()) {
            facts.say("sore", after.sorestRegion(), Integer.toString(after.sorest()), rules.sore())
                    .speaksFor(GO_LOWER)
                    .against(SAME_PLAN, STAY);
            lower = true;
        } else if (after.asked()) {
            facts.say("not.sore", Integer.toString(after.sorest()), rules.sore())
                    .speaksFor(SAME_PLAN)
                    .against(GO_LOWER);
        }
        lower |= tooHigh(last);
        if (last.judged() > 0
                && last.workingHeight(rules.heldShare()) == null
                && !last.highest().isEmpty()) {
            facts.say("nowhere.held", share(rules.heldShare()))
                    .speaksFor(GO_LOWER)
                    .against(SAME_PLAN);
            lower = true;
        }
        return lower;
    }

    /** Whether form was more often not held than held at some height. */
    private boolean tooHigh(LastSession last) {
        HeightCount failed = last.mostlyNotHeld();
        Double lost = last.lowestOfLost(rules.lostInARow());
        HeightCount working = last.workingHeight(rules.heldShare());
        if (failed != null) {
            facts.fact(heldOnly(failed, working)).speaksFor(GO_LOWER).against(STAY, SAME_PLAN);
        }
        Double from = failed == null ? null : Double.valueOf(failed.heightM());
        Double below = from == null || (lost != null && lost < from) ? lost : from;
        if (below != null && working != null && working.heightM() < below) {
            facts.name(GO_LOWER, "choice.go-lower.working", metres(working.heightM()), working.held(), working.all());
        } else if (below != null) {
            facts.name(GO_LOWER, "choice.go-lower.height", metres(below));
        }
        return failed != null;
    }

    /** How often form was held at a height, and up to which other it was. */
    private static String heldOnly(HeightCount at, @Nullable HeightCount working) {
        return working == null
                ? WORDS.say("held.at", metres(at.heightM()), at.held(), at.all())
                : WORDS.say(
                        "held.at.working",
                        metres(at.heightM()),
                        at.held(),
                        at.all(),
                        metres(working.heightM()),
                        working.held(),
                        working.all());
    }

    private boolean stay(LastSession last, DaysAfter after) {
        boolean stay = false;
        if (!after.asked()) {
            facts.say("not.asked.sore").speaksFor(STAY).against(SAME_PLAN);
            stay = true;
        }
        if (after.hurt()) {
            facts.say("hurt").speaksFor(STAY, GO_LOWER).against(SAME_PLAN);
            stay = true;
        } else if (!after.painAsked()) {
            facts.say("not.asked.pain").speaksFor(STAY).against(SAME_PLAN);
            stay = true;
        } else {
            facts.say("no.pain").speaksFor(SAME_PLAN).against(STOP);
        }
        if (last.landings() > rules.cap()) {
            facts.say("cap", last.landings(), rules.cap()).speaksFor(STAY).against(SAME_PLAN);
            stay = true;
        }
        Optional<HeightCount> highest = last.highest();
        HeightCount working = last.workingHeight(rules.heldShare());
        if (last.mostlyNotHeld() != null) {
            // Going lower is told by the height where form was held; staying is staying where it was not.
            facts.name(STAY, "choice.stay.highest", metres(highest.orElseThrow().heightM()));
        } else if (working != null) {
            facts.name(STAY, "choice.stay.height", metres(working.heightM()), working.held(), working.all());
            if (highest.isPresent() && working.heightM() < highest.get().heightM()) {
                facts.fact(heldOnly(highest.get(), working)).speaksFor(STAY).against(SAME_PLAN);
                stay = true;
            }
        }
        return stay;
    }

    private boolean change(LastSession last, Weeks weeks) {
        boolean change = false;
        Optional<Map.Entry<FormQuestion, Integer>> fault = last.commonFault();
        if (fault.isPresent() && fault.get().getValue() >= rules.sameFault() * Math.max(1, last.judged())) {
            FormQuestion question = fault.get().getKey();
            String example = last.example(question);
            facts.say("fault", fault.get().getValue(), last.judged(), question.words(), example == null ? "" : example)
                    .speaksFor(CHANGE_ONE)
                    .against(SAME_PLAN);
            change = true;
        } else if (last.judged() > 0) {
            facts.say("no.fault", share(rules.sameFault())).against(CHANGE_ONE);
        }
        for (String question : weeks.questions()) {
            facts.fact(question).speaksFor(CHANGE_ONE);
        }
        List<CueSpan> cues = weeks.cues();
        if (!cues.isEmpty()) {
            CueSpan cue = cues.get(cues.size() - 1);
            boolean young = cue.sessions() < rules.cueSessions();
            Facts.Side said = facts.say("cue", cue.cue(), cue.sessions(), rules.cueSessions());
            if (young) {
                said.speaksFor(SAME_PLAN).against(CHANGE_ONE);
                return false;
            }
            if (change) {
                said.speaksFor(CHANGE_ONE);
            }
        }
        return change;
    }

    private void same(LastSession last) {
        if (last.judged() > 0) {
            boolean held = last.held() >= rules.heldShare() * last.judged();
            Facts.Side said =
                    facts.say(held ? "held" : "held.too.seldom", last.held(), last.judged(), share(rules.heldShare()));
            if (held) {
                said.speaksFor(SAME_PLAN).against(GO_LOWER);
            } else {
                said.speaksFor(STAY).against(SAME_PLAN);
            }
        } else {
            facts.say("not.judged").speaksFor(STAY);
        }
        if (rules.unreadable()) {
            facts.say("rules.unreadable").against(SAME_PLAN);
        }
    }

    static String metres(double height) {
        return Figures.height(Math.round(height * CENTIMETRES) / CENTIMETRES);
    }

    private static String share(double share) {
        return Figures.fixed(share * 100, 0);
    }
}
