package evenfall.report.motionbids;

import evenfall.ingest.recording.SensorStream;
import evenfall.report.csv.PlainNumber;
import java.io.IOException;

/** One sensor's samples as the standard lays them out: no header, tab between, one row a sample. */
final class SampleTable {

    /** The columns, as {@code channels.tsv} lists them: name, component, type, units. */
    static final String[][] CHANNELS = {
        {"latency", "n/a", "LATENCY", "s"},
        {"acc_x", "x", "ACCEL", "m/s^2"},
        {"acc_y", "y", "ACCEL", "m/s^2"},
        {"acc_z", "z", "ACCEL", "m/s^2"},
        {"gyro_x", "x", "GYRO", "rad/s"},
        {"gyro_y", "y", "GYRO", "rad/s"},
        {"gyro_z", "z", "GYRO", "rad/s"}
    };

    private SampleTable() {}

    static void write(SensorStream s, Appendable out) throws IOException {
        for (int i = 0; i < s.size(); i++) {
            out.append(PlainNumber.of(s.time(i))).append('\t');
            out.append(PlainNumber.of(s.ax(i))).append('\t');
            out.append(PlainNumber.of(s.ay(i))).append('\t');
            out.append(PlainNumber.of(s.az(i))).append('\t');
            out.append(PlainNumber.of(s.gx(i))).append('\t');
            out.append(PlainNumber.of(s.gy(i))).append('\t');
            out.append(PlainNumber.of(s.gz(i))).append('\n');
        }
    }

    static void channels(String place, double rateHz, Appendable out) throws IOException {
        out.append("name\tcomponent\ttype\ttracked_point\tunits\tplacement\treference_frame\tsampling_frequency\n");
        for (String[] c : CHANNELS) {
            boolean time = "LATENCY".equals(c[2]);
            out.append(String.join("\t", c[0], c[1], c[2], place, c[3], place, time ? "n/a" : "sensor"))
                    .append('\t')
                    .append(PlainNumber.of(rateHz))
                    .append('\n');
        }
    }
}
