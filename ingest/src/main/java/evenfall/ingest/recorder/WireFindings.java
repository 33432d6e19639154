package evenfall.ingest.recorder;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.Arrivals.Mark;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the files of a port say of how it was recorded. */
final class WireFindings {

    private static final Words WORDS = Words.beside(WireFindings.class);

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
                WORDS.say(
                        "refused",
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
                    WORDS.say("gone", times, Digits.fixed(firstS, 1), Digits.fixed(wholeS, 1))));
        }
        if (!arrivals.ended()) {
            findings.add(warning(FindingCode.CUT_SHORT, endS, WORDS.say("cut.short", Digits.fixed(endS, 1))));
        } else if (gone != null) {
            findings.add(warning(FindingCode.CUT_SHORT, lostS, WORDS.say("port.lost", Digits.fixed(lostS, 1))));
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
                WORDS.say("restarted", own.size(), Digits.fixed(atS, 1)),
                place,
                atS));
    }

    private static Finding warning(FindingCode code, double atS, String message) {
        return new Finding(code, Severity.WARNING, message, null, atS);
    }
}
