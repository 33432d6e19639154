package evenfall.report.command;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.session.SessionFiles;
import evenfall.fixtures.session.SessionScript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;

/** Tables to run commands on. */
final class Tables {

    private Tables() {}

    /** Ten seconds of a sensor at rest, 100 Hz. */
    static Path quiet(Path file) throws IOException {
        StringBuilder text = new StringBuilder("t_ms,ax_g,ay_g,az_g,gx_dps,gy_dps,gz_dps\n");
        for (int i = 0; i < 1000; i++) {
            double noise = 0.002 * Math.sin(i * 1.7);
            text.append(String.format(
                    Locale.ROOT,
                    "%d,%.4f,%.4f,%.4f,%.3f,%.3f,%.3f%n",
                    10 * i,
                    noise,
                    0.01 + 0.001 * Math.sin(i * 2.3),
                    1 - noise,
                    0.1 * Math.sin(i * 1.1),
                    0.1 * Math.sin(i * 1.9),
                    0.1 * Math.sin(i * 2.9)));
        }
        return Files.writeString(file, text.toString().replace("\r\n", "\n"));
    }

    /** A file of the open and simulated recordings beside the project; the test is skipped where they are absent. */
    static Path shared(String name) {
        String stated = System.getenv("EVENFALL_DATA");
        Path root = Path.of("").toAbsolutePath();
        Path top = root.endsWith("report") ? root.getParent() : root;
        Path data = stated != null ? Path.of(stated) : Path.of(top + "/../shared/data");
        Path file = data.resolve(name);
        Assumptions.assumeTrue(Files.exists(file), "the recordings in ../shared/data are not here");
        return file;
    }

    /** A session of invented sensors in a folder that is made: the opening routine, one drop from 0.4 m, a stance after it. */
    static SessionFiles oneLanding(Path folder, double stanceS) throws IOException {
        return SessionScript.cheapSensors(5)
                .openingRoutine()
                .drop(LandingPlan.fromHeight(0.4))
                .stand(stanceS)
                .record()
                .writeCsv(Files.createDirectory(folder));
    }
}
