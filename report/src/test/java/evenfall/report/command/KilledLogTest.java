package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs killed at any moment, two at a time on one log, lose nothing they had confirmed; {@code bench/killed-log} for hours. */
class KilledLogTest {

    private static final long SEED = 20260302;
    private static final int ROUNDS = 5;
    private static final int LATEST_MS = 900;

    @TempDir
    private Path folder;

    @Test
    void whatWasConfirmedIsThere_andNothingIsHalf() throws IOException, InterruptedException {
        KilledLog killed = new KilledLog(folder, SEED);
        killed.run(ROUNDS, LATEST_MS);
        killed.check();

        assertThat(killed.kills()).isEqualTo(2 * ROUNDS);
        assertThat(killed.confirmed()).as("seed %d", SEED).isGreaterThan(ROUNDS);
    }
}
