package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import org.jspecify.annotations.Nullable;

/**
 * A line figure drawn from measured angles and nothing else: the line of the hips and of the shoulders from above, pelvis
 * and trunk from behind and from the side. Grey is the quiet stance, dark the pose. Angles are drawn as they are, lengths
 * on one scale; how long a body is was not measured and is the same for everybody.
 */
public final class BodyFigure {

    /** From where the body is looked at. */
    public enum View {
        ABOVE,
        BEHIND,
        SIDE
    }

    /** Size of the drawing, px. */
    public static final int WIDTH = 150;

    /** Size of the drawing, px. */
    public static final int HEIGHT = 190;

    private static final Words WORDS = Words.beside(BodyFigure.class);

    private static final double PER_METRE = 108;
    private static final double CENTRE = WIDTH / 2.0;
    private static final double FLOOR = HEIGHT - 18;
    private static final double HIPS = FLOOR - 0.92 * PER_METRE;
    private static final double TRUNK = 0.5 * PER_METRE;
    private static final double HALF_HIPS = 0.17 * PER_METRE;
    private static final double HALF_SHOULDERS = 0.21 * PER_METRE;
    /** From above there is room for more. */
    private static final double FROM_ABOVE = 1.9;

    private static final double MIDDLE = HEIGHT / 2.0;

    /**
     * What a figure is drawn with.
     *
     * @param pose the moment that is shown
     * @param quiet the quiet stance behind it
     * @param second feet, shoulders from above, words
     * @param floor the line of the floor
     * @param left the letter and the foot of the left
     * @param right the letter and the foot of the right
     */
    public record Colours(Color pose, Color quiet, Color second, Color floor, Color left, Color right) {

        /** On white. */
        public static final Colours ON_WHITE =
                new Colours(Ink.DARK, Ink.CROWD, Ink.GREY, Ink.HAIRLINE, Ink.letter(Side.LEFT), Ink.letter(Side.RIGHT));
    }

    private BodyFigure() {}

    /**
     * The figure for a page.
     *
     * @param id of the drawing; unique on the page
     * @param foot the foot landed on, or null where not known
     * @param words what it shows, for those who cannot see it
     */
    public static Picture svg(String id, View view, BodyPose pose, @Nullable Side foot, String words) {
        SvgSheet sheet = new SvgSheet(id, WIDTH, HEIGHT, words);
        sheet.drawn(graphics -> draw(graphics, view, pose, foot, Colours.ON_WHITE));
        return sheet.picture(graphics -> draw(graphics, view, pose, foot, Colours.ON_WHITE));
    }

    /** Draws the figure on any sheet, {@value #WIDTH} px wide and {@value #HEIGHT} px high. */
    public static void draw(Graphics2D graphics, View view, BodyPose pose, @Nullable Side foot, Colours colours) {
        BodyPose quiet = BodyPose.quiet(pose.twist() != null);
        graphics.setStroke(Ink.BONE);
        switch (view) {
            case ABOVE -> {
                fromAbove(graphics, quiet, colours.quiet(), colours.quiet());
                fromAbove(graphics, pose, colours.pose(), colours.second());
                word(graphics, "figure.front", CENTRE, 14, colours);
                letters(graphics, MIDDLE + 4, colours);
            }
            case BEHIND -> {
                floor(graphics, colours);
                // Feet that nobody knows the place of are not drawn: they would show the pelvis beside them.
                if (pose.leftM() != null) {
                    feetFromBehind(graphics, foot, colours);
                }
                graphics.setStroke(Ink.BONE);
                fromBehind(graphics, quiet, colours.quiet());
                fromBehind(graphics, pose, colours.pose());
                letters(graphics, FLOOR + 14, colours);
            }
            case SIDE -> {
                floor(graphics, colours);
                if (pose.forwardM() != null) {
                    graphics.setPaint(colours.second());
                    graphics.setStroke(Ink.LEADING);
                    graphics.draw(new Line2D.Double(CENTRE - 10, FLOOR - 2, CENTRE + 14, FLOOR - 2));
                }
                word(graphics, "figure.forward", CENTRE + 48, FLOOR + 14, colours);
                graphics.setStroke(Ink.BONE);
                fromTheSide(graphics, quiet, colours.quiet());
                fromTheSide(graphics, pose, colours.pose());
            }
        }
    }

    /** Hips and shoulders from above, forward up; to the left is counter-clockwise. */
    private static void fromAbove(Graphics2D graphics, BodyPose pose, Color hips, Color shoulders) {
        double yaw = Math.toRadians(pose.pelvicRotation());
        across(graphics, shoulders, pose.twist() == null ? null : yaw + Math.toRadians(pose.twist()), HALF_SHOULDERS);
        across(graphics, hips, yaw, HALF_HIPS);
        double x = -Math.sin(yaw);
        double y = -Math.cos(yaw);
        double tip = 0.36 * PER_METRE * FROM_ABOVE / 2;
        graphics.setStroke(Ink.THIN);
        graphics.draw(new Line2D.Double(CENTRE, MIDDLE, CENTRE + x * tip, MIDDLE + y * tip));
        graphics.setStroke(Ink.BONE);
    }

    private static void across(Graphics2D graphics, Color ink, @Nullable Double yaw, double half) {
        if (yaw == null) {
            return;
        }
        double x = Math.cos(yaw) * half * FROM_ABOVE;
        double y = Math.sin(yaw) * half * FROM_ABOVE;
        graphics.setPaint(ink);
        graphics.setStroke(half == HALF_HIPS ? Ink.BONE : Ink.LEADING);
        graphics.draw(new Line2D.Double(CENTRE - x, MIDDLE + y, CENTRE + x, MIDDLE - y));
    }

    private static void fromBehind(Graphics2D graphics, BodyPose pose, Color ink) {
        double x = CENTRE - PER_METRE * (pose.leftM() == null ? 0 : pose.leftM());
        double y = HIPS + PER_METRE * pose.sunkM();
        double tilt = Math.toRadians(pose.pelvicObliquity());
        plumb(graphics, ink, x, y);
        double dx = Math.cos(tilt) * HALF_HIPS;
        double dy = Math.sin(tilt) * HALF_HIPS;
        graphics.draw(new Line2D.Double(x - dx, y - dy, x + dx, y + dy));
        if (pose.trunkLean() != null) {
            double lean = Math.toRadians(pose.trunkLean());
            double topX = x + Math.sin(lean) * TRUNK;
            double topY = y - Math.cos(lean) * TRUNK;
            graphics.draw(new Line2D.Double(x, y, topX, topY));
            double sx = Math.cos(lean) * HALF_SHOULDERS;
            double sy = Math.sin(lean) * HALF_SHOULDERS;
            graphics.draw(new Line2D.Double(topX - sx, topY - sy, topX + sx, topY + sy));
        }
    }

    /** Looking to the right; the spine bends from the pelvis's slope to the upper back's. */
    private static void fromTheSide(Graphics2D graphics, BodyPose pose, Color ink) {
        double x = CENTRE + PER_METRE * (pose.forwardM() == null ? 0 : pose.forwardM());
        double y = HIPS + PER_METRE * pose.sunkM();
        double tilt = Math.toRadians(pose.pelvicTilt());
        plumb(graphics, ink, x, y);
        double half = 0.11 * PER_METRE;
        graphics.draw(new Line2D.Double(
                x - Math.cos(tilt) * half,
                y - Math.sin(tilt) * half,
                x + Math.cos(tilt) * half,
                y + Math.sin(tilt) * half));
        if (pose.trunkFlexion() != null) {
            double flexion = Math.toRadians(pose.trunkFlexion());
            double bendX = x + Math.sin(tilt) * TRUNK / 2;
            double bendY = y - Math.cos(tilt) * TRUNK / 2;
            Path2D spine = new Path2D.Double();
            spine.moveTo(x, y);
            spine.quadTo(bendX, bendY, bendX + Math.sin(flexion) * TRUNK / 2, bendY - Math.cos(flexion) * TRUNK / 2);
            graphics.draw(spine);
        }
    }

    /** From the pelvis to the floor below it. */
    private static void plumb(Graphics2D graphics, Color ink, double x, double y) {
        graphics.setPaint(ink);
        graphics.setStroke(Ink.MOMENT);
        graphics.draw(new Line2D.Double(x, y, x, FLOOR));
        graphics.setStroke(Ink.BONE);
    }

    private static void feetFromBehind(Graphics2D graphics, @Nullable Side foot, Colours colours) {
        if (foot == Side.LEFT || foot == Side.RIGHT) {
            Color ink = foot == Side.LEFT ? colours.left() : colours.right();
            new Mark(foot, Form.HELD).draw(graphics, CENTRE, FLOOR - 4, 4, ink, ink);
            return;
        }
        graphics.setPaint(colours.second());
        for (double side : new double[] {-1, 1}) {
            graphics.fill(new Ellipse2D.Double(CENTRE + side * HALF_HIPS - 4, FLOOR - 5, 8, 5));
        }
    }

    private static void floor(Graphics2D graphics, Colours colours) {
        graphics.setPaint(colours.floor());
        graphics.setStroke(Ink.THIN);
        graphics.draw(new Line2D.Double(12, FLOOR, WIDTH - 12.0, FLOOR));
    }

    private static void letters(Graphics2D graphics, double y, Colours colours) {
        graphics.setFont(Ink.BOLD);
        graphics.setPaint(colours.left());
        graphics.drawString(WORDS.say("side.letter.left"), 4, (float) y);
        graphics.setPaint(colours.right());
        graphics.drawString(WORDS.say("side.letter.right"), WIDTH - 14, (float) y);
    }

    private static void word(Graphics2D graphics, String key, double x, double y, Colours colours) {
        String word = WORDS.say(key);
        graphics.setFont(Ink.SMALL);
        graphics.setPaint(colours.second());
        graphics.drawString(word, (float) (x - Plots.width(Ink.SMALL, word) / 2), (float) y);
    }
}
