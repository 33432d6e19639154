package evenfall.report.command;

import evenfall.ingest.recorder.WireRecorder;
import evenfall.report.log.AthleteFolder;
import evenfall.report.turn.Leader;
import evenfall.report.turn.TurnVoice;
import java.io.IOException;
import java.util.Optional;

/** A turn led by lines that somebody types, by Ctrl-C and by the clock. */
final class TypedLead implements Leader {

    private final String begun;
    private final double seconds;
    private final CoachDesk desk;
    private final EndOnSignal signal;
    private final Console console;
    private Optional<AthleteFolder> next = Optional.empty();

    /**
     * Leads through one turn.
     *
     * @param begun said when it begins
     * @param seconds how long it may last, s
     */
    TypedLead(String begun, double seconds, CoachDesk desk, EndOnSignal signal, Console console) {
        this.begun = begun;
        this.seconds = seconds;
        this.desk = desk;
        this.signal = signal;
        this.console = console;
    }

    /** The athlete the sensors are handed over to, if that was why it ended. */
    Optional<AthleteFolder> next() {
        return next;
    }

    @Override
    public void begins(Runnable end) {
        signal.tell(end);
        console.say(begun);
    }

    @Override
    public boolean look(double nowS, TurnVoice voice, WireRecorder recorder) throws IOException {
        next = desk.look(voice, recorder);
        return signal.wanted() || desk.endWanted() || next.isPresent() || nowS >= seconds;
    }

    @Override
    public boolean inHaste() {
        return signal.wanted();
    }
}
