package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ForwardBend;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.posture.MotionSmoother;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.posture.SensorKnowledge;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.rotation.Vector3;
import java.util.ArrayList;
import java.util.List;

/** One sensor's windows about all landings, smoothed together with its opening bends. */
final class SensorMotion {

    private final List<WindowMaker.Cut> cuts = new ArrayList<>();
    private final MotionSmoother smoother;

    /**
     * Smooths the windows of the landings given.
     *
     * @param spans of the landings, on the sensor's clock
     */
    SensorMotion(SensorReading reading, OrientationTrack track, OpeningRoutine opening, List<LandingSpan> spans) {
        this(reading, track, opening.bends(), spans, SensorKnowledge.NONE);
    }

    /**
     * The same with bends of its own choice, where landings before these told something of the sensor already.
     *
     * @param before what they told
     */
    SensorMotion(
            SensorReading reading,
            OrientationTrack track,
            List<ForwardBend> bends,
            List<LandingSpan> spans,
            SensorKnowledge before) {
        WindowMaker maker = new WindowMaker(reading.stream(), reading.stances(), track);
        List<MotionWindow> windows = new ArrayList<>();
        for (LandingSpan span : spans) {
            WindowMaker.Cut cut = maker.landing(span);
            cuts.add(cut);
            windows.add(cut.window());
        }
        addBends(maker, bends, windows);
        this.smoother = new MotionSmoother(windows, before);
    }

    private static void addBends(WindowMaker maker, List<ForwardBend> bends, List<MotionWindow> windows) {
        int done = -1;
        for (ForwardBend bend : bends) {
            if (bend.before().from() != done) {
                windows.add(maker.bends(bend.before(), bend.after()));
                done = bend.before().from();
            }
        }
    }

    /** The window of landing {@code k}. */
    WindowMaker.Cut cut(int k) {
        return cuts.get(k);
    }

    /** The motion through landing {@code k}. */
    SmoothedMotion motion(int k) {
        return smoother.motion(k);
    }

    /** What these windows and those before them tell of the sensor. */
    SensorKnowledge knowledge() {
        return smoother.knowledge();
    }

    /** A mean force without the sensor's own bias and scale error, m/s². */
    Vector3 correct(Vector3 force) {
        return smoother.sensorErrors().correctForce(force);
    }
}
