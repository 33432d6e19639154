package evenfall.report.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that notes what it is told stands for the system's. */
class SpeakerTest {

    private static final long LONG_MS = 20_000;

    @TempDir
    private Path folder;

    private Path heard;

    @BeforeEach
    void shell() {
        heard = folder.resolve("heard");
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "there is no /bin/sh to stand for a program that speaks");
    }

    @Test
    void saysASentenceAsItIs() throws IOException {
        SpeechProgram program = program("espeak-ng", "echo \"$1\" >> " + heard);
        try (Speaker speaker = new Speaker(program, LONG_MS)) {
            speaker.say("Leaned right; $(rm -rf .), `more` than \"usual\".");
        }

        assertThat(Files.readAllLines(heard)).containsExactly("Leaned right; $(rm -rf .), `more` than \"usual\".");
    }

    /** A program of the system that speaks in earnest, into a file: two or three seconds of what is not silence. */
    @Test
    void aRealProgramSpeaksTheSentence() throws IOException, UnsupportedAudioFileException {
        Optional<SpeechProgram> installed = SpeechProgram.find(String.valueOf(System.getenv("PATH")))
                .filter(program -> program.path().endsWith("espeak-ng"));
        assumeTrue(installed.isPresent(), "no espeak-ng is installed");
        Path sound = folder.resolve("said.wav");
        SpeechProgram intoFile =
                new SpeechProgram(installed.orElseThrow().path(), List.of("-w", sound.toString()), false);
        try (Speaker speaker = new Speaker(intoFile, LONG_MS)) {
            speaker.say("leaned right, more than usual");
        }

        try (AudioInputStream audio = AudioSystem.getAudioInputStream(sound.toFile())) {
            byte[] samples = audio.readAllBytes();
            double seconds = samples.length
                    / (double) audio.getFormat().getFrameSize()
                    / audio.getFormat().getSampleRate();
            assertThat(seconds).isBetween(0.8, 5.0);
            int loudest = 0;
            for (int i = 0; i + 1 < samples.length; i += 2) {
                loudest = Math.max(loudest, Math.abs((short) ((samples[i] & 0xff) | samples[i + 1] << 8)));
            }
            assertThat(loudest).isGreaterThan(1000);
        }
    }

    @Test
    void whereNothingSpeaks_itSaysSoAndGoesOn() throws IOException {
        program("espeak-ng", "exit 0");
        try (Speech none = Speaker.find("");
                Speech there = Speaker.find(folder.toString())) {
            none.say("Spine folded.");
            none.sayAtOnce("Spine folded.");
            none.hush();

            assertThat(none.unheard()).contains("espeak-ng", "say", "only written");
            assertThat(there.unheard()).isEmpty();
            assertThat(Unspoken.WISHED.unheard()).isEmpty();
        }
    }

    @Test
    void givesItOnInputWhereThatIsTheWay() throws IOException {
        SpeechProgram program = program("powershell.exe", "cat >> " + heard);
        try (Speaker speaker = new Speaker(program, LONG_MS)) {
            speaker.say("Spine folded.");
        }

        assertThat(Files.readString(heard)).isEqualTo("Spine folded.");
    }

    @Test
    void speaksOneAtATimeAndDropsOldOnes() throws IOException {
        SpeechProgram program =
                program("espeak", "echo begin \"$1\" >> " + heard + "; sleep 0.4; echo end >> " + heard);
        try (Speaker speaker = new Speaker(program, LONG_MS)) {
            speaker.say("one");
            await(() -> lines().contains("begin one"));
            speaker.say("two");
            speaker.say("three");
        }

        assertThat(Files.readAllLines(heard)).containsExactly("begin one", "end", "begin three", "end");
    }

    @Test
    void whatIsUrgentBreaksIn() throws IOException {
        SpeechProgram program = program("espeak", "echo \"$1\" >> " + heard + "; [ \"$1\" = now ] || sleep 30");
        try (Speaker speaker = new Speaker(program, LONG_MS * 3)) {
            speaker.say("one");
            await(() -> lines().contains("one"));
            speaker.say("two");
            speaker.sayAtOnce("now");
            await(() -> lines().contains("now"));
        }

        assertThat(Files.readAllLines(heard)).containsExactly("one", "now");
    }

    @Test
    void endsAProgramThatTakesTooLong() throws IOException {
        SpeechProgram program = program("espeak", "echo $$ >> " + heard + "; sleep 300");
        try (Speaker speaker = new Speaker(program, 300)) {
            speaker.say("one");
            await(() -> !lines().isEmpty());
            speaker.say("two");
            await(() -> lines().size() == 2);
        }

        for (String pid : lines()) {
            await(() -> ProcessHandle.of(Long.parseLong(pid))
                    .map(process -> !process.isAlive())
                    .orElse(true));
        }
    }

    @Test
    void aProgramThatFailsOrIsNoneIsPassedOver() throws IOException {
        SpeechProgram broken = program("espeak", "exit 3");
        try (Speaker speaker = new Speaker(broken, LONG_MS)) {
            speaker.say("one");
        }
        Files.writeString(broken.path(), "\u0000 no program");
        try (Speaker speaker = new Speaker(broken, LONG_MS)) {
            speaker.say("one");
        }
        try (Speaker speaker = new Speaker(new SpeechProgram(folder.resolve("none"), List.of(), false), LONG_MS)) {
            speaker.say("one");
        }

        assertThat(heard).doesNotExist();
    }

    @Test
    void findsNoneWhereThereIsNone() throws IOException {
        Files.writeString(folder.resolve("espeak"), "not executable");

        assertThat(SpeechProgram.find("")).isEmpty();
        assertThat(SpeechProgram.find(folder.toString())).isEmpty();
        assertThat(SpeechProgram.find("\u0000" + File.pathSeparator + folder.resolve("none")))
                .isEmpty();
    }

    private SpeechProgram program(String name, String script) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, "#!/bin/sh\n" + script + "\n");
        assertThat(file.toFile().setExecutable(true)).isTrue();
        Optional<SpeechProgram> found = SpeechProgram.find(folder.resolve("none") + File.pathSeparator + folder);
        return found.orElseThrow();
    }

    private List<String> lines() {
        try {
            return Files.exists(heard) ? Files.readAllLines(heard) : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static void await(BooleanSupplier condition) {
        for (int i = 0; i < 1000 && !condition.getAsBoolean(); i++) {
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        assertThat(condition.getAsBoolean()).isTrue();
    }
}
