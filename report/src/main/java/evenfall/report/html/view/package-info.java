/**
 * What templates place: text that is already rounded, worded and carries its unit. Nothing here is null; what is missing
 * is an empty list or says that it is missing.
 */
@NullMarked
package evenfall.report.html.view;

import org.jspecify.annotations.NullMarked;
