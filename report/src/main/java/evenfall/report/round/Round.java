package evenfall.report.round;

import evenfall.ingest.serial.PortIdentity;
import evenfall.ingest.serial.SerialPorts;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.Now;
import evenfall.report.log.PlanEntry;
import evenfall.report.log.TrainingLog;
import evenfall.report.round.Person.Standing;
import evenfall.report.speech.Speech;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The one way through: who, how do you feel, put on, opening routine, drops, and the next. All methods are for the front
 * thread; nothing in them takes long.
 */
public final class Round {

    private static final Words WORDS = Words.beside(Round.class);

    private final TrainingLog log;
    private final Clock clock;
    private final Runnable changed;
    private final Notices notices = new Notices();
    private final Errands errands;
    private final Roster roster;
    private final TurnDesk desk;
    private final LookingBack lookingBack;
    private final Asking asking;

    private Step step = Step.WHO;
    private List<Person> people = List.of();
    private List<String> others = List.of();
    private List<PortIdentity> ports = List.of();
    private @Nullable Person person;
    private Feeling feeling = new Feeling(false);
    private boolean mistaken;

    /**
     * A round.
     *
     * @param changed told after everything that changed what is to be shown
     * @param clock tells the day
     */
    public Round(
            TrainingLog log, Threads threads, Surroundings surroundings, Speech speech, Clock clock, Runnable changed) {
        this.log = log;
        this.clock = clock;
        this.changed = changed;
        this.errands = new Errands(threads, notices, changed);
        this.roster = new Roster(log, errands::tell);
        this.desk = new TurnDesk(threads, notices, errands, surroundings, speech, this::changedInTurn);
        this.lookingBack = new LookingBack(errands, surroundings);
        this.asking = new Asking(errands, roster, clock);
    }

    /** Begins: looks who is there, and for sessions that were cut short. */
    public void open() {
        refresh();
        lookForPorts();
        lookingBack.recover(log, sentence -> {
            notices.add(sentence);
            refresh();
        });
    }

    /** Uses these sensors from now on. */
    public void use(Sensors sensors) {
        desk.use(sensors);
        changed.run();
    }

    public Step step() {
        return step;
    }

    /** The log this round is kept in. */
    public TrainingLog log() {
        return log;
    }

    public List<Person> people() {
        return people;
    }

    /** Who is in the log and not on today's list. */
    public List<String> others() {
        return others;
    }

    /** Ports that were free at the last look. */
    public List<PortIdentity> ports() {
        return ports;
    }

    /** Whose turn it is, or null. */
    public @Nullable Person person() {
        return person;
    }

    public Feeling feeling() {
        return feeling;
    }

    public Notices notices() {
        return notices;
    }

    /** Sensors and the turn that goes on. */
    public TurnDesk desk() {
        return desk;
    }

    public LookingBack lookingBack() {
        return lookingBack;
    }

    public Asking asking() {
        return asking;
    }

    /** Whether something is being worked on. */
    public boolean busy() {
        return errands.busy() || desk.analysing();
    }

    /** A sentence to be read. */
    public void notice(String sentence) {
        notices.add(sentence);
        changed.run();
    }

    /** A notice was read. */
    public void read() {
        notices.read();
        changed.run();
    }

    /** Somebody is next. */
    public void choose(Person next) {
        endTurn();
        person = next;
        feeling = new Feeling(false);
        mistaken = false;
        step = next.standing() == Standing.STOPPED ? Step.STOPPED : Step.FEEL;
        changed.run();
    }

    /** The answers are given: on to the sensors, or no drops today. */
    public void answered() {
        Person asked = person;
        if (asked == null) {
            return;
        }
        DiaryEntry entry = feeling.entry();
        boolean stops = feeling.stopsDrops();
        AthleteFolder athlete = roster.folder(asked.id());
        LocalDate today = LocalDate.now(clock);
        boolean instead = mistaken;
        mistaken = false;
        errands.send(() -> roster.keep(asked.id(), today, entry, instead));
        if (stops) {
            endTurn();
            step = Step.STOPPED;
            refresh();
        } else {
            step = Step.PUT_ON;
            desk.begin(athlete);
        }
        changed.run();
    }

    /** The answers were given by mistake. */
    public void askAgain() {
        feeling = new Feeling(false);
        mistaken = true;
        step = Step.FEEL;
        changed.run();
    }

    /** Looks anew which ports are free; each is opened for an instant. */
    public void lookForPorts() {
        errands.fetch(SerialPorts::free, free -> ports = free);
    }

    /** Opens a port and begins the turn if it waits for sensors. */
    public void connect(String path) {
        errands.fetch(() -> PortSensors.open(SerialPorts.MACHINE, path), sensors -> desk.use(sensors));
    }

    /** The straps sit: the opening routine is led through. */
    public void strapped() {
        step = Step.ROUTINE;
        desk.lead();
        changed.run();
    }

    /** On to the drops, whatever was seen of the routine. */
    public void drops() {
        step = Step.DROPS;
        changed.run();
    }

    /** Says what the next landings are to be. */
    public void plan(Plan plan) {
        RunningTurn turn = desk.running();
        if (turn == null) {
            return;
        }
        double fromS = desk.drops().strip().isEmpty() ? 0 : desk.glance().newestS();
        desk.drops().plan(plan, fromS);
        PlanEntry entry = new PlanEntry(Now.text(), fromS, plan.foot(), plan.heightM(), plan.surface());
        AthleteFolder athlete = turn.turn().athlete();
        errands.send(() -> athlete.locked(
                errands::tell, () -> athlete.plans(turn.turn().session().date()).add(entry)));
        changed.run();
    }

    /** When the athlete hears something. */
    public void talk(TalkChoice choice) {
        desk.talk(choice);
        changed.run();
    }

    /** All is well after a fall. */
    public void goOn() {
        desk.goOn();
        changed.run();
    }

    /** Pain: the recording ends at once, and it is asked where it hurts. */
    public void pain() {
        endTurn();
        feeling = new Feeling(true);
        step = Step.FEEL;
        changed.run();
    }

    /** This turn is over. */
    public void next() {
        notices.read();
        endTurn();
        person = null;
        step = Step.WHO;
        refresh();
        changed.run();
    }

    /** Looks back on somebody's last session. */
    public void lookBack(Person whose) {
        endTurn();
        person = whose;
        step = Step.LOOK_BACK;
        lookingBack.open(whose, roster.folder(whose.id()));
        changed.run();
    }

    /** Who still owes an answer? */
    public void owed() {
        endTurn();
        person = null;
        step = Step.OWED;
        asking.look(people);
        changed.run();
    }

    /** Consent was given today by who is asked. */
    public void consent() {
        Person asked = person;
        if (asked != null) {
            LocalDate today = LocalDate.now(clock);
            errands.fetch(() -> roster.consent(asked.id(), today), noted -> {
                person = asked.equals(person) ? noted : person;
                refresh();
            });
        }
    }

    /** Puts somebody new on the list. */
    public void add(String name, boolean consent, String guardian) {
        LocalDate day = consent ? LocalDate.now(clock) : null;
        String consents = guardian.isBlank() ? null : guardian.strip();
        errands.fetch(() -> roster.add(name, day, consents), id -> {
            if (id.isEmpty()) {
                notices.add(WORDS.say("name.refused"));
            }
            refresh();
        });
    }

    /** Puts somebody from the log on today's list. */
    public void list(String id) {
        errands.fetch(
                () -> {
                    roster.list(id);
                    return id;
                },
                listed -> refresh());
    }

    /** Takes somebody off today's list; the log keeps everything. */
    public void unlist(Person off) {
        errands.fetch(
                () -> {
                    roster.unlist(off.id());
                    return off;
                },
                gone -> refresh());
    }

    /** Ends all; {@code after} is run in the front when everything is stored. */
    public void close(Runnable after) {
        endTurn();
        desk.close(() -> {
            errands.close();
            after.run();
        });
    }

    private void endTurn() {
        desk.end();
    }

    private void refresh() {
        LocalDate today = LocalDate.now(clock);
        errands.fetch(() -> roster.people(today), found -> {
            people = found;
            asking.look(found);
        });
        errands.fetch(roster::others, found -> others = found);
    }

    /** Something is new in the turn: it leads on by itself, never back. */
    private void changedInTurn(TurnDesk.Change change) {
        switch (change) {
            case ENDED -> {
                refresh();
                if (step == Step.PUT_ON || step == Step.ROUTINE || step == Step.DROPS) {
                    step = Step.WHO;
                }
            }
            case ROUTINE_OVER -> step = step == Step.ROUTINE ? Step.DROPS : step;
            case LANDED -> step = step == Step.PUT_ON || step == Step.ROUTINE ? Step.DROPS : step;
            case STORED -> refresh();
            case LOOKED -> {}
        }
        changed.run();
    }
}
