package evenfall.fusion.alignment;

import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The opening routine as one sensor saw it: the quiet stance and the forward bends after it.
 *
 * @param stance the quiet stance in which angles read 0, or null if the person never stood quietly
 * @param bends the forward bends, empty if there were none
 */
public record OpeningRoutine(@Nullable Stance stance, List<ForwardBend> bends) {

    /** A stance shorter than this is no opening stance, s. */
    private static final double SHORTEST_STANCE_S = 1.0;
    /** Five seconds are asked for before the bends; settling and starting take some: common practice, no source, s. */
    private static final double ASKED_STANCE_S = 3.0;
    /** A stance reaches no further into the bend after it than this, s: common practice, no source. */
    private static final double INTO_BEND_S = 1;
    /** Bends of one routine follow one another within this, s. */
    private static final double TOGETHER_S = 25;
    /** Bends of one routine turn about axes no further apart, rad. */
    private static final double SAME_AXIS = Math.toRadians(20);
    /** Who laces a shoe turns about several axes; this much of a bend is about one. */
    private static final double STRAIGHT = 0.97;

    /** A bend that is opposed by one so many times as deep is none. */
    private static final double DEEPER = 1.5;
    /** Cosine between axes that oppose one another. */
    private static final double OPPOSED = -0.7;
    /** Before and after the bends the person stands the same way, rad. */
    private static final double SAME_STANCE = Math.toRadians(10);

    public OpeningRoutine {
        bends = List.copyOf(bends);
    }

    /**
     * Finds the routine: the two bends most like one another with those that resemble them, else the first bend, with
     * the longest stance next to them; without a bend the longest stance.
     *
     * @param stances all stances of the stream
     * @param beforeS where to stop looking: the first landing, s on the sensor's clock
     */
    public static OpeningRoutine find(SensorStream stream, List<Stance> stances, double beforeS) {
        return find(stances, beforeS, (before, after) -> BendFinder.find(stream, before, after));
    }

    /** The same with bends between two stances by {@code between}. */
    static OpeningRoutine find(
            List<Stance> stances, double beforeS, BiFunction<Stance, Stance, List<ForwardBend>> between) {
        List<ForwardBend> all = new ArrayList<>();
        for (int k = 0; k < stances.size() && stances.get(k).endS() < beforeS; k++) {
            if (decided(all, stances.get(k).endS())) {
                break;
            }
            Stance after = next(stances, k);
            if (after != null) {
                all.addAll(between.apply(stances.get(k), after));
            }
        }
        List<ForwardBend> bends = choose(all);
        return new OpeningRoutine(stanceFor(stances, bends, beforeS), bends);
    }

    /**
     * The bends that begin soon after a quiet stance as the routine asks for, and from the same posture: not those of a
     * warm-up or of tying a shoe.
     *
     * @param stances all stances of the stream
     */
    public int bendsAfterStanding(List<Stance> stances) {
        return (int) bends.stream()
                .filter(bend -> stances.stream()
                        .anyMatch(stance -> stance.lengthS() >= ASKED_STANCE_S
                                && stance.endS() < bend.startS() + INTO_BEND_S
                                && stance.endS() > bend.startS() - TOGETHER_S
                                && stance.force().angleTo(bend.before().force()) < SAME_STANCE))
                .count();
    }

    /** Whether bends that begin after {@code fromS} can no longer change which are chosen. */
    private static boolean decided(List<ForwardBend> all, double fromS) {
        return choose(all).size() > 1 && all.stream().allMatch(bend -> fromS - bend.endS() >= TOGETHER_S);
    }

    /** The next stance in which the person stands as in stance {@code k}; one held bent over lies between. */
    private static @Nullable Stance next(List<Stance> stances, int k) {
        Stance stance = stances.get(k);
        for (int j = k + 1; j < stances.size(); j++) {
            Stance later = stances.get(j);
            if (later.startS() - stance.endS() > BendFinder.LONGEST_S) {
                return null;
            }
            if (later.force().angleTo(stance.force()) < SAME_STANCE) {
                return later;
            }
        }
        return null;
    }

    private static List<ForwardBend> choose(List<ForwardBend> all) {
        List<ForwardBend> forward = new ArrayList<>();
        for (ForwardBend bend : all) {
            if (all.stream().noneMatch(other -> isOpposed(bend, other))
                    && forward.stream().noneMatch(earlier -> isHeldIn(bend, earlier))) {
                forward.add(bend);
            }
        }
        List<ForwardBend> straight =
                forward.stream().filter(bend -> bend.share() >= STRAIGHT).toList();
        List<ForwardBend> alike = mostAlike(straight);
        alike = alike.isEmpty() ? mostAlike(forward) : alike;
        return alike.isEmpty() ? forward.subList(0, Math.min(1, forward.size())) : alike;
    }

    /** Standing up between two bends and going down again, seen from where the first is held. */
    private static boolean isHeldIn(ForwardBend bend, ForwardBend other) {
        return bend.before().startS() >= other.startS() && bend.before().endS() <= other.endS();
    }

    /** Leaning back on a chair: people bend further forward than back. */
    private static boolean isOpposed(ForwardBend bend, ForwardBend other) {
        return other.depth() > DEEPER * bend.depth() && bend.axis().dot(other.axis()) < OPPOSED;
    }

    private static List<ForwardBend> mostAlike(List<ForwardBend> bends) {
        List<ForwardBend> alike = List.of();
        double least = SAME_AXIS;
        for (ForwardBend first : bends) {
            List<ForwardBend> group = bends.stream()
                    .filter(bend -> bend.startS() >= first.startS()
                            && bend.startS() - first.endS() < TOGETHER_S
                            && bend.axis().angleTo(first.axis()) < SAME_AXIS)
                    .toList();
            for (ForwardBend bend : group) {
                double apart = bend.axis().angleTo(first.axis());
                if (bend.startS() > first.startS() && apart < least) {
                    least = apart;
                    alike = group;
                }
            }
        }
        return alike;
    }

    private static @Nullable Stance stanceFor(List<Stance> stances, List<ForwardBend> bends, double beforeS) {
        Stance best = null;
        for (Stance stance : stances) {
            boolean near = bends.isEmpty()
                    ? stance.endS() < beforeS
                    : stance.endS() < bends.get(0).startS() + INTO_BEND_S
                            && stance.startS() > bends.get(0).startS() - TOGETHER_S;
            if (near && stance.lengthS() > (best == null ? SHORTEST_STANCE_S : best.lengthS())) {
                best = stance;
            }
        }
        return best;
    }
}
