package evenfall.report.window;

import evenfall.report.round.BodyPart;
import evenfall.report.round.Day;
import evenfall.report.round.Debt;
import evenfall.report.round.Feeling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Who still owes an answer: effort half an hour after, soreness the day after. */
final class OwedSheet implements Sheet {

    private static final int[] MINUTES = {15, 30, 45, 60, 90, 120};

    private final Supplier<Day> day;
    private final JPanel panel =
            new JPanel(new MigLayout("fill, insets 12 20 12 20, gap 10", "[grow 2][grow 3]", "[][grow][]"));
    private final JLabel title = Sheet.title("owed.title");
    private final JPanel list = new JPanel(new MigLayout("insets 0, gap 6, wrap 1, fillx", "[grow]"));
    private final JPanel answer = new JPanel(new MigLayout("insets 0, gap 6, wrap 1, fillx", "[grow]"));
    private final JPanel keys = new JPanel(new MigLayout("insets 6 20 6 20"));
    private final BodyDrawing body;
    private final Map<String, Integer> soreness = new LinkedHashMap<>();
    private List<Debt> shown = List.of();
    private @Nullable Debt asked;
    private @Nullable Integer minutes;
    private @Nullable String part;

    OwedSheet(Supplier<Day> day, Skin skin) {
        this.day = day;
        body = new BodyDrawing(skin, "owed.body", code -> {
            part = code;
            fill();
        });
        panel.add(title, "span, wrap");
        panel.add(list, "grow, top");
        panel.add(answer, "grow, top, wrap");
        keys.add(Keys.press("owed.done", () -> day.get().round().next()).large());
    }

    @Override
    public JComponent bar() {
        return keys;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Day now) {
        List<Debt> debts = now.round().asking().debts();
        Sheet.set(title, Keys.WORDS.say("owed.title.text", debts.size()));
        if (!debts.equals(shown) || (asked != null && !debts.contains(asked))) {
            shown = debts;
            asked = asked != null && debts.contains(asked) ? asked : debts.isEmpty() ? null : debts.get(0);
            begin();
        }
    }

    private void begin() {
        minutes = null;
        part = null;
        soreness.clear();
        list.removeAll();
        for (int i = 0; i < shown.size(); i++) {
            Debt debt = shown.get(i);
            String kind = debt.kind().name().toLowerCase(Locale.ROOT);
            Hold hold = new Hold(
                    Keys.WORDS.say(
                            "owed." + kind,
                            debt.person().name(),
                            debt.training().toString()),
                    () -> {
                        asked = debt;
                        begin();
                    });
            hold.setHorizontalAlignment(javax.swing.SwingConstants.LEFT);
            hold.setSelected(debt.equals(asked));
            Keys.named(
                    hold,
                    "owed.debt." + (i + 1),
                    Keys.WORDS.say("owed.debt.about", debt.person().name()),
                    i < 9 ? "ctrl " + (i + 1) : "");
            list.add(hold, "growx");
        }
        fill();
        list.revalidate();
        list.repaint();
    }

    private void fill() {
        answer.removeAll();
        Debt debt = asked;
        if (debt != null && debt.kind() == Debt.Kind.EFFORT) {
            effort(debt);
        } else if (debt != null) {
            soreness(debt);
        }
        answer.revalidate();
        answer.repaint();
    }

    private void effort(Debt debt) {
        answer.add(question(Keys.WORDS.say("owed.minutes.ask", debt.person().name())), "growx, wmin 100");
        JPanel lengths = new JPanel(new MigLayout("insets 0, gap 4, fillx", "[grow, sg]".repeat(MINUTES.length)));
        for (int i = 0; i < MINUTES.length; i++) {
            int length = MINUTES[i];
            Hold hold = new Hold(String.valueOf(length), () -> {
                minutes = length;
                fill();
            });
            hold.setSelected(minutes != null && minutes == length);
            Keys.named(hold, "owed.minutes." + length, Keys.WORDS.say("owed.minutes.about", length), "F" + (i + 1));
            lengths.add(hold, "growx");
        }
        answer.add(lengths, "growx");
        answer.add(question(Keys.WORDS.say("owed.effort.ask")), "growx, wmin 100");
        answer.add(
                scale("owed.effort.", minutes != null, number -> {
                    Integer length = minutes;
                    if (length != null) {
                        day.get().round().asking().effort(debt, number, length);
                    }
                }),
                "growx");
    }

    private void soreness(Debt debt) {
        answer.add(question(Keys.WORDS.say("owed.soreness.ask", debt.person().name())), "growx, wmin 100");
        answer.add(Keys.press("owed.nothing", () -> day.get().round().asking().soreness(debt, Map.of())), "growx");
        JPanel grid = new JPanel(new MigLayout("insets 0, gap 4, fillx, wrap 2", "[grow, sg]".repeat(2)));
        List<BodyPart> parts = new ArrayList<>();
        for (String name : BodyPart.PAIRED) {
            parts.add(BodyPart.left(name));
            parts.add(BodyPart.right(name));
        }
        parts.addAll(BodyPart.SINGLE);
        for (int i = 0; i < parts.size(); i++) {
            String code = parts.get(i).code();
            Integer size = soreness.get(code);
            String name = Keys.WORDS.say("part." + code.replace(' ', '.'));
            Hold hold = new Hold(size == null ? name : name + " " + size, () -> {
                part = code;
                fill();
            });
            hold.putClientProperty("FlatLaf.style", "margin: 3,6,3,6");
            hold.setSelected(code.equals(part));
            Keys.named(
                    hold,
                    "owed.part." + code.replace(' ', '.'),
                    Keys.WORDS.say("feel.part.about", code),
                    "alt " + (char) ('A' + i));
            grid.add(hold, "growx");
        }
        JPanel where = new JPanel(new MigLayout("insets 0, gap 8, fill", "[grow][grow 2]"));
        where.add(grid, "growx, top");
        body.show(part, soreness, Map.of());
        where.add(body, "grow, wmin 0");
        answer.add(where, "growx");
        answer.add(
                scale("owed.sore.", part != null, number -> {
                    String code = part;
                    if (code != null) {
                        if (number == 0) {
                            soreness.remove(code);
                        } else {
                            soreness.put(code, number);
                        }
                        fill();
                    }
                }),
                "growx");
        Press store = Keys.press("owed.store", () -> day.get().round().asking().soreness(debt, Map.copyOf(soreness)));
        store.setEnabled(!soreness.isEmpty());
        answer.add(store, "growx");
    }

    private static JTextArea question(String text) {
        JTextArea area = Sheet.sentence("owed.question", "font: bold 115%");
        Sheet.set(area, text);
        return area;
    }

    private interface Given {
        void number(int number);
    }

    private static JPanel scale(String name, boolean enabled, Given given) {
        JPanel scale = new JPanel(new MigLayout("insets 0, gap 4, fillx", "[grow, sg]".repeat(Feeling.WORST + 1)));
        for (int number = 0; number <= Feeling.WORST; number++) {
            int chosen = number;
            Press press = new Press(String.valueOf(number), () -> given.number(chosen));
            press.putClientProperty("FlatLaf.style", "font: bold 115%; margin: 8,2,8,2");
            press.setEnabled(enabled);
            Keys.named(
                    press,
                    name + number,
                    Keys.WORDS.say("feel.number.about", number),
                    number == Feeling.WORST ? "X" : String.valueOf(number));
            scale.add(press, "growx");
        }
        return scale;
    }
}
