package evenfall.report.speech;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A program of the system that speaks what it is given.
 *
 * @param path where it is
 * @param arguments what comes before the sentence
 * @param byInput whether the sentence is given on standard input instead of as the last argument
 */
public record SpeechProgram(Path path, List<String> arguments, boolean byInput) {

    /** In this script the sentence is only ever read, so that nothing in it can be taken for a command. */
    private static final String SCRIPT = "[Console]::InputEncoding = [Text.Encoding]::UTF8;"
            + "Add-Type -AssemblyName System.Speech;"
            + "(New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak([Console]::In.ReadToEnd())";

    private static final List<String> SCRIPTED = List.of("-NoProfile", "-NonInteractive", "-Command", SCRIPT);

    /** Those that stop speaking when they are ended come first. */
    private static final List<Known> USUAL = List.of(
            new Known("say", List.of(), false),
            new Known("espeak-ng", List.of(), false),
            new Known("espeak", List.of(), false),
            new Known("flite", List.of("-t"), false),
            new Known("spd-say", List.of("--wait"), false),
            new Known("powershell.exe", SCRIPTED, true),
            new Known("pwsh.exe", SCRIPTED, true));

    private record Known(String name, List<String> arguments, boolean byInput) {}

    public SpeechProgram {
        arguments = List.copyOf(arguments);
    }

    /**
     * The first of the usual ones that is there.
     *
     * @param searchPath folders as in the variable {@code PATH}; may be empty
     */
    public static Optional<SpeechProgram> find(String searchPath) {
        for (Known known : USUAL) {
            for (String folder : searchPath.split(File.pathSeparator, -1)) {
                Optional<Path> program = in(folder, known.name());
                if (program.isPresent()) {
                    return Optional.of(new SpeechProgram(program.get(), known.arguments(), known.byInput()));
                }
            }
        }
        return Optional.empty();
    }

    /** Names of the programs that are looked for. */
    public static List<String> names() {
        return USUAL.stream().map(Known::name).toList();
    }

    /** The command that speaks a sentence. */
    List<String> command(String sentence) {
        List<String> command = new ArrayList<>();
        command.add(path.toString());
        command.addAll(arguments);
        if (!byInput) {
            command.add(sentence);
        }
        return command;
    }

    private static Optional<Path> in(String folder, String name) {
        if (folder.isBlank()) {
            return Optional.empty();
        }
        try {
            Path path = Path.of(folder).resolve(name);
            return Files.isRegularFile(path) && Files.isExecutable(path) ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
