package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of a sensor in {@code docs/sensor}, compiled with the machine's C compiler. */
class ExampleSensorTest {

    private static final Path SOURCES = Path.of("..", "docs", "sensor");
    private static final List<String> COMPILER =
            List.of("cc", "-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic", "-I", SOURCES.toString());

    @TempDir
    private Path folder;

    @BeforeEach
    void needsACompiler() {
        assumeTrue(hasCompiler(), "there is no C compiler cc on this machine");
    }

    @Test
    void itsFramesAreTheVectors() throws Exception {
        String program = compile("vectors.c", "frame.c");
        List<WireVectors.Vector> vectors = WireVectors.all().stream()
                .filter(vector -> List.of("crc", "cobs", "sample", "hello").contains(vector.kind()))
                .toList();
        StringBuilder questions = new StringBuilder();
        for (WireVectors.Vector vector : vectors) {
            boolean bytes = vector.kind().equals("crc") || vector.kind().equals("cobs");
            questions
                    .append(vector.kind().replace("cobs", "stuff"))
                    .append(' ')
                    .append(bytes ? vector.what().replace(" ", "") : vector.what())
                    .append('\n');
        }
        Path asked = Files.writeString(folder.resolve("questions"), questions);
        byte[] answers = run(new ProcessBuilder(program).redirectInput(asked.toFile()));

        assertThat(new String(answers, StandardCharsets.US_ASCII).lines())
                .containsExactlyElementsOf(
                        vectors.stream().map(WireVectors.Vector::hex).toList());
        assertThat(vectors).hasSizeGreaterThan(25);
    }

    /** A make-believe six-axis sensor runs over at 3 s, the port is full at 5 s; the first count is a sample's number. */
    @Test
    void itsLoopNumbersWhatItCouldNotSendToo() throws Exception {
        String program = compile("fake_board.c", "frame.c", "sensor.c");
        byte[] bytes = run(new ProcessBuilder(program));
        Heard heard = new Heard();
        FrameDecoder decoder = new FrameDecoder(heard);
        decoder.accept(bytes, 0, bytes.length);
        decoder.end();

        assertThat(heard.hellos).hasSizeBetween(8, 10);
        assertThat(heard.hellos.get(0).name()).isEqualTo("example 1");
        assertThat(decoder.counts().bad()).isZero();
        List<Long> numbers = numbers(heard);
        long taken = numbers.get(numbers.size() - 1) - numbers.get(0) + 1;
        // The stall of 0.7 s and the full port of 0.25 s are 190 samples; how many the FIFO dropped is reckoned by the
        // clock.
        assertThat(taken - numbers.size()).isBetween(188L, 194L);
        assertThat((double) decoder.counts().lost()).isCloseTo((double) (taken - numbers.size()), within(2.0));
        // Nine seconds less the first moments, at 4.996 ms.
        assertThat(taken).isBetween(1795L, 1802L);
        double first = heard.rows.get(0).timeS();
        for (int i = 0; i < numbers.size(); i++) {
            double expected = first + (numbers.get(i) - numbers.get(0)) * 0.004996;
            assertThat(heard.rows.get(i).timeS()).isCloseTo(expected, within(0.001));
        }
    }

    private static List<Long> numbers(Heard heard) {
        List<Long> numbers = new ArrayList<>();
        for (Heard.Row row : heard.rows) {
            numbers.add(Math.round(row.ax() * 2048 / 9.80665));
        }
        return numbers;
    }

    private String compile(String test, String... sources) throws IOException, InterruptedException {
        Path source = folder.resolve(test);
        try (InputStream in = ExampleSensorTest.class.getResourceAsStream(test)) {
            Files.write(source, Objects.requireNonNull(in).readAllBytes());
        }
        Path program = folder.resolve("program");
        List<String> command = new ArrayList<>(COMPILER);
        for (String name : sources) {
            command.add(SOURCES.resolve(name).toString());
        }
        command.addAll(List.of(source.toString(), "-o", program.toString()));
        run(new ProcessBuilder(command));
        return program.toString();
    }

    private byte[] run(ProcessBuilder builder) throws IOException, InterruptedException {
        Path errors = folder.resolve("errors");
        Process process = builder.redirectError(errors.toFile()).start();
        byte[] out = process.getInputStream().readAllBytes();
        assertThat(process.waitFor()).as(Files.readString(errors)).isZero();
        return out;
    }

    private static boolean hasCompiler() {
        try {
            return new ProcessBuilder("cc", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
