package evenfall.report.round;

import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.Now;
import evenfall.report.log.TodayList;
import evenfall.report.log.TrainingLog;
import evenfall.report.round.Person.Standing;
import java.io.IOException;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Today's list of athletes, as the log has it. Reads files; not for the front thread. */
public final class Roster {

    private static final int LONGEST_ID = 64;

    private final TrainingLog log;
    private final TodayList list;
    private final Consumer<String> tell;

    Roster(TrainingLog log, Consumer<String> tell) {
        this.log = log;
        this.list = new TodayList(log);
        this.tell = tell;
    }

    /** Who is on the list, in order. */
    List<Person> people(LocalDate today) throws IOException {
        List<Person> people = new ArrayList<>();
        for (String id : list.athletes(tell)) {
            people.add(person(id, today));
        }
        return people;
    }

    /** Who is in the log and not on the list. */
    List<String> others() throws IOException {
        List<String> others = new ArrayList<>(log.athletes());
        others.removeAll(list.athletes(tell));
        return others;
    }

    AthleteFolder folder(String id) {
        return log.athlete(id);
    }

    Person person(String id, LocalDate today) throws IOException {
        AthleteFolder athlete = log.athlete(id);
        Optional<AthleteEntry> who = athlete.lastWho(tell);
        String name = who.map(AthleteEntry::name).orElse(null);
        boolean turn = athlete.sessions().stream().anyMatch(date -> date.day().equals(today));
        Standing standing = stopped(athlete, today) ? Standing.STOPPED : turn ? Standing.HAD_TURN : Standing.TO_COME;
        return new Person(
                id,
                name == null ? id : name,
                standing,
                evenfall.report.heed.Standing.of(athlete, sentence -> {}).sentences(),
                who.map(AthleteEntry::consent).isPresent());
    }

    /** Whether any answer of the day that holds ends the drops. */
    private boolean stopped(AthleteFolder athlete, LocalDate today) throws IOException {
        return DiaryEntry.inForce(athlete.diary(today).numbered(tell)).stream().anyMatch(DiaryEntry::stopsDrops);
    }

    /** Keeps an answer; where the one that stopped the drops was a mistake it stands instead of that. */
    void keep(String id, LocalDate day, DiaryEntry answer, boolean instead) throws IOException {
        AthleteFolder athlete = log.athlete(id);
        athlete.locked(tell, () -> {
            Integer mistake = null;
            if (instead) {
                for (Map.Entry<Integer, DiaryEntry> entry :
                        athlete.diary(day).numbered(tell).entrySet()) {
                    mistake = entry.getValue().stopsDrops() ? entry.getKey() : mistake;
                }
            }
            return athlete.diary(day).add(DiaryAnswers.instead(answer, mistake));
        });
    }

    /** Puts somebody from the log on the list. */
    void list(String id) throws IOException {
        List<String> ids = new ArrayList<>(list.athletes(tell));
        if (!ids.contains(id)) {
            ids.add(0, id);
        }
        list.write(ids);
    }

    /** Takes somebody off the list; the log keeps everything. */
    void unlist(String id) throws IOException {
        List<String> ids = new ArrayList<>(list.athletes(tell));
        ids.remove(id);
        list.write(ids);
    }

    /**
     * Puts somebody new into the log and at the end of the list.
     *
     * @param name what people call the athlete
     * @param consent the day consent was given, or null
     * @param guardian who consented for a minor, or null
     * @return the athlete's name in the log; empty if the name has no letter or digit
     */
    Optional<String> add(String name, @Nullable LocalDate consent, @Nullable String guardian) throws IOException {
        String id = id(name);
        if (!TrainingLog.isAthleteId(id)) {
            return Optional.empty();
        }
        AthleteFolder athlete = log.athlete(id);
        List<String> ids = new ArrayList<>(list.athletes(tell));
        athlete.locked(
                tell,
                () -> athlete.who()
                        .add(new AthleteEntry(
                                Now.text(),
                                name.strip(),
                                null,
                                consent == null ? null : consent.toString(),
                                guardian,
                                null)));
        ids.remove(id);
        ids.add(id);
        list.write(ids);
        return Optional.of(id);
    }

    /** Notes that consent was given. */
    Person consent(String id, LocalDate day) throws IOException {
        AthleteFolder athlete = log.athlete(id);
        athlete.locked(tell, () -> {
            AthleteEntry who = athlete.lastWho(tell).orElse(new AthleteEntry("", null, null, null, null, null));
            return athlete.who()
                    .add(new AthleteEntry(
                            Now.text(), who.name(), who.born(), day.toString(), who.guardian(), who.clinicianLimit()));
        });
        return person(id, day);
    }

    /** Another name for who is called so already. */
    private String id(String name) {
        String plain = Normalizer.normalize(name.strip(), Normalizer.Form.NFC)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}_-]+", "-")
                .replaceAll("^[^\\p{L}\\p{N}]+|-+$", "");
        String stem = plain.substring(0, Math.min(plain.length(), LONGEST_ID - 4));
        String id = stem;
        for (int n = 2; TrainingLog.isAthleteId(id) && log.athlete(id).exists(); n++) {
            id = stem + "-" + n;
        }
        return id;
    }
}
