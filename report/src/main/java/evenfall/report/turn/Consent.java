package evenfall.report.turn;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import java.io.IOException;
import java.time.Year;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Consumer;

/** Reminds of missing consent; never blocks. */
public final class Consent {

    private static final Words WORDS = Words.beside(Consent.class);
    private static final int OF_AGE = 18;

    private Consent() {}

    /**
     * Says in a sentence what is missing.
     *
     * @param tell told, in a sentence, what a person should know
     */
    public static void remind(AthleteFolder athlete, Consumer<String> tell) throws IOException {
        Optional<AthleteEntry> who = athlete.lastWho(tell);
        if (who.isEmpty() || who.get().consent() == null) {
            tell.accept(WORDS.say("consent", athlete.id()));
            return;
        }
        Integer born = who.get().born();
        if (born != null
                && Year.now(ZoneId.systemDefault()).getValue() - born <= OF_AGE
                && who.get().guardian() == null) {
            tell.accept(WORDS.say("guardian", athlete.id()));
        }
    }
}
