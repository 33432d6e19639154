package evenfall.report.command;

import evenfall.ingest.place.Place;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.log.TrainingLog;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a coach asks for by a line while a recording goes on. */
sealed interface CoachOrder {

    /** The lines there are, for a person. */
    String LINES = Words.beside(CoachOrder.class).say("desk.lines");

    Pattern WORN = Pattern.compile("(pelvis|upper-back)\\s+([0-9A-Fa-f]{1,4})");
    int HEX = 16;

    /** All is well after a fall. */
    record GoOn() implements CoachOrder {}

    /** Which lines there are. */
    record Help() implements CoachOrder {}

    /** The recording is to end. */
    record End() implements CoachOrder {}

    /** When the athlete hears something. */
    record Choose(TalkChoice choice) implements CoachOrder {}

    /** Where a sensor is worn. */
    record Worn(int sensor, Place place) implements CoachOrder {}

    /** The sensors go to somebody. */
    record HandOver(String athlete) implements CoachOrder {}

    /** Nothing that is known. */
    record Unknown(String line) implements CoachOrder {}

    /** What a line asks for. */
    static CoachOrder of(String line) {
        String plain = line.strip().replaceAll("\\s+", " ");
        String lower = plain.toLowerCase(Locale.ROOT);
        if (lower.equals("go on")) {
            return new GoOn();
        }
        if (lower.equals("help")) {
            return new Help();
        }
        if (lower.equals("end")) {
            return new End();
        }
        if (lower.startsWith("talk ")) {
            Optional<TalkChoice> choice = TalkChoice.named(lower.substring("talk ".length()));
            return choice.isPresent() ? new Choose(choice.get()) : new Unknown(plain);
        }
        Matcher worn = WORN.matcher(lower);
        if (worn.matches()) {
            Place place = worn.group(1).equals(Place.PELVIS.code()) ? Place.PELVIS : Place.UPPER_BACK;
            return new Worn(Integer.parseInt(worn.group(2), HEX), place);
        }
        String name = lower.startsWith("next ") ? plain.substring("next ".length()) : plain;
        return TrainingLog.isAthleteId(name) ? new HandOver(name) : new Unknown(plain);
    }
}
