package evenfall.report.window;

import evenfall.report.round.Day;
import evenfall.report.round.Person;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** No drops today, said plainly. */
final class StoppedSheet implements Sheet {

    private final JPanel panel = new JPanel(new MigLayout("fill, insets 30 40 30 40, gap 16", "[grow]", "[][grow][]"));
    private final JLabel title = Sheet.title("stopped.title");
    private final JTextArea why = Sheet.sentence("stopped.why", "font: 130%");

    StoppedSheet(Supplier<Day> day) {
        title.putClientProperty("FlatLaf.style", "font: bold 260%");
        panel.add(title, "wrap");
        panel.add(why, "grow, wmin 200, wrap");
        panel.add(Keys.press("stopped.next", () -> day.get().round().next()).large(), "split 2");
        panel.add(Keys.press("stopped.again", () -> day.get().round().askAgain()), "");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Day now) {
        Person person = now.round().person();
        String name = person == null ? "" : person.name();
        Sheet.set(title, Keys.WORDS.say("stopped.title.text", name));
        Sheet.set(why, Keys.WORDS.say("stopped.why.text"));
    }
}
