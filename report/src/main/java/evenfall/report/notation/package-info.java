/**
 * JSON by the streams of the library alone, for packages that know what they read and write: {@link
 * evenfall.report.notation.JsonStreams}.
 */
@NullMarked
package evenfall.report.notation;

import org.jspecify.annotations.NullMarked;
