package evenfall.report.rehearsal;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.wire.LineWriter;

/** A sensor that speaks the text form. */
final class TextVoice implements Voice {

    private final Place place;
    private final SensorStream stream;

    TextVoice(Place place, SensorStream stream) {
        this.place = place;
        this.stream = stream;
    }

    @Override
    public byte[] sample(int i) {
        // The wire knows no time before zero.
        double start = Math.max(0, stream.clockStartS());
        return LineWriter.line(
                place,
                start + stream.time(i),
                stream.ax(i),
                stream.ay(i),
                stream.az(i),
                stream.gx(i),
                stream.gy(i),
                stream.gz(i));
    }

    @Override
    public byte[] hello(double timeS) {
        return FaultyLine.NOTHING;
    }
}
