package evenfall.ingest.recorder;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.Arrivals.Mark;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.wire.WireCounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the files of a port say of how it was recorded. */
final class WireFindings {

    private WireFindings() {}

    /** Lines or frames that could not be used. */
    static List<Finding> refused(String file, WireCounts counts) {
        if (counts.bad() == 0) {
            return List.of();
        }
        double share = (double) counts.bad() / (counts.bad() + counts.good());
        return List.of(new Finding(
                FindingCode.REFUSED_ROWS,
                share > 0.01 ? Severity.WARNING : Severity.NOTE,
                String.format(
                        Locale.ROOT,
                        "%d of %d lines or frames in %s were left out (%d damaged on the way, %d no sample at all): look at the cable"
                                + " and the speed of the port.",
                        counts.bad(),
                        counts.bad() + counts.good(),
                        file,
                        counts.damaged(),
                        counts.unreadable()),
                null,
                null));
    }

    /**
     * How the port went away, came back and ended.
     *
     * @param losses the pelvis sensor's time at each loss, s from its first sample; NaN where it is not known
     * @param endS duration of the recording, s
     */
    static List<Finding> course(Arrivals arrivals, List<Double> losses, double endS) {
        List<Finding> findings = new ArrayList<>();
        List<Mark> marks = arrivals.marks();
        double startS = marks.isEmpty() ? 0 : marks.get(0).atS();
        int number = 0;
        int times = 0;
        double firstS = 0;
        double wholeS = 0;
        double lostS = 0;
        Mark gone = null;
        for (Mark mark : marks) {
            if (mark.remark() == Remark.GONE) {
                gone = mark;
                double known = number < losses.size() ? losses.get(number) : Double.NaN;
                lostS = Double.isNaN(known) ? mark.atS() - startS : known;
                number++;
            } else if (mark.remark() == Remark.BACK && gone != null) {
                firstS = times++ == 0 ? lostS : firstS;
                wholeS += mark.atS() - gone.atS();
                gone = null;
            }
        }
        if (times > 0) {
            findings.add(warning(
                    FindingCode.GAP,
                    firstS,
                    "The port was gone %s, first at about %.1f s, for %.1f s in all: look at the cable; what the sensors"
                            + " sent meanwhile is not here.",
                    times == 1 ? "once" : times + " times",
                    firstS,
                    wholeS));
        }
        if (!arrivals.ended()) {
            findings.add(warning(
                    FindingCode.CUT_SHORT,
                    endS,
                    "The recording was cut short at about %.1f s (the program or the machine stopped, or the disk was full):"
                            + " all that had come is here, the end of the session is not.",
                    endS));
        } else if (gone != null) {
            findings.add(warning(
                    FindingCode.CUT_SHORT,
                    lostS,
                    "The port was lost at about %.1f s and did not come back: look at the cable; what came after is not"
                            + " here.",
                    lostS));
        }
        return findings;
    }

    /** The sensor at {@code place} started anew so often, told in one finding. */
    static List<Finding> newStarts(List<SensorClocks.NewStart> own, Place place, @Nullable SensorRecording sensor) {
        if (own.isEmpty() || sensor == null) {
            return List.of();
        }
        double atS = own.get(0).clockS() - sensor.stream().clockStartS();
        return List.of(new Finding(
                FindingCode.BACKWARD_TIME,
                Severity.WARNING,
                String.format(
                        Locale.ROOT,
                        "The sensor started anew %s, first at %.1f s: from there on its time is told by when its data"
                                + " arrived, to about 0.2 s; look at its battery and cable.",
                        own.size() == 1 ? "once" : own.size() + " times",
                        atS),
                place,
                atS));
    }

    private static Finding warning(FindingCode code, double atS, String message, Object... values) {
        return new Finding(code, Severity.WARNING, String.format(Locale.ROOT, message, values), null, atS);
    }
}
