package evenfall.report.result;

import evenfall.fusion.alignment.Mounting;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.StrapComparison;
import evenfall.report.form.FormStandard;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DamagedFileException;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Puts a block together from the sessions and the diary of a log. */
public final class LoggedBlock {

    private static final Words WORDS = Words.beside(LoggedBlock.class);

    private LoggedBlock() {}

    /**
     * The block of an athlete's sessions.
     *
     * @param from first day, or null for all from the first
     * @param to last day, or null for all to the last
     * @param tell told in a sentence of files passed over
     */
    public static Block of(
            AthleteFolder athlete,
            LoggedSessions sessions,
            @Nullable LocalDate from,
            @Nullable LocalDate to,
            Consumer<String> tell)
            throws IOException {
        List<SessionDate> dates = athlete.sessions().stream()
                .filter(date -> from == null || !date.day().isBefore(from))
                .filter(date -> to == null || !date.day().isAfter(to))
                .toList();
        FormStandard standard = sessions.standard(true);
        List<BlockLanding> landings = new ArrayList<>();
        List<SessionDate> shown = new ArrayList<>();
        Map<SessionDate, Map<Place, Mounting>> mountings = new LinkedHashMap<>();
        Map<SessionDate, Double> efforts = new LinkedHashMap<>();
        LocalDate day = null;
        for (SessionDate date : dates) {
            try {
                Session session = sessions.summary(date);
                landings.addAll(BlockLanding.of(date, session));
                mountings.put(date, session.analysis().mounting());
                shown.add(date);
                tellOfUnits(date, session, tell);
            } catch (DamagedFileException | UnusableInputException e) {
                tell.accept(WORDS.say("block.left", date, String.valueOf(e.getMessage())));
                continue;
            } catch (IOException e) {
                tell.accept(WORDS.say("block.unread", date, String.valueOf(e.getMessage())));
                continue;
            }
            // The diary knows days, not sessions: what a day cost stands with its first session.
            if (!date.day().equals(day)) {
                day = date.day();
                Double effort = effortMinutes(sessions.diary().days().getOrDefault(day, List.of()));
                if (effort != null) {
                    efforts.put(date, effort);
                }
            }
        }
        return BlockAnalysis.of(athlete.id(), shown, landings, efforts, StrapComparison.of(mountings))
                .judgedBy(standard);
    }

    private static void tellOfUnits(SessionDate date, Session session, Consumer<String> tell) {
        session.analysis().findings().stream()
                .filter(Finding::isWrongUnit)
                .findFirst()
                .ifPresent(finding -> tell.accept(WORDS.say("block.units", date, finding.message())));
    }

    /** Effort times minutes, summed over entries that have both (Foster et al. 2001, JSCR 15:109); null without any. */
    private static @Nullable Double effortMinutes(List<DiaryEntry> entries) {
        Double sum = null;
        for (DiaryEntry entry : entries) {
            if (entry.effort() != null && entry.minutes() != null) {
                sum = (sum == null ? 0 : sum) + entry.effort() * entry.minutes();
            }
        }
        return sum;
    }
}
