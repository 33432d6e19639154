package evenfall.report.round;

import evenfall.report.log.DiaryEntry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What somebody answers to how they feel. For the front thread. */
public final class Feeling {

    /** The largest number of soreness and pain. */
    public static final int WORST = 10;

    private final Map<String, Integer> soreness = new LinkedHashMap<>();
    private final Map<String, Integer> pain = new LinkedHashMap<>();
    private final List<String> signs = new ArrayList<>();
    private final boolean stoppedByPain;
    private boolean asksForPain;
    private @Nullable String part;

    /**
     * Questions without answers yet.
     *
     * @param stoppedByPain whether pain stopped the drops just now
     */
    Feeling(boolean stoppedByPain) {
        this.stoppedByPain = stoppedByPain;
        this.asksForPain = stoppedByPain;
    }

    /** Whether it is asked since pain stopped the drops. */
    public boolean stoppedByPain() {
        return stoppedByPain;
    }

    /** Whether the next number is of pain; else of soreness. */
    public boolean asksForPain() {
        return asksForPain;
    }

    public void askForPain(boolean wanted) {
        asksForPain = wanted;
    }

    /** The region the next number is for, or null. */
    public @Nullable String part() {
        return part;
    }

    public void point(String code) {
        part = code;
    }

    /** Gives the region pointed at a number; 0 takes it away. */
    public void rate(int number) {
        String code = part;
        if (code == null || number < 0 || number > WORST) {
            return;
        }
        Map<String, Integer> which = asksForPain ? pain : soreness;
        if (number == 0) {
            which.remove(code);
        } else {
            which.put(code, number);
        }
    }

    /** Sets a warning sign, or takes it back. */
    public void sign(String code, boolean there) {
        signs.remove(code);
        if (there) {
            signs.add(code);
        }
    }

    public Map<String, Integer> soreness() {
        return Collections.unmodifiableMap(soreness);
    }

    public Map<String, Integer> pain() {
        return Collections.unmodifiableMap(pain);
    }

    public List<String> signs() {
        return List.copyOf(signs);
    }

    /** Whether anything is sore, hurts, or is a sign. */
    public boolean isSomething() {
        return !(soreness.isEmpty() && pain.isEmpty() && signs.isEmpty());
    }

    /** Whether it ends the drops of the day: new pain of any size or a sign. */
    public boolean stopsDrops() {
        return stoppedByPain || entry().stopsDrops();
    }

    /** The answer for the diary. Who stopped for pain and named no place has pain somewhere. */
    DiaryEntry entry() {
        Map<String, Integer> hurts = new LinkedHashMap<>(pain);
        if (stoppedByPain && hurts.isEmpty()) {
            hurts.put(BodyPart.WHOLE, 1);
        }
        return DiaryAnswers.feeling(soreness, hurts, signs);
    }
}
