package evenfall.report.demo;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.motion.Side;
import evenfall.fixtures.motion.StepAfter;
import evenfall.fixtures.session.SessionFiles;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.report.log.FolderRemoval;
import evenfall.report.result.RecordingInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** An invented session to rehearse with: the opening routine and six landings, the last two of which go wrong. */
public final class RehearsalStory {

    /** Landings there are. */
    public static final int LANDINGS = 6;

    /** Invented athletes, in the order of a rehearsal's list. */
    public static final List<String> ATHLETES = List.of("Mirel", "Tovan", "Senka");

    private static final double STRAPPING_S = 12;
    private static final double BEFORE_THE_FIRST_S = 8;
    private static final double AFTERWARDS_S = 150;

    private RehearsalStory() {}

    /** Invents the session; the same seed gives the same samples. */
    public static Recording invent(long seed) throws IOException {
        SessionScript script = SessionScript.cheapSensors(seed).stand(STRAPPING_S);
        script.openingRoutine().stand(BEFORE_THE_FIRST_S);
        for (LandingPlan plan : plans()) {
            script.drop(plan);
        }
        return samples(script.stand(AFTERWARDS_S).record());
    }

    private static List<LandingPlan> plans() {
        return List.of(
                LandingPlan.usual().offBox(0.3),
                LandingPlan.usual().offBox(0.3),
                LandingPlan.usual().on(Side.LEFT).offBox(0.3),
                LandingPlan.usual().on(Side.RIGHT).offBox(0.3),
                LandingPlan.usual().offBox(0.45).with(LandingQuantity.TRUNK_LEAN, 11),
                LandingPlan.usual()
                        .offBox(0.45)
                        .with(LandingQuantity.TRUNK_LEAN, 9)
                        .with(LandingQuantity.PELVIC_ROTATION, -9)
                        .then(StepAfter.BACK));
    }

    /** Through files, as samples that somebody else recorded. */
    private static Recording samples(SyntheticSession session) throws IOException {
        Path folder = Files.createTempDirectory("evenfall-rehearsal");
        try {
            SessionFiles files = session.writeCsv(folder);
            return new RecordingInput(files.pelvis(), files.upperBack(), null).read(Progress.NONE);
        } finally {
            FolderRemoval.of(folder);
        }
    }
}
