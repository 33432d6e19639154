package evenfall.report.round;

import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.Link;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.FileTrouble;
import evenfall.report.speech.Speech;
import evenfall.report.turn.Leader;
import evenfall.report.turn.Onlooker;
import evenfall.report.turn.Turn;
import evenfall.report.turn.TurnVoice;
import java.io.IOException;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A turn that goes on in a thread of its own. Orders go in from the front; what is new comes out there, in order, and of how
 * things stand only the newest.
 */
final class RunningTurn implements Onlooker, Leader {

    /** Told in the front thread. */
    interface Listener {

        void told(Topic topic, String sentence);

        void came(News news);

        void looked(Glance glance);

        /** The turn is over; everything it told was told before. */
        void over(RunningTurn turn);
    }

    /** Something the coach wants, done in the turn's thread. */
    interface Order {
        void give(TurnVoice voice, WireRecorder recorder) throws IOException;
    }

    private final Turn turn;
    private final Executor front;
    private final Listener listener;
    private final Queue<Order> orders = new ConcurrentLinkedQueue<>();
    private final AtomicReference<@Nullable Glance> newest = new AtomicReference<>();
    private final SensorWatch pelvis = new SensorWatch();
    private final SensorWatch upperBack = new SensorWatch();
    private volatile boolean ended;
    private volatile boolean empty;

    /** Begins a turn: its session is in the log. */
    RunningTurn(AthleteFolder athlete, TalkChoice choice, Speech speech, Executor front, Listener listener)
            throws IOException {
        this.front = front;
        this.listener = listener;
        this.turn = new Turn(this, athlete, choice, speech);
        turn.voice().lead(false);
    }

    Turn turn() {
        return turn;
    }

    /** Whether nothing came into it, so that its session was taken away again. */
    boolean empty() {
        return empty;
    }

    void start(List<Link> links) {
        Thread thread = new Thread(() -> run(links), "turn");
        thread.start();
    }

    void order(Order order) {
        orders.add(order);
    }

    /** Ends the recording; {@link Listener#over} is told when it has ended. */
    void end() {
        ended = true;
    }

    private void run(List<Link> links) {
        try {
            turn.record(links, this);
        } catch (IOException e) {
            told(Topic.RECORDING, FileTrouble.sentence(e));
        } catch (UnusableInputException e) {
            told(Topic.RECORDING, String.valueOf(e.getMessage()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            finish();
        }
    }

    private void finish() {
        try {
            empty = turn.removeIfNothingCame();
        } catch (IOException e) {
            told(Topic.RECORDING, FileTrouble.sentence(e));
        }
        front.execute(() -> listener.over(this));
    }

    @Override
    public void begins(Runnable end) {
        // The loop looks for the end 25 times a second; that is soon enough.
    }

    @Override
    public boolean look(double nowS, TurnVoice voice, WireRecorder recorder) throws IOException {
        for (Order order = orders.poll(); order != null; order = orders.poll()) {
            order.give(voice, recorder);
        }
        return ended;
    }

    @Override
    public boolean inHaste() {
        return ended;
    }

    @Override
    public void told(Topic topic, String sentence) {
        front.execute(() -> listener.told(topic, sentence));
    }

    @Override
    public void came(News news) {
        if (!news.landings().isEmpty() || !news.falls().isEmpty()) {
            front.execute(() -> listener.came(news));
        }
    }

    @Override
    public void looked(double nowS, WireRecorder recorder, LiveLandings live) {
        Recording soFar = recorder.soFar().orElse(null);
        SensorRecording upper = soFar == null ? null : soFar.upperBack();
        Glance glance = new Glance(
                soFar == null ? 0 : soFar.pelvis().stream().durationS(),
                pelvis.look(
                        nowS,
                        recorder.samples(Place.PELVIS),
                        soFar == null ? null : soFar.pelvis().stream(),
                        live.level(Place.PELVIS)),
                upperBack.look(
                        nowS,
                        recorder.samples(Place.UPPER_BACK),
                        upper == null ? null : upper.stream(),
                        live.level(Place.UPPER_BACK)),
                recorder.unplaced(),
                live.opening(),
                turn.voice().routineIsOver(),
                turn.voice().paused());
        if (newest.getAndSet(glance) == null) {
            front.execute(() -> {
                Glance last = newest.getAndSet(null);
                if (last != null) {
                    listener.looked(last);
                }
            });
        }
    }
}
