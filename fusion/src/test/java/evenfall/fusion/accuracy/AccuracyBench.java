package evenfall.fusion.accuracy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Measures every figure of accuracy and writes the page of them, with its plots. */
final class AccuracyBench {

    private static final int MOTIONS = 2;
    private static final int LANDINGS = 6;

    /** How often each simulated session is copied with each trouble. */
    private static final int COPIES = 4;

    private static final List<String> SETS = List.of("broad", "sisfall", "landings");

    private final Path docs;
    private final AccuracyPlots plots;
    private final Map<String, String> slots = new LinkedHashMap<>();

    private AccuracyBench(Path docs) {
        this.docs = docs;
        this.plots = new AccuracyPlots(docs.resolve("images"));
    }

    /** The folder of documents, the program's version, and {@code required} or {@code optional} for the open recordings. */
    public static void main(String[] args) throws IOException {
        List<String> missing =
                SETS.stream().filter(set -> OpenData.folder(set).isEmpty()).toList();
        if (!missing.isEmpty() && !args[2].equals("optional")) {
            System.err.println("The page is not written, for it would lose figures: "
                    + OpenData.missing(String.join(", ", missing))
                    + ". With -Daccuracy.data=optional it is written without them.");
            System.exit(3);
        }
        new AccuracyBench(Path.of(args[0])).run(args[1]);
    }

    private void run(String version) throws IOException {
        slots.put("date", LocalDate.now(ZoneOffset.UTC).toString());
        slots.put("version", version);
        openData();
        LadderRun ladder = new LadderRun(MOTIONS, LANDINGS);
        Map<Rung, LandingErrors> rungs = told("the ladder", ladder.errors(Ladder.rungs()));
        slots.put("ladder errors", LadderPart.errors(rungs));
        slots.put("ladder coverage", LadderPart.coverage(rungs));
        slots.put("ladder plots", images(plots.ladder("accuracy-ladder", rungs), "Errors up the ladder"));
        slots.put("shares", LadderPart.errors(told("the shares", ladder.errors(Ladder.shares()))));
        simulated(ladder);
        Files.writeString(docs.resolve("accuracy.md"), filled());
        System.out.println("written: " + docs.resolve("accuracy.md"));
    }

    private void openData() {
        Optional<Path> broad = OpenData.folder("broad");
        Optional<Path> sisfall = OpenData.folder("sisfall");
        slots.put("orientation", broad.map(OpenDataPart::orientation).orElse(leftOut("broad")));
        slots.put("finder", sisfall.map(OpenDataPart::finder).orElse(leftOut("sisfall")));
    }

    private void simulated(LadderRun ladder) throws IOException {
        Optional<Path> folder = OpenData.folder("landings");
        List<String> names = List.of(
                "simulated overall",
                "simulated sessions",
                "simulated groups",
                "simulated counts",
                "copies",
                "copies coverage",
                "copies kinds coverage",
                "copies bodies coverage",
                "floor");
        names.forEach(name -> slots.put(name, leftOut("landings")));
        slots.put("coverage plot", "");
        slots.put("floor plot", "");
        if (folder.isEmpty()) {
            return;
        }
        SimulatedRun run = told("the simulated sessions", SimulatedRun.of(folder.orElseThrow()));
        slots.put("simulated overall", SimulatedPart.overall(run));
        slots.put("simulated sessions", SimulatedPart.sessions(run));
        slots.put("simulated groups", SimulatedPart.groups(run));
        slots.put("simulated counts", SimulatedPart.counts(run));
        CopiesRun copies = told("the same with other sensors", CopiesRun.of(run.sessions(), COPIES));
        slots.put("copies", SimulatedPart.copies(copies.byTrouble()));
        slots.put("copies coverage", SimulatedPart.copiesCoverage(copies.byTrouble()));
        slots.put("copies kinds coverage", SimulatedPart.copiesCoverage(copies.byKind()));
        slots.put("copies bodies coverage", SimulatedPart.copiesCoverage(copies.byBody()));
        plots.coverage("accuracy-coverage", run.all());
        slots.put("coverage plot", images(List.of("accuracy-coverage"), "How many errors lie within sigma"));
        FloorRun.Simulated known = FloorRun.Simulated.of(run);
        FloorPart floor = told(
                "the floor",
                new FloorPart(
                        FloorRun.synthetic(ladder.motions(), (perfect, place, motion) -> perfect),
                        FloorRun.synthetic(ladder.motions(), Ladder.noise(1)),
                        FloorRun.synthetic(ladder.motions(), Ladder.usualStrap()),
                        known.floor(),
                        known.program()));
        slots.put("floor", floor.table());
        plots.floor("accuracy-floor", floor);
        slots.put("floor plot", images(List.of("accuracy-floor"), "The floor and the program"));
    }

    private static String leftOut(String set) {
        return "*Left out: " + OpenData.missing(set) + ".*\n";
    }

    private static <T> T told(String what, T done) {
        System.out.println("measured: " + what);
        return done;
    }

    private static String images(List<String> names, String words) {
        List<String> lines = new ArrayList<>();
        names.forEach(name -> lines.add("![" + words + "](images/" + name + ".png)\n"));
        return String.join("\n", lines);
    }

    /** The hand-written page with the figures in its slots, each a line {@code {name}} or part of one. */
    private String filled() throws IOException {
        try (InputStream in = Objects.requireNonNull(AccuracyBench.class.getResourceAsStream("page.md"))) {
            String page = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (Map.Entry<String, String> slot : slots.entrySet()) {
                String place = "{" + slot.getKey() + "}";
                if (!page.contains(place)) {
                    throw new IllegalStateException("the page has no place " + place);
                }
                page = page.replace(place, slot.getValue().stripTrailing());
            }
            return page;
        }
    }
}
