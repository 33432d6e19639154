package evenfall.report.command;

import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import java.io.IOException;
import java.time.Year;
import java.time.ZoneId;
import java.util.Optional;

/** Reminds of missing consent; never blocks. */
final class Consent {

    private static final int OF_AGE = 18;

    private Consent() {}

    static void remind(AthleteFolder athlete, Console console) throws IOException {
        Optional<AthleteEntry> who = athlete.lastWho(console::say);
        if (who.isEmpty() || who.get().consent() == null) {
            console.say("No consent of " + athlete.id() + " is noted yet; ask for it and note it with"
                    + " 'evenfall athlete --consent DATE'.");
            return;
        }
        Integer born = who.get().born();
        if (born != null
                && Year.now(ZoneId.systemDefault()).getValue() - born <= OF_AGE
                && who.get().guardian() == null) {
            console.say(athlete.id() + " may be a minor and no guardian is noted; note who consented with"
                    + " 'evenfall athlete --guardian TEXT'.");
        }
    }
}
