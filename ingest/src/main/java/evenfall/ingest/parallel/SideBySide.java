package evenfall.ingest.parallel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;

/** Like pieces of work, done by the caller's thread and one beside it, each taking the next that is left. */
public final class SideBySide {

    private SideBySide() {}

    /**
     * What {@code piece} gives for 0 to {@code count} - 1, in this order.
     *
     * @param name of the thread beside
     * @param piece is called from two threads at once, for each number once
     */
    public static <T> List<T> map(String name, int count, IntFunction<T> piece) {
        List<T> results = new ArrayList<>(Collections.nCopies(count, null));
        AtomicInteger next = new AtomicInteger();
        Aside<List<T>> aside = count < 2 ? null : Aside.start(name, () -> take(next, piece, results));
        take(next, piece, results);
        if (aside != null) {
            aside.result();
        }
        return results;
    }

    /** Places are written by one thread each, and the end of the other thread is waited for before they are read. */
    private static <T> List<T> take(AtomicInteger next, IntFunction<T> piece, List<T> results) {
        for (int i = next.getAndIncrement(); i < results.size(); i = next.getAndIncrement()) {
            results.set(i, piece.apply(i));
        }
        return results;
    }
}
