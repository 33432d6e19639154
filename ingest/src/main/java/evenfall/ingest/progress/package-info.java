/** How far long work has come. */
@NullMarked
package evenfall.ingest.progress;

import org.jspecify.annotations.NullMarked;
