package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.motion.Segment;
import evenfall.fixtures.motion.SegmentState;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SegmentAngles;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;

/** The synthesiser's body; not for use by two threads at once. */
final class SyntheticBody implements TrueBody {

    private final BodyMotion.Reader reader;
    private final SegmentState state = new SegmentState();

    SyntheticBody(BodyMotion motion) {
        this.reader = motion.reader();
    }

    @Override
    public Quaternion orientation(Place place, double t) {
        reader.read(place == Place.PELVIS ? Segment.PELVIS : Segment.UPPER_BACK, t, state);
        return new SegmentAngles(state.angles[0], state.angles[1], state.angles[2]).toQuaternion();
    }

    @Override
    public Vector3 speed(double t) {
        reader.read(Segment.PELVIS, t, state);
        return new Vector3(state.velocity[0], state.velocity[1], state.velocity[2]);
    }

    @Override
    public Vector3 place(double t) {
        reader.read(Segment.PELVIS, t, state);
        return new Vector3(state.position[0], state.position[1], state.position[2]);
    }
}
