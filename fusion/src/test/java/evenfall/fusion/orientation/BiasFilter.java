package evenfall.fusion.orientation;

/**
 * Kalman filter for the gyroscope's bias: a random walk, seen whole at rest and by its two level parts in motion
 * (Laidig and Seel 2023, section on gyroscope bias estimation).
 */
final class BiasFilter {

    double x;
    double y;
    double z;

    /** Covariance, (rad/s)²: xx, xy, xz, yy, yz, zz. */
    double pxx;

    double pxy;
    double pxz;
    double pyy;
    double pyz;
    double pzz;

    private final double start;
    private final double growth;
    private final double limit;

    BiasFilter(double startVariance, double growth, double limit) {
        this.start = startVariance;
        this.growth = growth;
        this.limit = limit;
        pxx = startVariance;
        pyy = startVariance;
        pzz = startVariance;
    }

    /** Lets one sample's time pass. */
    void grow() {
        pxx += pxx < start ? growth : 0;
        pyy += pyy < start ? growth : 0;
        pzz += pzz < start ? growth : 0;
    }

    /**
     * Takes a measurement of r·bias, r a matrix by rows.
     *
     * @param e0 measured minus expected along the first row, rad/s, and so on
     * @param level variance along the first two rows
     * @param last variance along the third row
     */
    void measure(double[] r, double e0, double e1, double e2, double level, double last) {
        // u = P rᵀ, by columns 0, 1, 2
        double u00 = pxx * r[0] + pxy * r[1] + pxz * r[2];
        double u10 = pxy * r[0] + pyy * r[1] + pyz * r[2];
        double u20 = pxz * r[0] + pyz * r[1] + pzz * r[2];
        double u01 = pxx * r[3] + pxy * r[4] + pxz * r[5];
        double u11 = pxy * r[3] + pyy * r[4] + pyz * r[5];
        double u21 = pxz * r[3] + pyz * r[4] + pzz * r[5];
        double u02 = pxx * r[6] + pxy * r[7] + pxz * r[8];
        double u12 = pxy * r[6] + pyy * r[7] + pyz * r[8];
        double u22 = pxz * r[6] + pyz * r[7] + pzz * r[8];
        // s = r P rᵀ + W, symmetric
        double s00 = r[0] * u00 + r[1] * u10 + r[2] * u20 + level;
        double s01 = r[0] * u01 + r[1] * u11 + r[2] * u21;
        double s02 = r[0] * u02 + r[1] * u12 + r[2] * u22;
        double s11 = r[3] * u01 + r[4] * u11 + r[5] * u21 + level;
        double s12 = r[3] * u02 + r[4] * u12 + r[5] * u22;
        double s22 = r[6] * u02 + r[7] * u12 + r[8] * u22 + last;
        // inverse of s by cofactors
        double c00 = s11 * s22 - s12 * s12;
        double c01 = s02 * s12 - s01 * s22;
        double c02 = s01 * s12 - s02 * s11;
        double f = 1 / (s00 * c00 + s01 * c01 + s02 * c02);
        double i00 = f * c00;
        double i01 = f * c01;
        double i02 = f * c02;
        double i11 = f * (s00 * s22 - s02 * s02);
        double i12 = f * (s01 * s02 - s00 * s12);
        double i22 = f * (s00 * s11 - s01 * s01);
        // gain k = u s⁻¹
        double k00 = u00 * i00 + u01 * i01 + u02 * i02;
        double k01 = u00 * i01 + u01 * i11 + u02 * i12;
        double k02 = u00 * i02 + u01 * i12 + u02 * i22;
        double k10 = u10 * i00 + u11 * i01 + u12 * i02;
        double k11 = u10 * i01 + u11 * i11 + u12 * i12;
        double k12 = u10 * i02 + u11 * i12 + u12 * i22;
        double k20 = u20 * i00 + u21 * i01 + u22 * i02;
        double k21 = u20 * i01 + u21 * i11 + u22 * i12;
        double k22 = u20 * i02 + u21 * i12 + u22 * i22;
        double d0 = clip(e0);
        double d1 = clip(e1);
        double d2 = clip(e2);
        x = clip(x + k00 * d0 + k01 * d1 + k02 * d2);
        y = clip(y + k10 * d0 + k11 * d1 + k12 * d2);
        z = clip(z + k20 * d0 + k21 * d1 + k22 * d2);
        // P - k (P rᵀ)ᵀ
        pxx -= k00 * u00 + k01 * u01 + k02 * u02;
        pxy -= k00 * u10 + k01 * u11 + k02 * u12;
        pxz -= k00 * u20 + k01 * u21 + k02 * u22;
        pyy -= k10 * u10 + k11 * u11 + k12 * u12;
        pyz -= k10 * u20 + k11 * u21 + k12 * u22;
        pzz -= k20 * u20 + k21 * u21 + k22 * u22;
    }

    private double clip(double value) {
        return Math.max(-limit, Math.min(limit, value));
    }
}
