package evenfall.report.round;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Who still owes an answer, and the answers. For the front thread. */
public final class Asking {

    private final Errands errands;
    private final Roster roster;
    private final Clock clock;
    private List<Debt> debts = List.of();
    private List<Person> people = List.of();

    Asking(Errands errands, Roster roster, Clock clock) {
        this.errands = errands;
        this.roster = roster;
        this.clock = clock;
    }

    /** Answers that are owed. */
    public List<Debt> debts() {
        return debts;
    }

    void look(List<Person> listed) {
        people = listed;
        ZonedDateTime now = ZonedDateTime.now(clock);
        Debts finder = new Debts(errands::tell);
        errands.fetch(
                () -> {
                    List<Debt> found = new ArrayList<>();
                    for (Person person : listed) {
                        found.addAll(finder.of(person, roster.folder(person.id()), now));
                    }
                    return List.copyOf(found);
                },
                found -> debts = found);
    }

    /** How hard it was, 0 to 10, and how long it lasted, min. */
    public void effort(Debt debt, double effort, double minutes) {
        pay(debt, DiaryAnswers.effort(effort, minutes));
    }

    /** What is sore the day after. */
    public void soreness(Debt debt, Map<String, Integer> soreness) {
        pay(debt, DiaryAnswers.soreness(soreness));
    }

    private void pay(Debt debt, DiaryEntry entry) {
        AthleteFolder athlete = roster.folder(debt.person().id());
        errands.fetch(
                () -> athlete.locked(
                        errands::tell, () -> athlete.diary(debt.day()).add(entry)),
                paid -> look(people));
    }
}
