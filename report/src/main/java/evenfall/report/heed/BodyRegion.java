package evenfall.report.heed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The places of the body that soreness and pain are told of, and the spellings that mean them. What people wrote stays as it
 * is in the diary; entries are compared by these names, so that {@code left-knee} and {@code Left Knee} are one place.
 */
public final class BodyRegion {

    /** Places there are two of, a left and a right one. */
    public static final List<String> PAIRED = List.of(
            "shoulder",
            "upper arm",
            "elbow",
            "forearm",
            "wrist",
            "hand",
            "ribs",
            "hip",
            "groin",
            "buttock",
            "thigh",
            "thigh front",
            "hamstring",
            "knee",
            "shin",
            "calf",
            "achilles tendon",
            "ankle",
            "heel",
            "foot",
            "toes");

    /** All of them at once: noted as 0, nothing is there anywhere. */
    public static final String WHOLE = "whole body";

    /** Places there is one of. */
    public static final List<String> SINGLE =
            List.of("head", "neck", "chest", "belly", "back", "upper back", "lower back", WHOLE);

    private static final Map<String, String> ALSO = also();
    private static final Set<String> LEFT = Set.of("left", "l");
    private static final Set<String> RIGHT = Set.of("right", "r");
    private static final Set<String> NO_SIDE = Set.of("both", "the", "my", "");

    private BodyRegion() {}

    /** The name entries are compared by; of a place that is not known, its words in lower case. */
    public static String key(String written) {
        return named(written).orElseGet(() -> String.join(" ", words(written)));
    }

    /** The name of a place, such as {@code left knee} or, without a side, {@code knee}; empty where it is not known. */
    public static Optional<String> named(String written) {
        String side = "";
        StringBuilder rest = new StringBuilder();
        for (String word : words(written)) {
            if (LEFT.contains(word)) {
                side = "left ";
            } else if (RIGHT.contains(word)) {
                side = "right ";
            } else if (!NO_SIDE.contains(word)) {
                rest.append(rest.isEmpty() ? "" : " ").append(word);
            }
        }
        String place = place(rest.toString());
        if (PAIRED.contains(place)) {
            return Optional.of(side + place);
        }
        return SINGLE.contains(place) && side.isEmpty() ? Optional.of(place) : Optional.empty();
    }

    /** Whether a name says a place there are two of without saying which. */
    public static boolean lacksSide(String key) {
        return PAIRED.contains(key);
    }

    private static String place(String words) {
        String plain = ALSO.getOrDefault(words, words);
        if (PAIRED.contains(plain) || SINGLE.contains(plain)) {
            return plain;
        }
        String one = plain.endsWith("s") ? plain.substring(0, plain.length() - 1) : plain;
        return ALSO.getOrDefault(one, one);
    }

    private static List<String> words(String written) {
        return List.of(written.strip().toLowerCase(Locale.ROOT).split("[\\s_-]+", -1));
    }

    private static Map<String, String> also() {
        Map<String, String> also = new LinkedHashMap<>();
        also.put("calves", "calf");
        also.put("feet", "foot");
        also.put("toe", "toes");
        also.put("rib", "ribs");
        also.put("quad", "thigh front");
        also.put("quads", "thigh front");
        also.put("quadriceps", "thigh front");
        also.put("front thigh", "thigh front");
        also.put("thigh back", "hamstring");
        also.put("back thigh", "hamstring");
        also.put("whole", WHOLE);
        also.put("glute", "buttock");
        also.put("achilles", "achilles tendon");
        also.put("achilles heel", "achilles tendon");
        also.put("low back", "lower back");
        also.put("abdomen", "belly");
        also.put("stomach", "belly");
        return also;
    }
}
