package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SampleQueueTest {

    private static final long SEED = 21;
    private static final int NUMBER = 20_000;

    private final SampleQueue queue = new SampleQueue();

    /** Each value of a sample is made from its number, so that none can be mistaken for another. */
    @Test
    void everySampleIsHandedOverOnceAndInOrder() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Double> times = new ArrayList<>();
        int added = 0;
        while (added < NUMBER) {
            int burst = random.nextInt(3000);
            for (int k = 0; k < burst; k++) {
                add(added++);
            }
            int before = times.size();
            int count = queue.drainTo((place, t, ax, ay, az, gx, gy, gz) -> {
                assertThat(place).isEqualTo(place((int) t));
                assertThat(new double[] {ax, ay, az, gx, gy, gz})
                        .containsExactly(t + 0.1, t + 0.2, t + 0.3, t + 0.4, t + 0.5, t + 0.6);
                times.add(t);
            });
            assertThat(count).isEqualTo(times.size() - before).isEqualTo(burst);
        }

        assertThat(times).hasSize(added);
        for (int i = 0; i < added; i++) {
            assertThat(times.get(i)).as("seed %d", SEED).isEqualTo(i);
        }
    }

    @Test
    void whoNeverLooksMissesSamplesButCostsNoMemory() {
        for (int i = 0; i < SampleQueue.MOST + 5; i++) {
            add(i);
        }

        assertThat(queue.missed()).isEqualTo(5);
        assertThat(queue.drainTo((place, t, ax, ay, az, gx, gy, gz) -> {})).isEqualTo(SampleQueue.MOST);
        add(7);
        assertThat(queue.drainTo(
                        (place, t, ax, ay, az, gx, gy, gz) -> assertThat(t).isEqualTo(7)))
                .isEqualTo(1);
    }

    private void add(int i) {
        queue.sample(place(i), i, i + 0.1, i + 0.2, i + 0.3, i + 0.4, i + 0.5, i + 0.6);
    }

    private static Place place(int i) {
        return i % 3 == 0 ? Place.UPPER_BACK : Place.PELVIS;
    }
}
