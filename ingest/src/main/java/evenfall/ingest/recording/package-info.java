/**
 * Samples as the rest of the house sees them: one {@link evenfall.ingest.recording.SensorStream} per sensor in columns
 * of primitives, and a {@link evenfall.ingest.recording.Recording} that holds one stream per place on the body.
 *
 * <p>Everything here is in SI units (s, m/s², rad/s) in the sensor's own axes and on the sensor's own clock. Streams are
 * built once by a {@link evenfall.ingest.recording.SensorStream.Builder} and never change afterwards.
 */
@NullMarked
package evenfall.ingest.recording;

import org.jspecify.annotations.NullMarked;
