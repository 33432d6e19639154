package evenfall.ingest.parallel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class AsideTest {

    @Test
    void work_goesOnBesideTheCallers() {
        CountDownLatch met = new CountDownLatch(1);
        Aside<String> aside = Aside.start("beside", () -> {
            await(met);
            return Thread.currentThread().getName();
        });
        met.countDown();

        assertThat(aside.result()).isEqualTo("beside");
    }

    @Test
    void failures_comeOutAsTheyWere() {
        IllegalArgumentException fault = new IllegalArgumentException("bad");
        OutOfMemoryError lack = new OutOfMemoryError("none left");

        Aside<String> failing = Aside.start("failing", () -> {
            throw fault;
        });
        Aside<String> starved = Aside.start("starved", () -> {
            throw lack;
        });

        assertThatThrownBy(failing::result).isSameAs(fault);
        assertThatThrownBy(starved::result).isSameAs(lack);
    }

    @Test
    void waiting_endsWhenInterrupted() {
        CountDownLatch never = new CountDownLatch(1);
        Aside<String> aside = Aside.start("endless", () -> {
            await(never);
            return "";
        });
        Thread.currentThread().interrupt();

        assertThatThrownBy(aside::result).isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isTrue();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
