package evenfall.report.window;

import evenfall.report.round.Day;
import evenfall.report.round.Person;
import evenfall.report.round.Person.Standing;
import evenfall.report.round.Round;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Who is next: today's list. */
final class WhoSheet implements Sheet {

    private final JPanel panel =
            new JPanel(new MigLayout("fill, insets 12 20 12 20, gap 10, hidemode 3", "[grow]", "[][grow][]"));
    private final JPanel tiles = new JPanel(new MigLayout("insets 0, gap 10, wrap 2, fillx", "[grow, sg]", ""));
    private final JLabel title = Sheet.title("who.title");
    private final JTextArea begin = Sheet.sentence("who.begin", "font: 120%");
    private final Press add;
    private Press first;
    private final Supplier<Day> day;
    private final Press owed;
    private final Press rehearse;
    private final Press others;
    private List<Person> shown = List.of();

    WhoSheet(Supplier<Day> day, Runnable addSomebody, Runnable listSomebody) {
        this.day = day;
        this.add = Keys.press("who.add", addSomebody);
        this.first = add;
        this.owed = Keys.press("who.owed", () -> day.get().round().owed());
        this.rehearse = Keys.press("who.rehearse", () -> day.get().rehearse());
        this.others = Keys.press("who.others", listSomebody);
        panel.add(title, "flowy, split 2");
        Sheet.set(begin, Keys.WORDS.say("who.begin"));
        panel.add(begin, "growx, wmin 200, wrap");
        panel.add(tiles, "grow, top, wrap");
        JPanel below = new JPanel(new MigLayout("insets 0, gap 10, hidemode 3"));
        below.add(add);
        below.add(others);
        below.add(owed);
        below.add(rehearse);
        panel.add(below, "growx");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent first() {
        return first;
    }

    @Override
    public void show(Day now) {
        Round round = now.round();
        Sheet.set(title, Keys.WORDS.say(round.people().isEmpty() ? "who.title.nobody" : "who.title.text"));
        begin.setVisible(round.people().isEmpty());
        int debts = round.asking().debts().size();
        owed.setText(Keys.WORDS.say("who.owed.count", debts));
        others.setVisible(!round.others().isEmpty());
        rehearse.setVisible(!now.rehearsing());
        rehearse.setEnabled(!now.preparing());
        rehearse.setText(Keys.WORDS.say(now.preparing() ? "who.rehearse.preparing" : "who.rehearse.text"));
        if (!round.people().equals(shown)) {
            shown = round.people();
            fill(round);
            if (panel.isShowing()) {
                first.requestFocusInWindow();
            }
        }
    }

    private void fill(Round round) {
        tiles.removeAll();
        first = add;
        int number = 0;
        for (Person person : round.people()) {
            number++;
            tiles.add(tile(number, person), "growx, wmin 0");
        }
        tiles.revalidate();
        tiles.repaint();
    }

    private JComponent tile(int number, Person person) {
        JPanel tile = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[grow][]"));
        String state = Keys.WORDS.say("standing." + person.standing().name().toLowerCase(java.util.Locale.ROOT));
        Press choose = new Press(person.name(), () -> day.get().round().choose(person)).large();
        if (number == 1) {
            first = choose;
        }
        choose.setHorizontalAlignment(javax.swing.SwingConstants.LEFT);
        Keys.named(
                choose,
                "who.person." + person.id(),
                Keys.WORDS.say("who.person.about", person.name(), state),
                number <= 10 ? String.valueOf(number % 10) : "");
        if (person.standing() != Standing.TO_COME) {
            choose.setText(Keys.WORDS.say("who.person.text", person.name(), state));
        }
        tile.add(choose, "growx, wmin 160");
        Press back = new Press(
                        Keys.WORDS.say("who.back.text"), () -> day.get().round().lookBack(person))
                .small();
        Keys.named(
                back,
                "who.back." + person.id(),
                Keys.WORDS.say("who.back.about", person.name()),
                number <= 10 ? "ctrl " + number % 10 : "");
        tile.add(back, "growy");
        return tile;
    }
}
