package evenfall.report.command;

import evenfall.report.speech.Speaker;
import evenfall.report.speech.Speech;
import evenfall.report.speech.SpeechProgram;
import java.util.Locale;
import java.util.Optional;

/** Finds a voice where one is wished for. */
final class Voices {

    private Voices() {}

    static Speech find(boolean wished, Console console) {
        if (!wished) {
            return Speech.SILENT;
        }
        Optional<String> searchPath = System.getenv().entrySet().stream()
                .filter(entry -> entry.getKey().toUpperCase(Locale.ROOT).equals("PATH"))
                .map(java.util.Map.Entry::getValue)
                .findFirst();
        Optional<SpeechProgram> program = SpeechProgram.find(searchPath.orElse(""));
        if (program.isEmpty()) {
            console.say("No program that speaks was found (" + String.join(", ", SpeechProgram.names())
                    + "), so sentences are only written; install one to hear them.");
            return Speech.SILENT;
        }
        return new Speaker(program.get());
    }
}
