package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A straight line through values of which some are only known to be at least so much.
 *
 * <p>Huber's weights (Huber 1964, Ann. Math. Stat. 35:73) keep wild values from deciding. A value of which only the least is
 * known stands for what it would be on average, given the line and that it is no less (Schmee and Hahn 1979, Technometrics
 * 21:417), and the two are found in turn.
 */
public final class CensoredLine {

    private static final double HUBER = 1.5;
    private static final int ROUNDS = 60;

    /** Beyond so many spreads above the line a value stands for itself: the normal tail has nothing more to add. */
    private static final double FAR = 6;

    /** Null: no random draws are ever asked of it. */
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final double[] x;
    private final double[] y;
    private final boolean[] atLeast;
    private final double[] filled;
    private final double[] weight;
    private double middle;
    private double across;
    private double level;
    private double slope;
    private double spread;

    /**
     * Fits at least three values.
     *
     * @param x where
     * @param y the value there
     * @param atLeast whether the value may be larger
     * @param sloping whether it may change with {@code x}; else the line is level
     */
    public CensoredLine(double[] x, double[] y, boolean[] atLeast, boolean sloping) {
        this.x = x.clone();
        this.y = y.clone();
        this.atLeast = atLeast.clone();
        this.filled = y.clone();
        this.weight = new double[y.length];
        Arrays.fill(weight, 1);
        for (int round = 0; round < ROUNDS; round++) {
            line(sloping);
            spread = robustSpread();
            weigh();
            fill();
        }
    }

    /** The line at a place. */
    public double at(double place) {
        return level + slope * (place - middle);
    }

    /** By how much it changes for one more of x. */
    public double slope() {
        return slope;
    }

    /** The robust spread of single values about the line. */
    public double spread() {
        return spread;
    }

    /** One standard deviation of the line's error at a place, values taken for independent. */
    public double error(double place) {
        double off = place - middle;
        double sum = Arrays.stream(weight).sum();
        return spread * Math.sqrt(1 / sum + (across > 0 ? off * off / across : 0));
    }

    private void line(boolean sloping) {
        double sum = 0;
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < x.length; i++) {
            sum += weight[i];
            sumX += weight[i] * x[i];
            sumY += weight[i] * filled[i];
        }
        middle = sumX / sum;
        level = sumY / sum;
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += weight[i] * (x[i] - middle) * (x[i] - middle);
            xy += weight[i] * (x[i] - middle) * (filled[i] - level);
        }
        across = sloping ? xx : 0;
        slope = across > 0 ? xy / across : 0;
    }

    private double[] residuals() {
        double[] left = new double[y.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = filled[i] - at(x[i]);
        }
        return left;
    }

    /** Where values are cut off, from those below the line alone: what stands for the others has no scatter of its own. */
    private double robustSpread() {
        double[] left = residuals();
        boolean cut = false;
        for (boolean one : atLeast) {
            cut |= one;
        }
        double[] below = Arrays.stream(left).filter(r -> r < 0).toArray();
        return Medians.spread(cut && below.length > 0 ? below : left, 0);
    }

    private void weigh() {
        double limit = HUBER * spread;
        double[] left = residuals();
        for (int i = 0; i < left.length; i++) {
            double size = Math.abs(left[i]);
            weight[i] = size <= limit || limit == 0 ? 1 : limit / size;
        }
    }

    private void fill() {
        for (int i = 0; i < y.length; i++) {
            if (atLeast[i] && spread > 0) {
                double c = (y[i] - at(x[i])) / spread;
                filled[i] = c > FAR ? y[i] : at(x[i]) + spread * NORMAL.density(c) / NORMAL.cumulativeProbability(-c);
            }
        }
    }
}
