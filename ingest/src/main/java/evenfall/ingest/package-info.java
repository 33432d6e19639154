/**
 * From bytes and files to clean sample streams: recordings, table files and their layouts, the serial wire, the
 * recorder, and findings on data quality. Knows no other module.
 */
@NullMarked
package evenfall.ingest;

import org.jspecify.annotations.NullMarked;
