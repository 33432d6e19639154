package evenfall.ingest.parallel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SideBySideTest {

    @Test
    void eachPieceIsDoneOnceAndAllComeInOrder() {
        for (int count : new int[] {0, 1, 2, 3, 1000}) {
            AtomicIntegerArray calls = new AtomicIntegerArray(count);
            List<Integer> squares = SideBySide.map("squares", count, i -> {
                calls.incrementAndGet(i);
                return i * i;
            });
            assertEquals(IntStream.range(0, count).map(i -> i * i).boxed().toList(), squares);
            for (int i = 0; i < count; i++) {
                assertEquals(1, calls.get(i), "piece " + i + " of " + count);
            }
        }
    }

    @Test
    void whatAPieceThrowsReachesTheCallerWhicheverThreadDidIt() {
        for (int k = 0; k < 50; k++) {
            int bad = k;
            IllegalStateException thrown = assertThrows(
                    IllegalStateException.class,
                    () -> SideBySide.map("bad", 50, i -> {
                        if (i == bad) {
                            throw new IllegalStateException("piece " + i);
                        }
                        return i;
                    }));
            assertEquals("piece " + bad, thrown.getMessage());
        }
    }
}
