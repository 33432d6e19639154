package evenfall.report.command;

import evenfall.fusion.posture.SensorKnowledge;
import evenfall.ingest.parallel.Aside;
import evenfall.report.notation.JsonStreams;

/**
 * Makes ready, while the command line is still being understood, what landings need at their end and Java takes some time over at
 * first: the library's matrices, which read how numbers are written, and its JSON (DEVELOPERS.md, "What starting and compiling
 * cost").
 */
final class HeadStart {

    private HeadStart() {}

    /** Begins, on a thread of its own that nobody waits for. */
    static void begin() {
        Aside.start("head start", () -> SensorKnowledge.NONE.right().getDimension());
        Aside.start("head start of JSON", () -> JsonStreams.text(true, json -> {}));
    }
}
