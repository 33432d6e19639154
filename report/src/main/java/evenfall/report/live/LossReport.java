package evenfall.report.live;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a person should know of samples that are sent and do not come, sensor by sensor. Stamps tell it, for a text line bears no
 * number.
 */
final class LossReport {

    private static final Words WORDS = Words.beside(LossReport.class);

    /** Over so long lost samples are counted, s. */
    private static final double SPAN_S = 10;
    /** Who says nothing for so long is silent, of which something else is said, s. */
    private static final double SILENCE_S = 0.5;
    /** From this share on it is said: singly lost, 5 in 100 double what some measures err by. */
    private static final double MUCH = 0.05;
    /** Below this share it is well again. */
    private static final double WELL = 0.01;

    private final Map<Place, Tale> tales = new EnumMap<>(Place.class);
    private double nextS = SPAN_S;

    /**
     * Sentences that are new.
     *
     * @param nowS time since the recording began, s
     * @param soFar what came until now; asked for only when it is time to look
     */
    List<String> at(double nowS, Supplier<Optional<Recording>> soFar) {
        List<String> news = new ArrayList<>();
        Optional<Recording> recording = nowS < nextS ? Optional.empty() : soFar.get();
        if (recording.isPresent()) {
            nextS = nowS + SPAN_S;
            SensorRecording upperBack = recording.get().upperBack();
            tale(Place.PELVIS).tell(recording.get().pelvis().stream(), news);
            if (upperBack != null) {
                tale(Place.UPPER_BACK).tell(upperBack.stream(), news);
            }
        }
        return news;
    }

    private Tale tale(Place place) {
        return tales.computeIfAbsent(place, Tale::new);
    }

    /** What was said of one sensor. */
    private static final class Tale {

        private final Place place;
        private int seen;
        private boolean told;

        Tale(Place place) {
            this.place = place;
        }

        void tell(SensorStream stream, List<String> news) {
            int from = seen;
            seen = stream.size();
            double heardS = 0;
            for (int i = Math.max(1, from); i < seen; i++) {
                double step = stream.time(i) - stream.time(i - 1);
                heardS += step < SILENCE_S ? step : 1 / stream.rateHz();
            }
            double sent = heardS * stream.rateHz();
            double share = sent > 0 ? Math.max(0, 1 - (seen - Math.max(1, from)) / sent) : 0;
            if (!told && share >= MUCH) {
                told = true;
                news.add(WORDS.say("sensor.loses", place.words(), Math.round(share * 100)));
            } else if (told && sent > 0 && share < WELL) {
                told = false;
                news.add(WORDS.say("sensor.loses.no.more", place.words()));
            }
        }
    }
}
