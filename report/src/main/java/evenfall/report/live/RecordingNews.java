package evenfall.report.live;

import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.Heard;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.serial.Link;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What a person should know of a recording that goes on, besides landings: ports, sensors, disk. */
public final class RecordingNews {

    private static final Words WORDS = Words.beside(RecordingNews.class);

    private final WireRecorder recorder;
    private final List<Link> links;
    private final LinkReport ports;
    private final DiskReport disk;
    private final LossReport losses = new LossReport();
    private boolean deafTold;

    /**
     * News of a recording that begins.
     *
     * @param recorder what records
     * @param links the ports it reads, in their order
     * @param disk the disk it writes to
     */
    public RecordingNews(WireRecorder recorder, List<Link> links, DiskReport disk) {
        this.recorder = recorder;
        this.links = List.copyOf(links);
        this.ports = new LinkReport(links.stream().map(Link::state).toList());
        this.disk = disk;
    }

    /** Sentences that are new, by {@code nowS} s after the recording began. */
    public List<String> at(double nowS) {
        List<Heard> heard = recorder.heard();
        Map<Place, Integer> samples = new EnumMap<>(Place.class);
        for (Place place : Place.values()) {
            samples.put(place, recorder.samples(place));
        }
        List<String> news =
                new ArrayList<>(ports.news(nowS, links.stream().map(Link::state).toList(), heard, samples));
        news.addAll(losses.at(nowS, recorder::soFar));
        if (!deafTold && recorder.deafness().isPresent()) {
            deafTold = true;
            news.add(WORDS.say("deaf", recorder.deafness().get()));
        }
        try {
            disk.during(nowS, heard.stream().mapToLong(Heard::bytes).sum()).ifPresent(news::add);
        } catch (IOException e) {
            // A disk that does not say how much room it has may take all the same; whether it does, writing tells.
        }
        return news;
    }
}
