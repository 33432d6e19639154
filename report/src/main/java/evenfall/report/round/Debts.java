package evenfall.report.round;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.round.Debt.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Finds who still owes an answer. Reads files; not for the front thread. */
final class Debts {

    /** Older sessions nobody remembers well, days: common practice, no source. */
    private static final int OLDEST_DAYS = 3;

    /** Effort is asked so long after the session. */
    private static final Duration EFFORT_AFTER = Duration.ofMinutes(30);

    private final Consumer<String> tell;

    Debts(Consumer<String> tell) {
        this.tell = tell;
    }

    /** What somebody owes at a moment, the oldest first. */
    List<Debt> of(Person person, AthleteFolder athlete, ZonedDateTime now) throws IOException {
        LocalDate today = now.toLocalDate();
        List<Debt> debts = new ArrayList<>();
        TreeSet<LocalDate> days = new TreeSet<>();
        for (SessionDate date : athlete.sessions()) {
            boolean recent = date.day().isAfter(today.minusDays(OLDEST_DAYS + 1))
                    && !date.day().isAfter(today);
            if (recent) {
                days.add(date.day());
            }
        }
        for (LocalDate day : days) {
            if (!answered(athlete, day, entry -> entry.effort() != null) && isOver(athlete, day, now.toInstant())) {
                debts.add(new Debt(person, Kind.EFFORT, day));
            }
            LocalDate next = day.plusDays(1);
            if (!next.isAfter(today)
                    && !answered(athlete, next, entry -> !entry.soreness().isEmpty())) {
                debts.add(new Debt(person, Kind.SORENESS, day));
            }
        }
        return debts;
    }

    private interface Answers {
        boolean in(DiaryEntry entry);
    }

    private boolean answered(AthleteFolder athlete, LocalDate day, Answers answers) throws IOException {
        return DiaryEntry.inForce(athlete.diary(day).numbered(tell)).stream().anyMatch(answers::in);
    }

    /** Whether the last session of a day ended long enough ago: by when its raw files were last written. */
    private static boolean isOver(AthleteFolder athlete, LocalDate day, Instant now) throws IOException {
        for (SessionDate date : athlete.sessions()) {
            if (date.day().equals(day)
                    && lastWritten(athlete.session(date)).plus(EFFORT_AFTER).isAfter(now)) {
                return false;
            }
        }
        return true;
    }

    private static Instant lastWritten(SessionFolder session) throws IOException {
        Instant last = Instant.EPOCH;
        if (Files.isDirectory(session.rawFolder())) {
            try (Stream<Path> files = Files.list(session.rawFolder())) {
                for (Path file : (Iterable<Path>) files::iterator) {
                    FileTime time = Files.getLastModifiedTime(file);
                    last = time.toInstant().isAfter(last) ? time.toInstant() : last;
                }
            }
        }
        return last;
    }
}
