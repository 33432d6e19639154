package evenfall.report.command;

import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import evenfall.report.result.RecordingInput;
import evenfall.report.table.OrientationCsv;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the orientation of one sensor at every sample. */
@Command(name = "orientation", addMethodSubcommands = false)
final class OrientationCommand implements Task {

    private final Console console;

    @Option(names = "--sensor", required = true, paramLabel = "FILE")
    private Path sensor;

    @Option(names = "--layout", paramLabel = "FILE")
    private @Nullable Path layout;

    @Option(names = "--filter", paramLabel = "NAME", converter = FilterOption.class)
    private FilterKind filter = FilterKind.TWO_PASS;

    @Option(names = "--out", paramLabel = "FILE")
    private @Nullable Path out;

    OrientationCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        List<Path> inputs = new ArrayList<>(List.of(sensor));
        if (layout != null) {
            inputs.add(layout);
        }
        ResultFile result = ResultFile.at(console, out, inputs);
        SensorStream stream = RecordingInput.readSensor(sensor, layout, console.progress()).stream();
        OrientationTrack track = OrientationEstimator.estimate(stream, filter);
        result.writeBytes(bytes -> OrientationCsv.write(stream, track, bytes));
        return CommandRunner.DONE;
    }
}
