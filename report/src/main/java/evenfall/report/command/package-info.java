/**
 * The command line. Entry is {@link evenfall.report.command.Main}; exit codes and standard streams live here and nowhere
 * else.
 */
@NullMarked
package evenfall.report.command;

import org.jspecify.annotations.NullMarked;
