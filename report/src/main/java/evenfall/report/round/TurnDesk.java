package evenfall.report.round;

import evenfall.ingest.words.Words;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.log.AthleteFolder;
import evenfall.report.speech.Speech;
import evenfall.report.speech.Unspoken;
import evenfall.report.turn.LaterWork;
import evenfall.report.turn.Onlooker.Topic;
import evenfall.report.turn.Turn;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The turn that goes on, the sensors it has, and what was told of it. For the front thread. */
public final class TurnDesk implements RunningTurn.Listener {

    private static final Words WORDS = Words.beside(TurnDesk.class);

    /** What is new in a turn. */
    enum Change {
        LOOKED,
        LANDED,
        ROUTINE_OVER,
        ENDED,
        STORED
    }

    private final Threads threads;
    private final Notices notices;
    private final Errands errands;
    private final Surroundings surroundings;
    private final Speech speech;
    private final Consumer<Change> changed;
    private final LaterWork later;
    private final AtomicInteger analyses = new AtomicInteger();

    private @Nullable Sensors sensors;
    private @Nullable AthleteFolder waiting;
    private @Nullable RunningTurn running;
    private @Nullable RunningTurn ending;
    private boolean beginning;
    private @Nullable Runnable afterEnd;
    private Glance glance = Glance.NOTHING;
    private Drops drops = new Drops();
    private String instruction = "";
    private TalkChoice choice = TalkChoice.EVERY;
    private boolean routineTold;
    private String stored = "";

    TurnDesk(
            Threads threads,
            Notices notices,
            Errands errands,
            Surroundings surroundings,
            Speech speech,
            Consumer<Change> changed) {
        this.threads = threads;
        this.notices = notices;
        this.errands = errands;
        this.surroundings = surroundings;
        this.speech = speech;
        this.changed = changed;
        this.later = new LaterWork(errands::tell);
    }

    /** Whether there are sensors to record from. */
    public boolean connected() {
        return sensors != null;
    }

    /** Whether a turn goes on. */
    public boolean recording() {
        return running != null;
    }

    /** How the turn stood at the last look. */
    public Glance glance() {
        return glance;
    }

    /** What was told of its landings. */
    public Drops drops() {
        return drops;
    }

    /** What to do now, in a sentence; empty if nothing. */
    public String instruction() {
        return instruction;
    }

    /** The steps of the opening routine. */
    public List<RoutineStep> routine() {
        return RoutineStep.of(glance.opening(), glance.routineOver());
    }

    /** What became of the last session that is over, in a sentence; empty before. */
    public String stored() {
        return stored;
    }

    /** When the athlete hears something. */
    public TalkChoice choice() {
        return choice;
    }

    /** Whether sessions that are over are being analysed. */
    public boolean analysing() {
        return analyses.get() > 0;
    }

    @Nullable RunningTurn running() {
        return running;
    }

    void use(Sensors next) {
        Sensors old = sensors;
        if (old != null && old != next) {
            old.close();
        }
        sensors = next;
        startIfReady();
    }

    /** Begins a turn as soon as there are sensors and the last one is over. */
    void begin(AthleteFolder athlete) {
        waiting = athlete;
        glance = Glance.NOTHING;
        drops = new Drops();
        instruction = "";
        routineTold = false;
        startIfReady();
    }

    private void startIfReady() {
        AthleteFolder athlete = waiting;
        Sensors used = sensors;
        if (athlete == null || used == null || running != null || ending != null || beginning) {
            return;
        }
        beginning = true;
        errands.fetch(
                () -> new RunningTurn(athlete, choice, speech, threads.front(), this),
                turn -> begun(athlete, turn, used));
    }

    private void begun(AthleteFolder athlete, RunningTurn turn, Sensors used) {
        beginning = false;
        running = turn;
        turn.start(used.begin());
        if (!athlete.equals(waiting)) {
            // Somebody else was chosen meanwhile.
            end();
        }
        waiting = null;
    }

    /** The opening routine is led through from now on. */
    void lead() {
        order((voice, recorder) -> voice.lead(true));
    }

    void talk(TalkChoice next) {
        choice = next;
        order((voice, recorder) -> voice.choose(next));
    }

    void goOn() {
        drops.goOn();
        order((voice, recorder) -> voice.goOn());
    }

    /** Says where a sensor is worn that does not know it. */
    public void worn(int sensor, evenfall.ingest.place.Place place) {
        order((voice, recorder) -> voice.worn(sensor, place, recorder));
    }

    private void order(RunningTurn.Order order) {
        RunningTurn turn = running;
        if (turn != null) {
            turn.order(order);
        }
    }

    /** Ends the turn, if one goes on or is about to begin. */
    void end() {
        waiting = null;
        RunningTurn turn = running;
        if (turn != null) {
            ending = turn;
            running = null;
            turn.end();
        }
    }

    /** Ends all and runs something in the front when everything is stored. */
    void close(Runnable after) {
        end();
        Runnable wait = () -> new Thread(
                        () -> {
                            later.close();
                            speech.close();
                            threads.front().execute(after);
                        },
                        "closing")
                .start();
        Sensors used = sensors;
        Runnable all = () -> {
            if (used != null) {
                used.close();
            }
            wait.run();
        };
        if (ending != null) {
            afterEnd = all;
        } else {
            all.run();
        }
    }

    @Override
    public void told(Topic topic, String sentence) {
        switch (topic) {
            case RECORDING -> notices.add(sentence);
            case LANDING -> drops.heard(sentence);
            case STORED -> stored = sentence;
            case PLACE -> instruction = sentence;
            case ROUTINE -> {
                instruction = sentence;
                surroundings.sound(Tone.STEP);
            }
        }
        changed.accept(Change.LOOKED);
    }

    @Override
    public void came(News news) {
        drops.came(news);
        if (!news.falls().isEmpty()) {
            surroundings.sound(Tone.ALARM);
        }
        if (!news.landings().isEmpty()) {
            changed.accept(Change.LANDED);
        }
    }

    @Override
    public void looked(Glance now) {
        if (running == null) {
            return;
        }
        glance = now;
        if (now.routineOver() && !routineTold) {
            routineTold = true;
            surroundings.sound(Tone.READY);
            changed.accept(Change.ROUTINE_OVER);
        }
        changed.accept(Change.LOOKED);
    }

    @Override
    public void over(RunningTurn over) {
        boolean byItself = running == over;
        running = byItself ? null : running;
        ending = ending == over ? null : ending;
        Sensors used = sensors;
        if (used != null) {
            used.rest();
        }
        if (over.empty()) {
            notices.add(WORDS.say("nothing.came"));
        } else {
            store(over.turn());
        }
        changed.accept(byItself ? Change.ENDED : Change.STORED);
        Runnable after = afterEnd;
        if (after != null) {
            after.run();
        } else {
            startIfReady();
        }
    }

    private void store(Turn turn) {
        analyses.incrementAndGet();
        later.add(() -> {
            try {
                turn.store((what, share) -> {}, turn.voice().landed() ? Unspoken.WISHED : speech);
            } finally {
                analyses.decrementAndGet();
                threads.front().execute(() -> changed.accept(Change.STORED));
            }
        });
    }
}
