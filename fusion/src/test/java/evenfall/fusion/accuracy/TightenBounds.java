package evenfall.fusion.accuracy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Draws the bounds of the tests in to what is reached now; never out. */
final class TightenBounds {

    private TightenBounds() {}

    /** The folder of the two tables. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        SimulatedRun simulated = SimulatedRun.of(OpenData.folder("landings").orElseThrow());
        write(
                folder.resolve(SimulatedSessionsTest.BOUNDS),
                CopiesRun.once(simulated).bounded(simulated));
        write(folder.resolve(LadderTest.BOUNDS), LadderTest.run());
    }

    private static void write(Path file, Map<String, LandingErrors> now) throws IOException {
        Files.writeString(file, BoundTable.tightened(BoundTable.read(String.valueOf(file.getFileName())), now));
    }
}
