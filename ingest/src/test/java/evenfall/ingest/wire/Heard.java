package evenfall.ingest.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Keeps all that a decoder gives. */
final class Heard implements WireReceiver {

    /** One sample of a sensor. */
    record Row(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {}

    final List<Row> rows = new ArrayList<>();
    final List<Hello> hellos = new ArrayList<>();
    final Map<Integer, Long> lost = new TreeMap<>();

    @Override
    public void sample(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        rows.add(new Row(sensor, timeS, ax, ay, az, gx, gy, gz));
    }

    @Override
    public void hello(Hello hello) {
        hellos.add(hello);
    }

    @Override
    public void lost(int sensor, long samples) {
        lost.merge(sensor, samples, Long::sum);
    }

    List<Double> times() {
        return rows.stream().map(Row::timeS).toList();
    }
}
