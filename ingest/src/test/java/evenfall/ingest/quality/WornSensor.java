package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;
import java.util.SplittableRandom;

/**
 * A sensor on someone who stands, bows and hops, with noise and 16-bit steps, in an axis order drawn from the seed; its
 * samples may be spoilt before the stream is built.
 */
final class WornSensor {

    private static final double STANDARD_GRAVITY = 9.80665;

    final double rateHz;
    final double[] time;
    final double[][] columns = new double[6][];
    private final boolean[] clipped;

    WornSensor(double rateHz, double seconds, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int size = (int) (rateHz * seconds);
        this.rateHz = rateHz;
        this.time = new double[size];
        this.clipped = new boolean[size];
        double[][] mounting = mounting(random);
        for (int c = 0; c < 6; c++) {
            columns[c] = new double[size];
        }
        double tilt = 0;
        double sway = random.nextDouble(6);
        for (int i = 0; i < size; i++) {
            double t = i / rateHz;
            time[i] = t + random.nextDouble(-0.1, 0.1) / rateHz;
            double phase = t % 20;
            // Stands from 0 to 8 s of every 20, bows from 8 to 12, hops from 12 to 18.
            double turn = phase > 8 && phase < 12 ? 1.2 * Math.sin(Math.PI * (phase - 8) / 2) : 0;
            tilt += turn / rateHz;
            double hop = phase > 12 && phase < 18 ? Math.max(-1, 2.5 * Math.sin(4 * Math.PI * phase)) : 0;
            double force = STANDARD_GRAVITY * (1 + hop);
            double[] body = {
                -force * Math.sin(tilt) + 0.03 * Math.sin(1.7 * t + sway),
                0.03 * Math.sin(2.3 * t + sway) + 0.6 * hop,
                force * Math.cos(tilt),
                0.01 * Math.sin(3 * t) + 0.3 * hop,
                turn,
                0.2 * hop + 0.01 * Math.sin(2 * t),
            };
            for (int c = 0; c < 6; c++) {
                double[] row = mounting[c % 3];
                int o = c < 3 ? 0 : 3;
                double value = row[0] * body[o] + row[1] * body[o + 1] + row[2] * body[o + 2];
                columns[c][i] = value + (c < 3 ? 0.03 : 0.0015) * random.nextGaussian();
            }
        }
        quantise();
    }

    private static double[][] mounting(SplittableRandom random) {
        double[] q = new double[4];
        double norm = 0;
        for (int i = 0; i < 4; i++) {
            q[i] = random.nextGaussian();
            norm += q[i] * q[i];
        }
        double w = q[0] / Math.sqrt(norm);
        double x = q[1] / Math.sqrt(norm);
        double y = q[2] / Math.sqrt(norm);
        double z = q[3] / Math.sqrt(norm);
        return new double[][] {
            {1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)},
            {2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)},
            {2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)},
        };
    }

    private void quantise() {
        for (int c = 0; c < 6; c++) {
            double step = c < 3 ? 16 * STANDARD_GRAVITY / 32768 : Math.toRadians(2000) / 32768;
            for (int i = 0; i < time.length; i++) {
                columns[c][i] = Math.rint(columns[c][i] / step) * step;
            }
        }
    }

    int index(double seconds) {
        return (int) (seconds * rateHz);
    }

    WornSensor hold(int column, double fromS, double toS) {
        for (int i = index(fromS) + 1; i < Math.min(time.length, index(toS)); i++) {
            columns[column][i] = columns[column][index(fromS)];
        }
        return this;
    }

    WornSensor add(int column, double offset) {
        for (int i = 0; i < time.length; i++) {
            columns[column][i] += offset;
        }
        return this;
    }

    WornSensor scale(int from, int to, double factor) {
        for (int c = from; c < to; c++) {
            for (int i = 0; i < time.length; i++) {
                columns[c][i] *= factor;
            }
        }
        return this;
    }

    /** Limits the accelerometer and marks what it cut. */
    WornSensor limit(double range) {
        for (int c = 0; c < 3; c++) {
            for (int i = 0; i < time.length; i++) {
                if (Math.abs(columns[c][i]) >= range) {
                    columns[c][i] = Math.copySign(range, columns[c][i]);
                    clipped[i] = true;
                }
            }
        }
        return this;
    }

    SensorStream stream() {
        return streamWithout(new boolean[time.length]);
    }

    SensorStream streamWithout(boolean[] lost) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < time.length; i++) {
            if (!lost[i]) {
                if (clipped[i]) {
                    builder.clipAcceleration(builder.size());
                }
                builder.add(
                        time[i],
                        columns[0][i],
                        columns[1][i],
                        columns[2][i],
                        columns[3][i],
                        columns[4][i],
                        columns[5][i]);
            }
        }
        return builder.build();
    }
}
