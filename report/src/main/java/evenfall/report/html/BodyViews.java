package evenfall.report.html;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.chart.BodyFigure;
import evenfall.report.chart.BodyPose;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Judged;
import evenfall.report.html.view.BodyView;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The three line figures of a landing, each at the moment that is worst for what it shows: from above where pelvis or
 * upper back were turned farthest against their limits, from behind where trunk or pelvis leaned farthest, from the side
 * at the lowest point.
 */
public final class BodyViews {

    private static final Words WORDS = Words.beside(BodyViews.class);

    /** An angle's change is looked for as long after contact as the measures look, s. */
    private static final double LOOKED_AT_S = 0.6;

    private BodyViews() {}

    /**
     * One figure.
     *
     * @param view from where the body is looked at
     * @param pose how it stands
     * @param words the same in words
     */
    public record Pose(BodyFigure.View view, BodyPose pose, String words) {}

    /** The figures with their drawings, for a page. */
    static List<BodyView> of(
            String id, LandingTrace trace, Moments moments, @Nullable OverFeet feet, @Nullable Side foot) {
        return poses(trace, moments, feet).stream()
                .map(pose -> view(id, pose, foot))
                .toList();
    }

    /** From above, from behind and from the side; none where the trace is too short. */
    public static List<Pose> poses(LandingTrace trace, Moments moments, @Nullable OverFeet feet) {
        int above = worst(
                trace,
                i -> Math.max(
                        Math.abs(trace.pelvicRotation()[i]) / FormStandard.startingSize(Judged.ROTATION),
                        size(trace.twist(), i) / FormStandard.startingSize(Judged.TWIST)));
        int behind = worst(
                trace,
                i -> Math.max(
                        Math.abs(trace.pelvicObliquity()[i]) / FormStandard.startingSize(Judged.OBLIQUITY),
                        size(trace.trunkLean(), i) / FormStandard.startingSize(Judged.LEAN)));
        Double lowest = moments.lowestS();
        int side =
                lowest == null ? worst(trace, i -> -trace.heightM()[i]) : nearest(trace, lowest - moments.contactS());
        List<Pose> poses = new ArrayList<>();
        if (above >= 0 && behind >= 0 && side >= 0) {
            poses.add(new Pose(BodyFigure.View.ABOVE, pose(trace, above, null), aboveWords(trace, above)));
            poses.add(new Pose(BodyFigure.View.BEHIND, pose(trace, behind, feet), behindWords(trace, behind, feet)));
            poses.add(new Pose(BodyFigure.View.SIDE, pose(trace, side, feet), sideWords(trace, side, feet)));
        }
        return poses;
    }

    private static BodyPose pose(LandingTrace trace, int i, @Nullable OverFeet feet) {
        return new BodyPose(
                trace.pelvicTilt()[i],
                trace.pelvicObliquity()[i],
                trace.pelvicRotation()[i],
                at(trace.trunkFlexion(), i),
                at(trace.trunkLean(), i),
                at(trace.twist(), i),
                feet == null ? null : feet.foreAftLowest(),
                feet == null ? null : feet.lateralLowest(),
                Math.max(0, -trace.heightM()[i]));
    }

    private static BodyView view(String id, Pose pose, @Nullable Side foot) {
        String code = pose.view().name().toLowerCase(Locale.ROOT);
        String title = WORDS.say("body." + code);
        return new BodyView(
                title,
                WORDS.say("body.when." + code),
                pose.words(),
                BodyFigure.svg(
                        id + "-" + code, pose.view(), pose.pose(), foot, WORDS.say("body.label", title, pose.words())),
                pose.view(),
                pose.pose());
    }

    private static String aboveWords(LandingTrace trace, int i) {
        String pelvis = turned(trace.pelvicRotation()[i], "body.turned.left", "body.turned.right", "body.turned.none");
        Double twist = at(trace.twist(), i);
        return twist == null
                ? WORDS.say("body.pelvis", pelvis)
                : WORDS.say(
                        "body.two",
                        pelvis,
                        turned(twist, "body.twisted.left", "body.twisted.right", "body.twisted.none"));
    }

    private static String behindWords(LandingTrace trace, int i, @Nullable OverFeet feet) {
        String pelvis = turned(trace.pelvicObliquity()[i], "body.low.right", "body.low.left", "body.low.none");
        Double lean = at(trace.trunkLean(), i);
        String words = lean == null
                ? WORDS.say("body.pelvis", pelvis)
                : WORDS.say("body.two", turned(lean, "body.lean.right", "body.lean.left", "body.lean.none"), pelvis);
        return feet == null || feet.lateralLowest() == null ? WORDS.say("body.feet", words) : words;
    }

    private static String sideWords(LandingTrace trace, int i, @Nullable OverFeet feet) {
        String pelvis = turned(trace.pelvicTilt()[i], "body.tilt.forward", "body.tilt.back", "body.tilt.none");
        Double trunk = at(trace.trunkFlexion(), i);
        String words = trunk == null
                ? WORDS.say("body.pelvis", pelvis)
                : WORDS.say(
                        "body.two",
                        turned(
                                trunk - trace.pelvicTilt()[i],
                                "body.spine.forward",
                                "body.spine.back",
                                "body.spine.none"),
                        pelvis);
        return feet == null || feet.foreAftLowest() == null ? WORDS.say("body.feet", words) : words;
    }

    private static String turned(double degrees, String plus, String minus, String none) {
        // A drawing is read to the degree; what was measured, with its decimals, stands beside it.
        String size = Figures.size(degrees, 0);
        return size.equals(Figures.size(0.0, 0)) ? WORDS.say(none) : WORDS.say(degrees > 0 ? plus : minus, size);
    }

    private static @Nullable Double at(double @Nullable [] column, int i) {
        return column == null || !Double.isFinite(column[i]) ? null : Double.valueOf(column[i]);
    }

    private static double size(double @Nullable [] column, int i) {
        Double value = at(column, i);
        return value == null ? 0 : Math.abs(value);
    }

    private static int worst(LandingTrace trace, IntToDoubleFunction badness) {
        int worst = -1;
        for (int i = 0; i < trace.timeS().length; i++) {
            double t = trace.timeS()[i];
            if (t >= 0 && t <= LOOKED_AT_S && (worst < 0 || badness.applyAsDouble(i) > badness.applyAsDouble(worst))) {
                worst = i;
            }
        }
        return worst;
    }

    private static int nearest(LandingTrace trace, double fromContactS) {
        int nearest = -1;
        for (int i = 0; i < trace.timeS().length; i++) {
            if (nearest < 0
                    || Math.abs(trace.timeS()[i] - fromContactS) < Math.abs(trace.timeS()[nearest] - fromContactS)) {
                nearest = i;
            }
        }
        return nearest;
    }
}
