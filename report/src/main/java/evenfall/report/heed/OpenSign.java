package evenfall.report.heed;

import java.time.LocalDate;

/**
 * A warning sign that has not been said to be over.
 *
 * @param sign such as {@code swelling}
 * @param since the day it was last noted
 */
public record OpenSign(String sign, LocalDate since) {}
