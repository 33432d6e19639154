/** Work on two sensors at once; enter at {@link evenfall.ingest.parallel.Aside}. */
@NullMarked
package evenfall.ingest.parallel;

import org.jspecify.annotations.NullMarked;
