/**
 * A session as a folder after the open standard for motion recordings (Motion-BIDS, Jeung et al. 2024, Scientific Data
 * 11:716): samples as they were read, events with their measures, and what is needed to compute them again. Enter at
 * {@link evenfall.report.motionbids.MotionFolder}.
 */
@NullMarked
package evenfall.report.motionbids;

import org.jspecify.annotations.NullMarked;
