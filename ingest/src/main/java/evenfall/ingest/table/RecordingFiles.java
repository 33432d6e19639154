package evenfall.ingest.table;

import evenfall.ingest.parallel.Aside;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Reads recordings from table files, by their header or by a layout file.
 *
 * <p>What cannot be used is an {@link UnusableInputException} with one sentence for a person; a failing disk is an
 * {@link IOException}.
 */
public final class RecordingFiles {

    private RecordingFiles() {}

    /**
     * Reads a recording; two sensors are read at once, on two threads.
     *
     * <p>A layout that tells sensors apart by a column finds both in the pelvis file, unless another file is given for the
     * upper back.
     *
     * @param pelvis the file of the pelvis sensor
     * @param upperBack the file of the upper-back sensor, or null if none was worn
     * @param layout the layout file, or null when the header says enough
     * @param progress told how far reading has come, from either thread
     */
    public static Recording read(Path pelvis, @Nullable Path upperBack, @Nullable Path layout, Progress progress)
            throws IOException {
        Layout form = layout == null ? null : LayoutFile.read(layout);
        TableReader reader = new TableReader(form);
        Path second =
                upperBack == null && form != null && form.sensors().containsKey(Place.UPPER_BACK) ? pelvis : upperBack;
        if (second == null) {
            return new Recording(reader.read(pelvis, Place.PELVIS, progress), null);
        }
        Aside<SensorRecording> other = Aside.start("read upper back", () -> {
            try {
                return reader.read(second, Place.UPPER_BACK, progress);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        SensorRecording first = reader.read(pelvis, Place.PELVIS, progress);
        try {
            return new Recording(first, other.result());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * Reads one sensor; of a file that holds both, the pelvis.
     *
     * @param file the sensor's file
     * @param layout the layout file, or null when the header says enough
     * @param progress told how far reading has come
     */
    public static SensorRecording readSensor(Path file, @Nullable Path layout, Progress progress) throws IOException {
        return new TableReader(layout == null ? null : LayoutFile.read(layout)).read(file, Place.PELVIS, progress);
    }
}
