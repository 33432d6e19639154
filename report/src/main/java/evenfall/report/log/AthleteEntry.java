package evenfall.report.log;

import org.jspecify.annotations.Nullable;

/**
 * Who an athlete is, as it was known at a moment; the last entry holds.
 *
 * @param writtenAt when it was written, ISO 8601 with offset
 * @param name what people call the athlete, or null
 * @param born year of birth, or null
 * @param consent the day consent was given, {@code YYYY-MM-DD}, or null where none is known
 * @param guardian who consented for a minor, or null
 * @param clinicianLimit what a licensed practitioner forbids, in words, or null; stands above all the program says
 */
public record AthleteEntry(
        String writtenAt,
        @Nullable String name,
        @Nullable Integer born,
        @Nullable String consent,
        @Nullable String guardian,
        @Nullable String clinicianLimit) {}
