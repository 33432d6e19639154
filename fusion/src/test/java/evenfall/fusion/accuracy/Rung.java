package evenfall.fusion.accuracy;

import evenfall.fixtures.sensor.SensorModel;
import evenfall.ingest.place.Place;
import java.util.List;

/**
 * One step of the ladder: how sensors that are perfect otherwise are spoilt.
 *
 * @param fault what is changed
 * @param level how far, in words
 * @param opening how the session is opened
 * @param ways each records the motions once; more than one where a fault has no size but kinds
 */
record Rung(String fault, String level, LadderMotion.Opening opening, List<Way> ways) {

    /** Spoils a sensor. */
    interface Way {

        /** The sensor worn there instead of a perfect one, for a motion. */
        SensorModel spoil(SensorModel perfect, Place place, LadderMotion motion);
    }

    Rung {
        ways = List.copyOf(ways);
    }

    static Rung of(String fault, String level, Way way) {
        return new Rung(fault, level, LadderMotion.Opening.FULL, List.of(way));
    }

    /** Its name in the table of bounds. */
    String name() {
        return fault + " " + level;
    }
}
