/**
 * Numbers and sentences as people read them. Entry is {@link evenfall.report.words.Words}: each package that speaks keeps
 * its sentences in a resource bundle {@code words.properties} beside it, so that a translation is a file.
 */
@NullMarked
package evenfall.report.words;

import org.jspecify.annotations.NullMarked;
