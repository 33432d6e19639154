/** Numbers and days as people read them; the sentences around them come from {@link evenfall.ingest.words.Words}. */
@NullMarked
package evenfall.report.words;

import org.jspecify.annotations.NullMarked;
