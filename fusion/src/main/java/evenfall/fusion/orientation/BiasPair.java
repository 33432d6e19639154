package evenfall.fusion.orientation;

/** Weighs the bias found forward with the one found backward by their covariances (Laidig and Seel 2023, offline). */
final class BiasPair {

    private BiasPair() {}

    /**
     * Puts (P₁⁻¹ + P₂⁻¹)⁻¹ (P₁⁻¹ b₁ - P₂⁻¹ b₂) = b₁ - P₁ (P₁ + P₂)⁻¹ (b₁ + b₂) in place of b₁.
     *
     * @param forward columns of bias (3) and covariance (xx, xy, xz, yy, yz, zz), changed at {@code k}
     * @param backward bias found with the turn rate reversed, so of the other sign
     */
    static void weigh(float[][] forward, int k, BiasFilter backward) {
        double pxx = forward[3][k];
        double pxy = forward[4][k];
        double pxz = forward[5][k];
        double pyy = forward[6][k];
        double pyz = forward[7][k];
        double pzz = forward[8][k];
        double sxx = pxx + backward.pxx;
        double sxy = pxy + backward.pxy;
        double sxz = pxz + backward.pxz;
        double syy = pyy + backward.pyy;
        double syz = pyz + backward.pyz;
        double szz = pzz + backward.pzz;
        double cxx = syy * szz - syz * syz;
        double cxy = sxz * syz - sxy * szz;
        double cxz = sxy * syz - sxz * syy;
        double f = 1 / (sxx * cxx + sxy * cxy + sxz * cxz);
        double dx = forward[0][k] + backward.x;
        double dy = forward[1][k] + backward.y;
        double dz = forward[2][k] + backward.z;
        double ux = f * (cxx * dx + cxy * dy + cxz * dz);
        double uy = f * (cxy * dx + (sxx * szz - sxz * sxz) * dy + (sxy * sxz - sxx * syz) * dz);
        double uz = f * (cxz * dx + (sxy * sxz - sxx * syz) * dy + (sxx * syy - sxy * sxy) * dz);
        forward[0][k] -= (float) (pxx * ux + pxy * uy + pxz * uz);
        forward[1][k] -= (float) (pxy * ux + pyy * uy + pyz * uz);
        forward[2][k] -= (float) (pxz * ux + pyz * uy + pzz * uz);
    }
}
