package evenfall.report.round;

import java.util.List;

/**
 * A named region of the body.
 *
 * @param code how the diary names it
 */
public record BodyPart(String code) {

    /** Regions there are two of, from the feet up. */
    public static final List<String> PAIRED =
            List.of("foot", "ankle", "shin", "calf", "knee", "thigh", "hamstring", "hip", "shoulder");

    /** Regions there is one of. */
    public static final List<BodyPart> SINGLE =
            List.of(new BodyPart("lower back"), new BodyPart("upper back"), new BodyPart("neck"));

    /** Stands for the whole body: it was asked for, and there was nothing. */
    public static final String WHOLE = "whole body";

    public static BodyPart left(String paired) {
        return new BodyPart("left " + paired);
    }

    public static BodyPart right(String paired) {
        return new BodyPart("right " + paired);
    }
}
