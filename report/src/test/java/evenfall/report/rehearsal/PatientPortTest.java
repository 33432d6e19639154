package evenfall.report.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.serial.Port;
import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PatientPortTest {

    private static final byte[] BYTES = {1, 2, 3};

    private final AtomicInteger told = new AtomicInteger();

    /** The one who waits is let go only when it was said: without a word the test would stand for ten seconds and fail. */
    @Test
    void aWriteThatNobodyTakesIsSaidOnceAndGoesOn() throws Exception {
        CountDownLatch said = new CountDownLatch(1);
        Slow slow = new Slow(said);
        try (PatientPort port = new PatientPort(slow, 5, () -> {
            told.incrementAndGet();
            said.countDown();
        })) {
            port.write(BYTES, 0, 3);
            port.write(BYTES, 0, 2);
        }

        assertThat(told).hasValue(1);
        assertThat(slow.taken).isEqualTo(5);
        assertThat(slow.closed).isTrue();
    }

    @Test
    void aPortThatTakesAllIsNoNews() throws Exception {
        try (PatientPort port = new PatientPort(new Slow(new CountDownLatch(0)), 60_000, told::incrementAndGet)) {
            port.write(BYTES, 0, 3);
        }

        assertThat(told).hasValue(0);
    }

    /** Takes nothing until it is let go. */
    private static final class Slow implements Port {

        private final CountDownLatch letGo;
        private int taken;
        private boolean closed;

        Slow(CountDownLatch letGo) {
            this.letGo = letGo;
        }

        @Override
        public String name() {
            return "slow";
        }

        @Override
        public int read(byte[] into) {
            return GONE;
        }

        @Override
        public void write(byte[] bytes, int from, int to) throws IOException {
            try {
                if (!letGo.await(10, TimeUnit.SECONDS)) {
                    throw new IOException("nobody said that nobody reads");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            taken += to - from;
        }

        @Override
        public boolean speed(int baud) {
            return false;
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}
