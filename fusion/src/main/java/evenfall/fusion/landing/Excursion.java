package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * One angle through a landing, deg, with the contract's sign.
 *
 * @param contact at contact
 * @param peak at the impact peak
 * @param lowest at the lowest point, or null where there is none
 * @param max the angle within 0.6 s of contact that lies farthest from the one at contact
 * @param change {@code max - contact}
 * @param sigma one standard deviation of {@code change}'s error
 */
public record Excursion(
        double contact, double peak, @Nullable Double lowest, double max, double change, double sigma) {}
