package evenfall.fusion.rotation;

import java.util.SplittableRandom;

/** Rotations and directions in general position, for property tests. */
public final class Rotations {

    private Rotations() {}

    /** Even over all rotations: four normal numbers made to length 1. */
    public static Quaternion random(SplittableRandom random) {
        return new Quaternion(normal(random), normal(random), normal(random), normal(random)).normalised();
    }

    /** Even over all directions, of length 0.1 to 10. */
    public static Vector3 randomVector(SplittableRandom random) {
        return new Vector3(normal(random), normal(random), normal(random))
                .normalised()
                .times(random.nextDouble(0.1, 10));
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
