package evenfall.report.window;

import evenfall.report.log.DiaryEntry;
import evenfall.report.round.BodyPart;
import evenfall.report.round.Day;
import evenfall.report.round.Feeling;
import evenfall.report.round.Person;
import evenfall.report.round.Round;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** How do you feel: asked before the first drop, and when pain stopped the drops. */
final class FeelSheet implements Sheet {

    private static final String LETTERS = "FASCKTMHO";
    private static final String SINGLE_LETTERS = "BIN";

    private final Supplier<Day> day;
    private final JPanel panel =
            new JPanel(new MigLayout("fill, insets 8 20 8 20, gap 12, hidemode 3", "[grow 3][grow 1][grow 2]"));
    private final JLabel title = Sheet.title("feel.title");
    private final JTextArea limit = Sheet.sentence("feel.limit", "font: bold");
    private final Press well;
    private final Press on;
    private final Press back;
    private final Press consent;
    private final Hold sore;
    private final Hold pain;
    private final Map<String, Hold> parts = new LinkedHashMap<>();
    private final Map<String, Hold> signs = new LinkedHashMap<>();
    private final List<Press> numbers = new ArrayList<>();
    private final BodyDrawing body;
    private final JTextArea answers = Sheet.sentence("feel.answers", "font: bold 110%");
    private final JTextArea caution = Sheet.sentence("feel.caution", "font: 90%");

    FeelSheet(Supplier<Day> day, Skin skin) {
        this.day = day;
        body = new BodyDrawing(skin, "feel.body", this::point);
        well = Keys.press("feel.well", () -> day.get().round().answered()).large();
        on = Keys.press("feel.on", () -> day.get().round().answered()).large();
        back = Keys.press("feel.back", () -> day.get().round().next()).small();
        consent = Keys.press("feel.consent", () -> day.get().round().consent()).small();
        sore = Keys.hold("feel.sore", () -> ask(false));
        pain = Keys.hold("feel.pain", () -> ask(true));
        panel.add(title, "split 3, span, growx, pushx");
        panel.add(consent);
        panel.add(back, "right");
        // A row begins with "newline": with "wrap" it would not end where what ends it is hidden.
        panel.add(limit, "newline, span, growx, wmin 200");
        panel.add(well, "newline, span, growx");
        panel.add(regions(), "newline, growx, top");
        panel.add(body, "grow, top, wmin 0");
        panel.add(rest(), "growx, top");
        panel.add(caution, "newline, span, growx, wmin 200");
    }

    private JPanel regions() {
        JPanel grid = new JPanel(new MigLayout("insets 0, gap 6, fillx, wrap 2", "[grow, sg][grow, sg]", ""));
        for (int i = 0; i < BodyPart.PAIRED.size(); i++) {
            String name = BodyPart.PAIRED.get(i);
            grid.add(part(BodyPart.left(name).code(), "ctrl " + LETTERS.charAt(i)), "growx");
            grid.add(part(BodyPart.right(name).code(), "ctrl shift " + LETTERS.charAt(i)), "growx");
        }
        JPanel middle = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[grow, sg][grow, sg][grow, sg]"));
        for (int i = 0; i < BodyPart.SINGLE.size(); i++) {
            middle.add(part(BodyPart.SINGLE.get(i).code(), "ctrl " + SINGLE_LETTERS.charAt(i)), "growx");
        }
        grid.add(middle, "span, growx");
        return grid;
    }

    private Hold part(String code, String key) {
        Hold hold = new Hold(Keys.WORDS.say("part." + code.replace(' ', '.')), () -> point(code));
        hold.putClientProperty("FlatLaf.style", "margin: 5,8,5,8");
        Keys.named(hold, "feel.part." + code.replace(' ', '.'), Keys.WORDS.say("feel.part.about", code), key);
        parts.put(code, hold);
        return hold;
    }

    private JPanel rest() {
        JPanel side = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow]"));
        JPanel which = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[grow, sg][grow, sg]"));
        which.add(sore, "growx");
        which.add(pain, "growx");
        side.add(which, "growx, wrap");
        JPanel scale = new JPanel(new MigLayout("insets 0, gap 4, fillx, wrap 6", "[grow, sg]"));
        for (int number = 0; number <= Feeling.WORST; number++) {
            int given = number;
            Press press = new Press(String.valueOf(number), () -> rate(given));
            press.putClientProperty("FlatLaf.style", "font: bold 120%; margin: 8,4,8,4");
            Keys.named(
                    press,
                    "feel.number." + number,
                    Keys.WORDS.say("feel.number.about", number),
                    number == Feeling.WORST ? "X" : String.valueOf(number));
            numbers.add(press);
            scale.add(press, "growx");
        }
        side.add(scale, "growx, wrap");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6, wrap 2, fillx", "[grow, sg][grow, sg]"));
        for (int i = 0; i < DiaryEntry.SIGNS.size(); i++) {
            String code = DiaryEntry.SIGNS.get(i);
            Hold hold = new Hold(Keys.WORDS.say("sign." + code), () -> sign(code));
            Keys.named(hold, "feel.sign." + code, Keys.WORDS.say("feel.sign.about"), "alt " + (i + 1));
            hold.putClientProperty("FlatLaf.style", "margin: 6,8,6,8");
            signs.put(code, hold);
            row.add(hold, "growx");
        }
        side.add(row, "growx, wrap");
        side.add(answers, "grow, wmin 100, wrap");
        side.add(on, "growx");
        return side;
    }

    @Override
    public JComponent first() {
        return well;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Day now) {
        Round round = now.round();
        Person person = round.person();
        Feeling feeling = round.feeling();
        if (person == null) {
            return;
        }
        Sheet.set(
                title, Keys.WORDS.say(feeling.stoppedByPain() ? "feel.title.pain" : "feel.title.text", person.name()));
        Sheet.set(limit, String.join(" ", person.heeded()));
        limit.setVisible(!person.heeded().isEmpty());
        well.setVisible(!feeling.stoppedByPain());
        well.setEnabled(!feeling.isSomething());
        on.setEnabled(feeling.stoppedByPain() || feeling.isSomething());
        on.setText(Keys.WORDS.say(feeling.stopsDrops() ? "feel.on.stop" : "feel.on.text"));
        consent.setVisible(!person.consent());
        back.setVisible(!feeling.stoppedByPain());
        sore.setSelected(!feeling.asksForPain());
        pain.setSelected(feeling.asksForPain());
        parts.forEach((code, hold) -> hold.setSelected(code.equals(feeling.part())));
        signs.forEach((code, hold) -> hold.setSelected(feeling.signs().contains(code)));
        body.show(feeling.part(), feeling.soreness(), feeling.pain());
        body.says(told(feeling));
        numbers.forEach(press -> press.setEnabled(feeling.part() != null));
        Sheet.set(answers, told(feeling));
        Sheet.set(caution, Keys.WORDS.say(feeling.stopsDrops() ? "feel.caution.stop" : "feel.caution"));
    }

    private static String told(Feeling feeling) {
        List<String> words = new ArrayList<>();
        feeling.pain().forEach((code, size) -> words.add(Keys.WORDS.say("feel.told.pain", code, size)));
        feeling.soreness().forEach((code, size) -> words.add(Keys.WORDS.say("feel.told.sore", code, size)));
        feeling.signs().forEach(code -> words.add(Keys.WORDS.say("sign." + code)));
        return words.isEmpty() ? Keys.WORDS.say("feel.told.nothing") : String.join(", ", words);
    }

    private void ask(boolean forPain) {
        day.get().round().feeling().askForPain(forPain);
        show(day.get());
    }

    private void point(String code) {
        day.get().round().feeling().point(code);
        show(day.get());
    }

    private void rate(int number) {
        day.get().round().feeling().rate(number);
        show(day.get());
    }

    private void sign(String code) {
        Feeling feeling = day.get().round().feeling();
        feeling.sign(code, !feeling.signs().contains(code));
        show(day.get());
    }
}
