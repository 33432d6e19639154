/**
 * Sentences as people read them. Entry is {@link evenfall.ingest.words.Words}: each package that speaks, of any module,
 * keeps its sentences in a resource bundle {@code words.properties} beside it, so that a translation is a file.
 */
@NullMarked
package evenfall.ingest.words;

import org.jspecify.annotations.NullMarked;
