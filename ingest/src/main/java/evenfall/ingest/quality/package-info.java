/**
 * What is wrong or doubtful about one sensor's samples: time, clipping, axes that stand still, units, gyroscope bias.
 * Entry is {@link evenfall.ingest.quality.QualityCheck}; what needs orientation or both sensors is found elsewhere.
 */
@NullMarked
package evenfall.ingest.quality;

import org.jspecify.annotations.NullMarked;
