package evenfall.report.deciding;

import evenfall.fusion.event.EventKind;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.form.Form;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.Reason;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.Weeks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The last session of a block as the decision looks at it: only landings that count. */
final class LastSession {

    private final List<BlockLanding> landings;
    private final @Nullable Session session;

    private LastSession(List<BlockLanding> landings, @Nullable Session session) {
        this.landings = landings;
        this.session = session;
    }

    static LastSession of(Block block, SessionDate date, @Nullable Session session) {
        List<BlockLanding> landings = block.landings().stream()
                .filter(landing -> landing.date().equals(date))
                .sorted(Comparator.comparingInt(BlockLanding::index))
                .toList();
        return new LastSession(landings, session);
    }

    int landings() {
        return landings.size();
    }

    int judged() {
        return (int) landings.stream().filter(landing -> landing.form() != null).count();
    }

    int held() {
        return (int)
                landings.stream().filter(landing -> landing.form() == Form.HELD).count();
    }

    int falls() {
        return session == null
                ? 0
                : (int) session.landings().stream()
                        .filter(event -> event.landing().kind() == EventKind.FALL)
                        .count();
    }

    /** The longest run of landings in which form was lost. */
    int lostInARow() {
        int longest = 0;
        int run = 0;
        for (BlockLanding landing : landings) {
            run = landing.form() == Form.LOST ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /** The lowest height of a run of so many lost landings, m; null if there is no such run or no height is known. */
    @Nullable Double lowestOfLost(int inARow) {
        Double lowest = null;
        int run = 0;
        for (int i = 0; i < landings.size(); i++) {
            run = landings.get(i).form() == Form.LOST ? run + 1 : 0;
            for (int k = i; run >= inARow && k > i - run; k--) {
                Double height = landings.get(k).toldHeightM();
                lowest = height == null || (lowest != null && lowest <= height) ? lowest : height;
            }
        }
        return lowest;
    }

    /** The highest height at which form was held in that share of the landings, and at every lower one too; or null. */
    @Nullable HeightCount workingHeight(double share) {
        return WorkingHeight.of(Weeks.heights(landings), share);
    }

    /** The lowest height at which form was more often not held than held; null if there is none. */
    @Nullable HeightCount mostlyNotHeld() {
        HeightCount lowest = null;
        for (HeightCount at : Weeks.heights(landings)) {
            if (2 * at.held() < at.all()) {
                lowest = at;
            }
        }
        return lowest;
    }

    /** The highest height. */
    Optional<HeightCount> highest() {
        return Weeks.heights(landings).stream().findFirst();
    }

    /** The question that most landings failed, and how many did. */
    Optional<Map.Entry<FormQuestion, Integer>> commonFault() {
        Map<FormQuestion, Integer> faults = new EnumMap<>(FormQuestion.class);
        if (session != null) {
            for (SessionLanding event : session.landings()) {
                if (event.verdict() != null && !event.note().leftOut()) {
                    event.verdict().reasons().stream()
                            .filter(Reason::over)
                            .map(Reason::question)
                            .distinct()
                            .forEach(question -> faults.merge(question, 1, Integer::sum));
                }
            }
        }
        return faults.entrySet().stream().max(Map.Entry.comparingByValue());
    }

    /** The measure most often over its limit under a question, in the words of its first such landing; or null. */
    @Nullable String example(FormQuestion question) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        if (session != null) {
            session.landings().stream()
                    .filter(event -> event.verdict() != null && !event.note().leftOut())
                    .map(SessionLanding::verdict)
                    .filter(Objects::nonNull)
                    .flatMap(verdict -> verdict.reasons().stream())
                    .filter(reason -> reason.over() && reason.question() == question)
                    .forEach(reason -> texts.computeIfAbsent(reason.measure(), key -> new ArrayList<>())
                            .add(reason.text()));
        }
        return texts.values().stream()
                .max(Comparator.comparingInt(List::size))
                .map(all -> all.get(0))
                .orElse(null);
    }
}
