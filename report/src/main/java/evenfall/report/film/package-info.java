/** Where a film of a session lies and how its clock runs against the recording's. */
@NullMarked
package evenfall.report.film;

import org.jspecify.annotations.NullMarked;
