package evenfall.report.demo;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.ReadableWire;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Link;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.log.AthleteFolder;
import evenfall.report.rehearsal.Faults;
import evenfall.report.rehearsal.Pace;
import evenfall.report.rehearsal.Playback;
import evenfall.report.rehearsal.RehearsalBench;
import evenfall.report.rehearsal.WireForm;
import evenfall.report.speech.Unspoken;
import evenfall.report.turn.Leader;
import evenfall.report.turn.Onlooker;
import evenfall.report.turn.Turn;
import evenfall.report.turn.TurnVoice;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One session recorded as from sensors: played onto a port inside the program, and from there on by the ways of {@code
 * record}. Time goes on as fast as what comes is looked at, so that a slow machine hears the same.
 */
final class LiveRehearsal {

    private static final Words WORDS = Words.beside(LiveRehearsal.class);

    private final List<String> heard = new ArrayList<>();

    /**
     * Records a session.
     *
     * @param recording what the sensors say
     * @param clock what time it is
     */
    void record(AthleteFolder athlete, Recording recording, Clock clock) throws IOException {
        Steps pace = new Steps();
        Playback playback = new Playback(recording, WireForm.BINARY, Faults.NONE);
        RehearsalBench bench = new RehearsalBench(playback, () -> pace);
        Turn turn = new Turn(new Listener(pace), athlete, TalkChoice.EVERY, Unspoken.WISHED, clock);
        try (Link link = Link.open(bench, RehearsalBench.PATH, OptionalInt.of(0), ReadableWire::new)) {
            turn.record(List.of(link), new ToTheEnd(bench));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(WORDS.say("live.interrupted"), e);
        }
        turn.store(Progress.NONE, Unspoken.WISHED);
    }

    /** What coach and athlete heard of landings and of the opening routine, in order. */
    List<String> heard() {
        return List.copyOf(heard);
    }

    private final class Listener implements Onlooker {

        private final Steps pace;

        Listener(Steps pace) {
            this.pace = pace;
        }

        @Override
        public void told(Topic topic, String sentence) {
            if (topic == Topic.LANDING || topic == Topic.ROUTINE) {
                heard.add(sentence);
            }
        }

        @Override
        public void came(News news) {}

        @Override
        public void looked(double nowS, WireRecorder recorder, LiveLandings live) {
            pace.looked(recorder.soFar()
                    .map(soFar -> soFar.pelvis().stream().durationS())
                    .orElse(0.0));
        }
    }

    /** Time that takes a step when all that was said until then was looked at, or when nothing more comes of it. */
    private static final class Steps implements Pace {

        private static final double STEP_S = 0.2;
        private static final int PATIENCE = 25;

        private final AtomicInteger steps = new AtomicInteger();
        private int waited;

        void looked(double newestS) {
            waited++;
            if (newestS >= nowS() - STEP_S || waited > PATIENCE) {
                steps.incrementAndGet();
                waited = 0;
            }
        }

        @Override
        public double nowS() {
            return steps.get() * STEP_S;
        }

        @Override
        public void rest() throws InterruptedException {
            Thread.sleep(1);
        }
    }

    private record ToTheEnd(RehearsalBench bench) implements Leader {

        @Override
        public void begins(Runnable end) {}

        @Override
        public boolean look(double nowS, TurnVoice voice, WireRecorder recorder) {
            return bench.ended();
        }

        @Override
        public long everyMs() {
            return 2;
        }

        @Override
        public boolean inHaste() {
            return false;
        }
    }
}
