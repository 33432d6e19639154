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
@Command(
        name = "orientation",
        description = "The orientation of one sensor at every sample, as a table t_s,qw,qx,qy,qz (world from sensor).")
final class OrientationCommand implements Task {

    private final Console console;

    @Option(names = "--sensor", required = true, paramLabel = "FILE", description = "Table of one sensor.")
    private Path sensor;

    @Option(
            names = "--layout",
            paramLabel = "FILE",
            description = "How the table is laid out, where its header does not say; its axes are not applied.")
    private @Nullable Path layout;

    @Option(
            names = "--filter",
            paramLabel = "NAME",
            converter = FilterOption.class,
            description = FilterOption.DESCRIPTION)
    private FilterKind filter = FilterKind.TWO_PASS;

    @Option(names = "--out", paramLabel = "FILE", description = "Where the table goes, if not to standard output.")
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
