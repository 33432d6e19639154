package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.util.List;

/** Makes an athlete's part of a log, and says so: a slip in a name must not pass for somebody of whom nothing is known. */
final class NewAthlete {

    private static final Words WORDS = Words.beside(NewAthlete.class);

    /** More names than these are counted, not read out. */
    private static final int NAMED = 8;

    private NewAthlete() {}

    /** Makes it if it is missing; told where the log holds others. */
    static AthleteFolder madeIfMissing(TrainingLog log, AthleteFolder athlete, Console console) throws IOException {
        if (!athlete.exists()) {
            List<String> others = log.athletes();
            athlete.create();
            if (!others.isEmpty()) {
                int more = Math.max(0, others.size() - NAMED);
                String names = String.join(", ", others.subList(0, others.size() - more));
                console.say(WORDS.say("athlete.new", athlete.id(), log.folder(), names, more));
            }
        }
        return athlete;
    }
}
