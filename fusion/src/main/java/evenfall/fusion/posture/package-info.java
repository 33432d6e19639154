/**
 * How one sensor moves between quiet stances: orientation, speed and place, with the errors that the stances reveal
 * taken out and the rest of them stated. Entry: {@link evenfall.fusion.posture.MotionSmoother}.
 */
@NullMarked
package evenfall.fusion.posture;

import org.jspecify.annotations.NullMarked;
