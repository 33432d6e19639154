package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ForwardBend;
import evenfall.fusion.alignment.GyroSense;
import evenfall.fusion.alignment.GyroSenseFinder;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.alignment.RoutineFinder;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.alignment.StillnessFinder;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationFollower;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.posture.SensorKnowledge;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** One sensor of a recording that grows: what its samples so far tell, each looked at once. */
final class LiveSensor {

    /** Orientations are asked for within so much of the newest, s. */
    private static final double TRACK_S = 60;
    /** Samples are taken in pieces of so much, s: what listens must keep up with the track. */
    private static final double PIECE_S = 20;
    /** A strap's give is told by so many landings as well as by all. */
    private static final int GIVE_LANDINGS = 60;

    private final Place place;
    private final GyroSense sense;
    private final double rateHz;
    private final OrientationFollower follower;
    private final StillnessFinder stillness;
    private final GyroSenseFinder senses;
    private final BiConsumer<SensorStream, OrientationTrack> listener;

    private SensorReading reading;
    private OrientationTrack track;
    private OpeningRoutine opening = new OpeningRoutine(null, List.of());
    private boolean openingOver;
    private SensorKnowledge knowledge = SensorKnowledge.NONE;
    private @Nullable SensorMotion lastMotion;
    private final List<TakeoffHeadings.Takeoff> takeoffs = new ArrayList<>();

    /**
     * A sensor at the start of its samples.
     *
     * @param begun the samples so far, enough to tell their rate
     * @param sense how its gyroscope is to be read
     * @param listener hears of all samples with their orientation, piece by piece
     */
    LiveSensor(
            Place place, SensorRecording begun, GyroSense sense, BiConsumer<SensorStream, OrientationTrack> listener) {
        this.place = place;
        this.sense = sense;
        this.rateHz = begun.stream().rateHz();
        this.listener = listener;
        this.follower = new OrientationFollower(FilterKind.LIVE, rateHz, TRACK_S);
        this.stillness = new StillnessFinder(rateHz);
        this.senses = new GyroSenseFinder(rateHz);
        this.track = follower.track();
        this.reading = new SensorReading(begun, begun.stream(), List.of(), sense, List.of(), new RoutineFinder());
    }

    /** Whether a stream is this sensor's, grown. */
    boolean isOf(SensorStream stream) {
        return stream.clockStartS() == reading.stream().clockStartS() && stream.size() >= track.size();
    }

    /** Takes the samples that are new. */
    void follow(SensorRecording soFar) {
        SensorStream raw = soFar.stream();
        SensorStream stream = sense.mirrored() ? raw.withTurnRateReversed(sense.x(), sense.y(), sense.z()) : raw;
        int piece = (int) Math.ceil(PIECE_S * rateHz);
        for (int from = track.size(); from < stream.size(); from += piece) {
            follower.follow(stream, Math.min(stream.size(), from + piece));
            track = follower.track();
            listener.accept(stream, track);
        }
        stillness.add(stream);
        reading = read(soFar, stream, reading.stances(), reading.moves());
    }

    /** Works out what stands still, and how the gyroscope is to be read. */
    void takeStock() {
        List<Stance> stances = stillness.stances(reading.stream());
        reading = read(reading.recording(), reading.stream(), stances, reading.moves());
        if (!stances.isEmpty()) {
            Vector3 bias = SensorReading.bias(stances);
            senses.add(
                    reading.recording().stream(),
                    new Vector3(
                            sense.x() ? -bias.x() : bias.x(),
                            sense.y() ? -bias.y() : bias.y(),
                            sense.z() ? -bias.z() : bias.z()));
        }
    }

    /** How the gyroscope should be read by what came so far. */
    GyroSense senseSoFar() {
        return senses.sense();
    }

    GyroSense sense() {
        return sense;
    }

    SensorReading reading() {
        return reading;
    }

    OrientationTrack track() {
        return track;
    }

    OpeningRoutine opening() {
        return opening;
    }

    /**
     * Looks for the opening routine, until it is over.
     *
     * @param beforeS the first landing, or infinite while there is none, s on the sensor's clock
     * @return whether it shows other bends or another stance than before
     */
    boolean lookForOpening(double beforeS) {
        if (openingOver) {
            return false;
        }
        OpeningRoutine before = opening;
        opening = reading.opening(beforeS);
        openingOver = beforeS < Double.POSITIVE_INFINITY;
        return !opening.equals(before);
    }

    /**
     * The motion through one landing, smoothed with all that earlier landings and the bends told of the sensor.
     *
     * @param span on the sensor's clock
     */
    SensorMotion motion(LandingSpan span) {
        return motion(List.of(span));
    }

    private SensorMotion motion(List<LandingSpan> spans) {
        List<ForwardBend> bends = lastMotion == null ? opening.bends() : List.of();
        return new SensorMotion(reading, track, bends, spans, knowledge);
    }

    /** How many landings are done. */
    int landingsDone() {
        return takeoffs.size();
    }

    /** Says how many landings were done before this sensor came: landings of two sensors are told of by their number. */
    void comesAfter(int landings) {
        takeoffs.addAll(Collections.nCopies(landings, TakeoffHeadings.Takeoff.MISSED));
    }

    /** Takes a landing as done: what it told stays. */
    void done(LandingSpan span) {
        SensorMotion motion = motion(span);
        takeoffs.add(TakeoffHeadings.Takeoff.of(motion, 0, span.contactS()));
        knowledge = motion.knowledge();
        lastMotion = motion;
    }

    /** Looks whether the strap moved. */
    void lookForMoves() {
        reading = read(reading.recording(), reading.stream(), reading.stances(), StrapWatch.find(reading.stances()));
    }

    private SensorReading read(
            SensorRecording recording, SensorStream stream, List<Stance> stances, List<StrapWatch.Move> moves) {
        return new SensorReading(recording, stream, stances, sense, moves, reading.routines());
    }

    /**
     * How it is to be mounted by all landings that are done, and one more.
     *
     * @param motion of a landing that is not done yet, or null
     * @param contactS its contact, s on the sensor's clock
     */
    BodyMounting.Segment segment(@Nullable SensorMotion motion, double contactS) {
        List<TakeoffHeadings.Takeoff> all = new ArrayList<>(takeoffs);
        SensorMotion latest = motion != null ? motion : lastMotion != null ? lastMotion : motion(List.of());
        if (motion != null) {
            all.add(TakeoffHeadings.Takeoff.of(motion, 0, contactS));
        }
        double[] contacts = all.stream()
                .skip(Math.max(0, all.size() - GIVE_LANDINGS))
                .mapToDouble(TakeoffHeadings.Takeoff::contactS)
                .toArray();
        return new BodyMounting.Segment(
                reading,
                contacts,
                new SegmentMounting(
                        place, reading, latest::correct, opening, new TakeoffHeadings(reading.stream(), all)));
    }
}
