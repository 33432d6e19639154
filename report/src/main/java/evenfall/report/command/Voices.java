package evenfall.report.command;

import evenfall.report.speech.Speaker;
import evenfall.report.speech.Speech;
import evenfall.report.speech.Unspoken;
import java.util.Locale;
import java.util.Optional;

/** Finds a voice where one is wished for. */
final class Voices {

    private Voices() {}

    static Speech find(boolean wished, Console console) {
        if (!wished) {
            return Unspoken.WISHED;
        }
        Optional<String> searchPath = System.getenv().entrySet().stream()
                .filter(entry -> entry.getKey().toUpperCase(Locale.ROOT).equals("PATH"))
                .map(java.util.Map.Entry::getValue)
                .findFirst();
        Speech speech = Speaker.find(searchPath.orElse(""));
        if (!speech.unheard().isEmpty()) {
            console.say(speech.unheard());
        }
        return speech;
    }
}
