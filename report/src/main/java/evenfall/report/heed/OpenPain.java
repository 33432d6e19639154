package evenfall.report.heed;

import java.time.LocalDate;

/**
 * Pain that was noted and has not been noted as 0 since.
 *
 * @param region where, as {@link BodyRegion#key} names it
 * @param size from 1 to 10, by the last entry
 * @param since the day it was first noted
 * @param last the day of the last entry
 */
public record OpenPain(String region, int size, LocalDate since, LocalDate last) {}
