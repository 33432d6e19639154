package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.Segment;
import evenfall.fixtures.sensor.SensorClock;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorRecorder;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.analysis.KnownClock;
import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SignedAxis;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Records the same motions on every rung of the ladder and sees how far the program errs. */
final class LadderRun {

    private static final double RATE_HZ = 200;

    private final Map<LadderMotion.Opening, List<LadderMotion>> motions = new EnumMap<>(LadderMotion.Opening.class);

    /** Runs on {@code motions} motions of {@code landings} each. */
    LadderRun(int motions, int landings) {
        for (LadderMotion.Opening opening : LadderMotion.Opening.values()) {
            List<LadderMotion> list = new ArrayList<>();
            for (int k = 0; k < motions; k++) {
                list.add(LadderMotion.of(21 + k, opening, landings));
            }
            this.motions.put(opening, list);
        }
    }

    /** The motions that begin with the full opening routine. */
    List<LadderMotion> motions() {
        return motions.getOrDefault(LadderMotion.Opening.FULL, List.of());
    }

    /** The errors on each of the rungs, in their order. */
    Map<Rung, LandingErrors> errors(List<Rung> rungs) {
        List<LandingErrors> errors = rungs.parallelStream().map(this::errors).toList();
        Map<Rung, LandingErrors> all = new LinkedHashMap<>();
        for (int k = 0; k < rungs.size(); k++) {
            all.put(rungs.get(k), errors.get(k));
        }
        return all;
    }

    /** The errors on a rung. */
    LandingErrors errors(Rung rung) {
        List<LandingErrors> parts = new ArrayList<>();
        List<LadderMotion> all = motions.getOrDefault(rung.opening(), List.of());
        for (Rung.Way way : rung.ways()) {
            // Kinds of a fault are many: one motion is enough for each.
            for (LadderMotion motion : rung.ways().size() > 1 ? all.subList(0, 1) : all) {
                parts.add(errors(way, motion, rung.known()));
            }
        }
        return LandingErrors.together(parts);
    }

    private static LandingErrors errors(Rung.Way way, LadderMotion motion, Set<Rung.Known> known) {
        SensorModel pelvis = way.spoil(SensorModel.ideal(RATE_HZ), Place.PELVIS, motion);
        SensorModel upperBack = way.spoil(SensorModel.ideal(RATE_HZ), Place.UPPER_BACK, motion);
        SensorSignals onPelvis = SensorRecorder.record(motion.motion(), Segment.PELVIS, pelvis, motion.seed() + 1);
        SensorSignals onBack = SensorRecorder.record(motion.motion(), Segment.UPPER_BACK, upperBack, motion.seed() + 2);
        BodyAxes axes = known.contains(Rung.Known.MOUNTING) ? new BodyAxes(SignedAxis.PLUS_X, SignedAxis.PLUS_Z) : null;
        Recording recording = new Recording(recording("pelvis", onPelvis, axes), recording("upper back", onBack, axes));
        SensorClock from = pelvis.clock();
        SensorClock to = upperBack.clock();
        DoubleUnaryOperator clock = t -> to.read(from.trueTime(t + onPelvis.time()[0])) - onBack.time()[0];
        RecordingAnalysis analysis = known.contains(Rung.Known.CLOCK)
                ? KnownClock.analyse(recording, new ClockMap(clock.applyAsDouble(0), from.driftPpmTo(to), 0, "known"))
                : new RecordingAnalyser(FilterKind.TWO_PASS).analyse(recording, Progress.NONE);
        List<TrueLanding> truths = motion.truth().stream()
                .map(landing -> SyntheticTruth.landing(landing, pelvis, onPelvis))
                .toList();
        LandingErrors errors = LandingErrors.of(analysis, truths);
        errors.addClock(analysis, clock);
        return errors;
    }

    private static SensorRecording recording(String name, SensorSignals s, @Nullable BodyAxes axes) {
        return new SensorRecording(
                name, SyntheticStreams.builder(s).findClipping().build(), axes, List.of());
    }
}
