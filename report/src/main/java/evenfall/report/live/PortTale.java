package evenfall.report.live;

import evenfall.ingest.recorder.Heard;
import evenfall.ingest.serial.LinkState;
import evenfall.ingest.serial.LinkState.Search;
import evenfall.ingest.serial.SerialPorts;
import evenfall.ingest.words.Words;
import java.util.List;
import java.util.stream.Collectors;

/** What was said of one port. */
final class PortTale {

    private static final Words WORDS = Words.beside(PortTale.class);

    private boolean there;
    private int losses;
    private String trouble;
    private boolean speedTold;
    private boolean silenceTold;
    private boolean rubbishTold;
    private long bytes;
    private double bytesS;
    private long good;
    private double goodS;

    /** Of a port that stands so when the recording begins. */
    PortTale(LinkState begun) {
        there = begun.there();
        losses = begun.losses();
        trouble = begun.trouble();
        bytes = begun.bytes();
        speedTold = begun.search() == Search.FOUND;
    }

    /** Whether nothing is to be expected from the port: it is gone, or silent. */
    boolean quiet() {
        return !there || silenceTold || rubbishTold;
    }

    void tell(double nowS, LinkState link, Heard heard, List<String> news) {
        if (link.losses() > losses) {
            losses = link.losses();
            there = false;
            news.add(WORDS.say("port.gone", link.name()));
        }
        if (!link.trouble().isEmpty() && !link.trouble().equals(trouble)) {
            news.add(link.trouble());
        }
        trouble = link.trouble();
        if (!there && link.there()) {
            there = true;
            bytesS = nowS;
            goodS = nowS;
            silenceTold = false;
            rubbishTold = false;
            news.add(back(link));
        }
        if (!speedTold && link.search() == Search.FOUND) {
            speedTold = true;
            news.add(WORDS.say("port.speed", link.name(), String.valueOf(link.speed())));
        }
        silence(nowS, link, news);
        rubbish(nowS, link, heard.counts().good(), news);
    }

    private void silence(double nowS, LinkState link, List<String> news) {
        if (link.bytes() > bytes) {
            bytes = link.bytes();
            bytesS = nowS;
            if (silenceTold) {
                silenceTold = false;
                news.add(WORDS.say("port.something", link.name()));
            }
        } else if (there && !silenceTold && nowS - bytesS >= LinkReport.SILENCE_S) {
            silenceTold = true;
            news.add(WORDS.say("port.nothing", link.name()));
        }
    }

    private void rubbish(double nowS, LinkState link, long count, List<String> news) {
        boolean speaks = nowS - bytesS < LinkReport.SILENCE_S;
        if (count > good || !speaks || !there || bytes == 0) {
            if (count > good && rubbishTold) {
                rubbishTold = false;
                news.add(WORDS.say("port.readable", link.name()));
            }
            good = count;
            goodS = nowS;
        } else if (!rubbishTold && (link.search() == Search.IN_VAIN || late(nowS, link))) {
            rubbishTold = true;
            news.add(unreadable(link));
        }
    }

    /** A search has its own time. */
    private boolean late(double nowS, LinkState link) {
        return nowS - goodS >= LinkReport.SILENCE_S && link.search() != Search.GOING_ON;
    }

    private static String unreadable(LinkState link) {

        return switch (link.search()) {
            case SAID -> WORDS.say("port.unreadable.said", link.name(), String.valueOf(link.speed()));
            case IN_VAIN ->
                WORDS.say(
                        "port.unreadable.vain",
                        link.name(),
                        SerialPorts.USUAL_SPEEDS.stream().map(String::valueOf).collect(Collectors.joining(", ")));
            default -> WORDS.say("port.unreadable", link.name());
        };
    }

    private static String back(LinkState link) {
        return link.path().equals(link.name())
                ? WORDS.say("port.back", link.name())
                : WORDS.say("port.back.elsewhere", link.name(), link.path());
    }
}
