package evenfall.report.round;

import java.util.concurrent.Executor;

/**
 * Where work is done.
 *
 * @param front the one thread in which everything is shown and pressed; takes work without waiting for it
 * @param back where what takes long is done, one after another
 */
public record Threads(Executor front, Executor back) {}
