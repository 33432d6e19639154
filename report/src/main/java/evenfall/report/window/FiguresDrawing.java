package evenfall.report.window;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.chart.BodyFigure;
import evenfall.report.html.BodyViews;
import evenfall.report.session.SessionLanding;
import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The three line figures of a landing, each at its worst moment: from above, from behind, from the side.
 */
final class FiguresDrawing extends Drawing {

    private static final long serialVersionUID = 1L;
    private static final int FIGURES = 3;
    private static final double LARGEST = 1.9;

    private transient @Nullable SessionLanding landing;
    private transient List<BodyViews.Pose> poses = List.of();
    private transient @Nullable Side foot;

    FiguresDrawing(Skin skin, String name) {
        super(skin, name, 3 * BodyFigure.WIDTH, BodyFigure.HEIGHT);
    }

    @SuppressWarnings("ReferenceEquality") // Asks whether it is the very one that is drawn.
    void show(@Nullable SessionLanding now) {
        if (now == landing) {
            return;
        }
        landing = now;
        LandingTrace trace = now == null ? null : now.trace();
        Measures measures = now == null ? null : now.landing().measures();
        poses = now == null || trace == null
                ? List.of()
                : BodyViews.poses(
                        trace,
                        now.landing().moments(),
                        measures == null ? null : measures.balance().overFeet());
        foot = now == null ? null : now.side();
        if (!poses.isEmpty()) {
            says(poses.stream().map(BodyViews.Pose::words).collect(Collectors.joining(" ")));
        }
        repaint();
    }

    @Override
    void draw(Graphics2D pen) {
        double size = Math.min(
                LARGEST,
                Math.min(getWidth() / (double) (FIGURES * BodyFigure.WIDTH), getHeight() / (double) BodyFigure.HEIGHT));
        if (poses.isEmpty() || size <= 0) {
            return;
        }
        Palette palette = palette();
        BodyFigure.Colours colours = new BodyFigure.Colours(
                palette.text(),
                palette.quiet(),
                palette.second(),
                palette.quiet(),
                palette.letter(Side.LEFT),
                palette.letter(Side.RIGHT));
        pen.scale(size, size);
        for (BodyViews.Pose pose : poses) {
            Graphics2D one = (Graphics2D) pen.create();
            BodyFigure.draw(one, pose.view(), pose.pose(), foot, colours);
            one.dispose();
            pen.translate(BodyFigure.WIDTH, 0);
        }
    }
}
