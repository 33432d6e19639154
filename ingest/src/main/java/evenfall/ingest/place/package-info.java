/** The places on the body that carry a sensor. */
@NullMarked
package evenfall.ingest.place;

import org.jspecify.annotations.NullMarked;
