package evenfall.report.live;

import evenfall.ingest.recorder.Heard;
import evenfall.ingest.serial.LinkState;
import evenfall.ingest.serial.LinkState.Search;
import evenfall.ingest.serial.SerialPorts;
import java.util.List;
import java.util.stream.Collectors;

/** What was said of one port. */
final class PortTale {

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
            news.add("The port " + link.name()
                    + " is gone; look at the cable. What came until now is kept, and the port is"
                    + " tried again by itself.");
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
            news.add("The port " + link.name() + " is back" + elsewhere(link) + "; the recording goes on.");
        }
        if (!speedTold && link.search() == Search.FOUND) {
            speedTold = true;
            news.add(link.name() + " speaks at " + link.speed() + " bits a second.");
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
                news.add("Something comes from " + link.name() + " now.");
            }
        } else if (there && !silenceTold && nowS - bytesS >= LinkReport.SILENCE_S) {
            silenceTold = true;
            news.add("Nothing comes from " + link.name()
                    + "; look whether the sensors are switched on and within reach.");
        }
    }

    private void rubbish(double nowS, LinkState link, long count, List<String> news) {
        boolean speaks = nowS - bytesS < LinkReport.SILENCE_S;
        if (count > good || !speaks || !there || bytes == 0) {
            if (count > good && rubbishTold) {
                rubbishTold = false;
                news.add("What comes from " + link.name() + " can be read now.");
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
        String what = "What comes from " + link.name() + " cannot be read";
        return switch (link.search()) {
            case SAID ->
                what + " at " + link.speed()
                        + " bits a second; leave --baud out to have the speed looked for, or look at the cable.";
            case IN_VAIN ->
                what + " at any usual speed ("
                        + SerialPorts.USUAL_SPEEDS.stream().map(String::valueOf).collect(Collectors.joining(", "))
                        + "); look whether it is the port of the sensors, or give their speed with --baud.";
            default -> what + "; look whether it is the port of the sensors, and at the cable.";
        };
    }

    private static String elsewhere(LinkState link) {
        return link.path().equals(link.name()) ? "" : " as " + link.path();
    }
}
