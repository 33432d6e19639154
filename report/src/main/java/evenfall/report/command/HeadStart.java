package evenfall.report.command;

import evenfall.fusion.posture.SensorKnowledge;
import evenfall.report.form.Judged;
import evenfall.report.form.LimitSettings;
import evenfall.report.notation.JsonStreams;
import java.lang.reflect.Field;
import java.util.List;
import java.util.Objects;

/**
 * Makes ready on a thread of its own, while the command line is still being understood, what landings need later and Java takes some
 * time over at first: classes for the annotations of options, bundles of words, the library's matrices, which read how numbers are
 * written, and its JSON (DEVELOPERS.md, "What starting and compiling cost"). Nobody waits for it.
 */
final class HeadStart extends Thread {

    HeadStart() {
        super("head start");
        setDaemon(true);
    }

    @Override
    public void run() {
        for (Class<?> options : List.of(LandingsCommand.class, RecordingOptions.class)) {
            meet(options.getAnnotations());
            for (Field option : options.getDeclaredFields()) {
                meet(option.getAnnotations());
            }
        }
        meet(LimitSettings.LIST);
        meet(SensorKnowledge.NONE);
        meet(JsonStreams.text(true, json -> {}));
        meet(Judged.values());
    }

    /** Nothing more is asked of a thing than to be there. */
    private static void meet(Object thing) {
        Objects.requireNonNull(thing);
    }
}
