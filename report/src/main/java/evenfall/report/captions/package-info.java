/** Captions that a film player shows over the coach's own film: {@link evenfall.report.captions.Captions}. */
@NullMarked
package evenfall.report.captions;

import org.jspecify.annotations.NullMarked;
