package evenfall.fusion.accuracy;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The simulation's body at 200 Hz with straight lines between, by the pelvis sensor's clock. */
final class SimulatedBody implements TrueBody {

    private static final int PELVIS = 1;
    private static final int THORAX = 5;
    private static final int PLACE = 9;
    private static final int SPEED = 12;

    private final List<double[]> rows = new ArrayList<>();

    /** Reads {@code truth.csv.gz} in a session's folder. */
    SimulatedBody(Path session) {
        try (BufferedReader in = OpenData.open(session.resolve("truth.csv.gz"))) {
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",", -1);
                double[] row = new double[SPEED + 3];
                for (int i = 0; i < row.length; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int before(double t) {
        int low = 0;
        int high = rows.size() - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (rows.get(middle)[0] <= t) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private double part(int i, double t) {
        double from = rows.get(i)[0];
        return (t - from) / (rows.get(i + 1)[0] - from);
    }

    @Override
    public Quaternion orientation(Place place, double t) {
        int at = place == Place.PELVIS ? PELVIS : THORAX;
        int i = before(t);
        return quaternion(rows.get(i), at)
                .slerp(quaternion(rows.get(i + 1), at), part(i, t))
                .normalised();
    }

    private static Quaternion quaternion(double[] row, int at) {
        return new Quaternion(row[at], row[at + 1], row[at + 2], row[at + 3]).normalised();
    }

    @Override
    public Vector3 speed(double t) {
        return vector(SPEED, t);
    }

    @Override
    public Vector3 place(double t) {
        return vector(PLACE, t);
    }

    private Vector3 vector(int at, double t) {
        int i = before(t);
        double[] a = rows.get(i);
        double[] b = rows.get(i + 1);
        double p = part(i, t);
        return new Vector3(
                a[at] + p * (b[at] - a[at]),
                a[at + 1] + p * (b[at + 1] - a[at + 1]),
                a[at + 2] + p * (b[at + 2] - a[at + 2]));
    }
}
