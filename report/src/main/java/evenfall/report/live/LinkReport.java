package evenfall.report.live;

import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.Heard;
import evenfall.ingest.serial.LinkState;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a person should know of ports and sensors while a recording goes on: each thing in one sentence, once, within three
 * seconds. Not safe for use from several threads.
 */
public final class LinkReport {

    private static final Words WORDS = Words.beside(LinkReport.class);

    /** Nobody speaks for so long without a reason, s. */
    static final double SILENCE_S = 2.5;

    private final List<PortTale> ports = new ArrayList<>();
    private final Map<Place, SensorTale> sensors = new EnumMap<>(Place.class);

    /**
     * A report on a recording that begins.
     *
     * @param links how its ports stand: what was said of them before is not said again
     */
    public LinkReport(List<LinkState> links) {
        links.forEach(link -> ports.add(new PortTale(link)));
        for (Place place : Place.values()) {
            sensors.put(place, new SensorTale(place));
        }
    }

    /**
     * What is new.
     *
     * @param nowS time since the recording began, s
     * @param links how its ports stand, always in the same order
     * @param heard what came from them, in that order
     * @param samples how many samples came from each place
     */
    public List<String> news(double nowS, List<LinkState> links, List<Heard> heard, Map<Place, Integer> samples) {
        List<String> news = new ArrayList<>();
        boolean quiet = false;
        for (int i = 0; i < links.size(); i++) {
            ports.get(i).tell(nowS, links.get(i), heard.get(i), news);
            quiet |= ports.get(i).quiet();
        }
        for (SensorTale sensor : sensors.values()) {
            sensor.heard(nowS, samples.getOrDefault(sensor.place, 0));
        }
        for (SensorTale sensor : sensors.values()) {
            SensorTale other = sensors.get(sensor.place == Place.PELVIS ? Place.UPPER_BACK : Place.PELVIS);
            if (other != null) {
                sensor.tell(nowS, other, quiet, news);
            }
        }
        return news;
    }

    /** What was said of one sensor. */
    private static final class SensorTale {

        private final Place place;
        private int samples;
        private double firstS;
        private double lastS;
        private boolean missed;

        SensorTale(Place place) {
            this.place = place;
        }

        void heard(double nowS, int count) {
            if (count > samples) {
                firstS = samples == 0 ? nowS : firstS;
                lastS = nowS;
                samples = count;
            }
        }

        void tell(double nowS, SensorTale other, boolean portQuiet, List<String> news) {
            boolean speaks = samples > 0 && nowS - lastS < SILENCE_S;
            boolean otherSpeaks = other.samples > 0 && nowS - other.lastS < SILENCE_S;
            if (missed && speaks) {
                missed = false;
                news.add(WORDS.say("sensor.speaks", name(place)));
            } else if (!missed && !speaks && otherSpeaks && !portQuiet && nowS - other.firstS >= SILENCE_S) {
                missed = true;
                news.add(samples > 0 ? fellSilent() : neverSpoke());
            }
        }

        private String fellSilent() {
            return WORDS.say("sensor.silent", name(place));
        }

        private String neverSpoke() {
            return WORDS.say(place == Place.PELVIS ? "sensor.pelvis.missing" : "sensor.upper-back.missing");
        }

        private static String name(Place place) {
            return WORDS.say(place == Place.PELVIS ? "sensor.pelvis" : "sensor.upper-back");
        }
    }
}
