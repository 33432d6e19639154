package evenfall.report.form;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What an athlete is judged by, in sentences: all that is otherwise than where a coach starts. */
public final class StandardWords {

    private static final Words WORDS = Words.beside(StandardWords.class);

    private StandardWords() {}

    /** One sentence a limit the coach set or the athlete's baseline gave; none where all is as a coach starts. */
    public static List<String> of(FormStandard standard) {
        List<String> sentences = new ArrayList<>();
        Baseline baseline = standard.baseline();
        if (baseline.stands()) {
            sentences.add(WORDS.say("standard.baseline", baseline.landings(), baseline.sessions()));
        } else if (baseline.landings() > 0) {
            sentences.add(WORDS.say(
                    "standard.too.few",
                    baseline.landings(),
                    baseline.sessions(),
                    Baseline.LANDINGS,
                    Baseline.SESSIONS));
        }
        for (Judged judged : Judged.values()) {
            if (judged == Judged.PEAK) {
                continue;
            }
            for (Footing footing : judged.hasSide() ? Footing.values() : new Footing[] {Footing.NOT_KNOWN}) {
                Limit limit = standard.limit(judged, footing);
                if (limit.source() == LimitSource.OWN) {
                    sentences.add(own(judged, footing, limit));
                } else if (limit.source() == LimitSource.COACH && footing == Footing.NOT_KNOWN) {
                    sentences.add(WORDS.say(
                            "standard.coach",
                            name(judged),
                            FormWords.limit(judged, limit.size(1)),
                            FormWords.limit(judged, limit.starting())));
                }
            }
        }
        return sentences;
    }

    /**
     * The limit of a measure as far as it concerns a value, such as {@code limit 6°}; empty on a side without one and for the
     * peak, whose limit depends on the height.
     *
     * @param value with the sign results have
     * @param side the foot or feet landed on, or null if not known
     */
    public static String limit(FormStandard standard, Judged judged, double value, @Nullable Side side) {
        if (judged == Judged.PEAK || isFree(judged, value)) {
            return "";
        }
        String key = "limit." + judged.measure().name();
        return WORDS.say(
                WORDS.knows(key) ? key : "by.starting", FormWords.limit(judged, standard.size(judged, value, side)));
    }

    /** Whether a value lies on a side that has no limit. */
    private static boolean isFree(Judged judged, double value) {
        return judged.way() != Way.EITHER && judged.way().size(value) < 0;
    }

    private static String own(Judged judged, Footing footing, Limit limit) {
        OwnUsual usual = Objects.requireNonNull(limit.usual());
        String up = Double.isInfinite(limit.high()) ? "" : part(judged, footing, limit.high());
        String down = Double.isInfinite(limit.low()) ? "" : part(judged, footing, limit.low());
        boolean looser = Math.max(judged.way().size(limit.high()), judged.way().size(limit.low())) > limit.starting();
        return WORDS.say(
                looser ? "standard.own.looser" : "standard.own",
                name(judged) + (judged.hasSide() ? WORDS.say("footing." + footing.code()) : ""),
                up.isEmpty() ? down : down.isEmpty() ? up : WORDS.say("standard.either", up, down),
                part(judged, footing, usual.median()),
                FormWords.limit(judged, limit.starting()));
    }

    private static String part(Judged judged, Footing footing, double value) {
        if (footing != Footing.ONE_FOOT || !judged.hasSide()) {
            return FormWords.brief(judged, value);
        }
        return WORDS.say(value < 0 ? "away" : "towards", FormWords.limit(judged, Math.abs(value)));
    }

    private static String name(Judged judged) {
        return WORDS.say("name." + judged.measure().name());
    }
}
