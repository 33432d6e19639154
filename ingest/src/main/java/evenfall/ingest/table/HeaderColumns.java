package evenfall.ingest.table;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which column of a header is which. */
final class HeaderColumns {

    private static final Words WORDS = Words.beside(HeaderColumns.class);

    private final String file;
    private final List<ColumnName> names;

    HeaderColumns(String file, List<String> cells) {
        this.file = file;
        this.names = cells.stream().map(ColumnName::parse).toList();
    }

    /** The columns by name, in order. */
    List<ColumnName> names() {
        return names;
    }

    /** Whether x, y and z of a quantity are there, with or without units. */
    boolean has(Quantity quantity) {
        return !complete(quantity).isEmpty();
    }

    /** How many of the columns mean something here. */
    long known() {
        return names.stream().filter(name -> name.quantity() != Quantity.OTHER).count();
    }

    /** Refuses a header that names one of our columns twice. */
    void refuseTwins() {
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            ColumnName name = names.get(i);
            if (name.quantity() != Quantity.OTHER) {
                Integer before = seen.put(name.text().toLowerCase(Locale.ROOT), i);
                if (before != null) {
                    throw new UnusableInputException(WORDS.say(
                            "header.twice", file, name.text(), String.valueOf(before + 1), String.valueOf(i + 1)));
                }
            }
        }
    }

    /**
     * The three columns of a sensor.
     *
     * @throws UnusableInputException if there are none, or several sets, or no unit
     */
    List<Integer> sensor(Quantity quantity) {
        Map<String, Integer[]> sets = complete(quantity);
        if (sets.isEmpty() && quantity == Quantity.ACCELERATION && withoutGravity()) {
            throw new UnusableInputException(WORDS.say("header.gravity", file, shown()));
        }
        if (sets.isEmpty()) {
            throw new UnusableInputException(WORDS.say(
                    "header.none",
                    file,
                    quantity.words(),
                    shown(),
                    (quantity == Quantity.ACCELERATION ? "ax_g,ay_g,az_g" : "gx_dps,gy_dps,gz_dps")));
        }
        refuseDoubles(quantity);
        Map<String, Integer[]> withUnit = new LinkedHashMap<>();
        sets.forEach((set, columns) -> {
            if (unit(columns) != null) {
                withUnit.put(set, columns);
            }
        });
        if (withUnit.isEmpty()) {
            Integer[] columns = sets.values().iterator().next();
            ColumnName first = names.get(columns[0]);
            throw new UnusableInputException(WORDS.say(
                    quantity == Quantity.ACCELERATION ? "header.unit.accelerometer" : "header.unit.gyroscope",
                    file,
                    first.text()));
        }
        return List.of(plainest(withUnit, quantity));
    }

    private boolean withoutGravity() {
        return names.stream()
                .map(name -> name.text().toLowerCase(Locale.ROOT))
                .anyMatch(text -> text.contains("acc")
                        && (text.contains("lin") || text.contains("user") || text.contains("free")));
    }

    /** The unit all three columns share, or null if they have none. */
    @Nullable Unit unit(Integer[] columns) {
        Unit unit = names.get(columns[0]).unit();
        for (Integer column : columns) {
            Unit other = names.get(column).unit();
            if (unit == null) {
                unit = other;
            } else if (other != null && other != unit) {
                throw new UnusableInputException(WORDS.say(
                        "header.units",
                        file,
                        names.get(columns[0]).text(),
                        names.get(column).text()));
            }
        }
        return unit;
    }

    /** All columns that may tell time, in order. */
    List<Integer> times() {
        List<Integer> times = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).quantity() == Quantity.TIME) {
                times.add(i);
            }
        }
        return times;
    }

    /** The column of a name, not minding case. */
    Optional<Integer> find(String text) {
        Integer found = null;
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).text().equalsIgnoreCase(text)) {
                if (found != null) {
                    throw new UnusableInputException(WORDS.say(
                            "header.twice.layout", file, text, String.valueOf(found + 1), String.valueOf(i + 1)));
                }
                found = i;
            }
        }
        return Optional.ofNullable(found);
    }

    /** The names, for a sentence. */
    String shown() {
        String all = String.join(", ", names.stream().map(ColumnName::text).toList());
        return all.length() > 120 ? all.substring(0, 120) + "..." : all;
    }

    private Integer[] plainest(Map<String, Integer[]> sets, Quantity quantity) {
        for (String set : List.of("", "1")) {
            Integer[] columns = sets.get(set);
            if (columns != null) {
                return columns;
            }
        }
        if (sets.size() > 1) {
            List<String> firsts = sets.values().stream()
                    .map(columns -> "\"" + names.get(columns[0]).text() + "\"")
                    .toList();
            throw new UnusableInputException(
                    WORDS.say("header.several", file, quantity.words(), String.join(", ", firsts)));
        }
        return sets.values().iterator().next();
    }

    private Map<String, Integer[]> complete(Quantity quantity) {
        Map<String, Integer[]> sets = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            ColumnName name = names.get(i);
            if (name.quantity() == quantity) {
                Integer[] columns = sets.computeIfAbsent(name.set(), key -> new Integer[3]);
                if (columns[name.axis()] == null) {
                    columns[name.axis()] = i;
                }
            }
        }
        sets.values().removeIf(columns -> columns[0] == null || columns[1] == null || columns[2] == null);
        return sets;
    }

    /** Refuses two columns of different names that would be the same axis of the same sensor. */
    private void refuseDoubles(Quantity quantity) {
        Map<String, ColumnName> seen = new LinkedHashMap<>();
        for (ColumnName name : names) {
            if (name.quantity() == quantity) {
                ColumnName before = seen.put(name.axis() + name.set(), name);
                if (before != null) {
                    throw new UnusableInputException(WORDS.say(
                            "header.double",
                            file,
                            quantity.words(),
                            String.valueOf("xyz".charAt(name.axis())),
                            before.text(),
                            name.text()));
                }
            }
        }
    }
}
