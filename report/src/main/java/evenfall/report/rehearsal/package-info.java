/**
 * Rehearsal without sensors: a recording played onto a port as its sensors would send it, in either form of the wire, at
 * any speed, with faults on request. {@link evenfall.report.rehearsal.Playback} makes the bytes,
 * {@link evenfall.report.rehearsal.Player} sends them at their time.
 */
@NullMarked
package evenfall.report.rehearsal;

import org.jspecify.annotations.NullMarked;
