package evenfall.report.round;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Sentences a person should read, the newest first. For the front thread. */
public final class Notices {

    private static final int MOST = 30;

    private final Deque<String> sentences = new ArrayDeque<>();
    private boolean read = true;

    void add(String sentence) {
        sentences.remove(sentence);
        sentences.addFirst(sentence);
        if (sentences.size() > MOST) {
            sentences.removeLast();
        }
        read = false;
    }

    /** The newest; empty once it was read. */
    public String newest() {
        String first = sentences.peekFirst();
        return read || first == null ? "" : first;
    }

    /** All of them, the newest first. */
    public List<String> all() {
        return List.copyOf(sentences);
    }

    void read() {
        read = true;
    }
}
