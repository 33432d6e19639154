package evenfall.report.window;

import evenfall.report.log.SessionDate;
import evenfall.report.round.Day;
import evenfall.report.round.LookBack;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A session that is over: its sentence, its landings, and what speaks against each. */
final class LookBackSheet implements Sheet {

    private final Supplier<Day> day;
    private final JPanel panel = new JPanel(
            new MigLayout("fill, insets 8 20 8 20, gap 8, hidemode 3", "[260::, grow 2][grow 3]", "[][][][grow][]"));
    private final JLabel title = Sheet.title("back.title");
    private final JTextArea sentence = Sheet.sentence("back.sentence", "font: 115%");
    private final StripDrawing strip;
    private final FiguresDrawing figures;
    private final JPanel list = new JPanel(new MigLayout("insets 0, gap 4, wrap 1, fillx", "[grow]"));
    private final JTextArea detail = Sheet.sentence("back.detail", "font: 105%");
    private final JPanel keys = new JPanel(new MigLayout("insets 6 20 6 20, gap 10"));
    private final Press leaveOut;
    private final Press page;
    private final Press earlier;
    private final Press later;
    private @Nullable LookBack shown;
    private int chosen;

    LookBackSheet(Supplier<Day> day, Skin skin) {
        this.day = day;
        strip = new StripDrawing(skin, "back.strip");
        figures = new FiguresDrawing(skin, "back.figures");
        leaveOut = Keys.press("back.leaveout", this::leaveOut);
        page = Keys.press("back.page", () -> day.get().round().lookingBack().openPage());
        earlier = Keys.press("back.earlier", () -> step(1)).small();
        later = Keys.press("back.later", () -> step(-1)).small();
        panel.add(title, "span, split 3, pushx, growx");
        panel.add(earlier);
        panel.add(later, "wrap");
        panel.add(sentence, "span, growx, wmin 200, wrap");
        panel.add(strip, "span, growx, hmin 90, wrap");
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        panel.add(scroll, "grow, hmin 80");
        JPanel one = new JPanel(new MigLayout("insets 0, gap 6, fill", "[grow]", "[grow][][]"));
        one.add(figures, "grow, wrap");
        one.add(detail, "growx, wmin 200, wrap");
        one.add(leaveOut, "");
        panel.add(one, "grow, wrap");
        keys.add(Keys.press("back.done", () -> day.get().round().next()).large());
        keys.add(page);
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
    @SuppressWarnings("ReferenceEquality") // Asks whether it is the very one that is shown.
    public void show(Day now) {
        LookBack back = now.round().lookingBack().shown();
        String name = now.round().person() == null ? "" : now.round().person().name();
        boolean there = back != null;
        Sheet.set(
                title,
                back == null
                        ? Keys.WORDS.say("back.title.none", name)
                        : Keys.WORDS.say("back.title.text", name, back.date().words()));
        Sheet.set(
                sentence,
                back == null ? Keys.WORDS.say(now.round().busy() ? "back.reading" : "back.nothing") : back.sentence());
        for (JComponent part : List.of(strip, figures, detail, leaveOut, page, list, earlier, later)) {
            part.setVisible(there);
        }
        if (back != null && back != shown) {
            boolean same = shown != null
                    && shown.date().equals(back.date())
                    && shown.person().equals(back.person());
            chosen = same ? Math.min(chosen, back.rows().size() - 1) : 0;
            shown = back;
            fill(back);
        }
        if (back != null) {
            earlier.setEnabled(at(back) + 1 < back.dates().size());
            later.setEnabled(at(back) > 0);
        } else {
            shown = null;
        }
    }

    private static int at(LookBack back) {
        return back.dates().indexOf(back.date());
    }

    private void step(int by) {
        LookBack back = shown;
        if (back != null) {
            List<SessionDate> dates = back.dates();
            int to = at(back) + by;
            if (to >= 0 && to < dates.size()) {
                day.get().round().lookingBack().open(dates.get(to));
            }
        }
    }

    private void fill(LookBack back) {
        list.removeAll();
        for (int i = 0; i < back.rows().size(); i++) {
            LookBack.Row row = back.rows().get(i);
            int at = i;
            String text =
                    Keys.WORDS.say(row.leftOut() == null ? "back.row" : "back.row.out", row.index(), row.headline());
            Hold hold = new Hold(text, () -> choose(at));
            hold.setHorizontalAlignment(javax.swing.SwingConstants.LEFT);
            Keys.named(hold, "back.row." + row.index(), Keys.WORDS.say("back.row.about", row.second()), rowKey(i));
            list.add(hold, "growx");
        }
        choose(chosen);
        list.revalidate();
        list.repaint();
    }

    private static String rowKey(int i) {
        return i < 9 ? String.valueOf(i + 1) : i < 18 ? "ctrl " + (i - 8) : i < 27 ? "alt " + (i - 17) : "";
    }

    private void choose(int at) {
        LookBack back = shown;
        if (back == null) {
            return;
        }
        chosen = at;
        for (int i = 0; i < list.getComponentCount(); i++) {
            ((Hold) list.getComponent(i)).setSelected(i == at);
        }
        boolean one = at >= 0 && at < back.rows().size();
        strip.show(
                back.rows().stream().map(LookBack.Row::mark).toList(), one ? OptionalInt.of(at) : OptionalInt.empty());
        leaveOut.setEnabled(one);
        if (one) {
            LookBack.Row row = back.rows().get(at);
            figures.show(row.event());
            String why = row.leftOut();
            Sheet.set(
                    detail,
                    row.second()
                            + (row.reasons().isEmpty() ? "" : "\n" + String.join("\n", row.reasons()))
                            + (why == null ? "" : "\n" + why));
            leaveOut.setText(Keys.WORDS.say(why == null ? "back.leaveout.text" : "back.leaveout.in"));
        } else {
            figures.show(null);
            Sheet.set(detail, "");
        }
    }

    private void leaveOut() {
        LookBack back = shown;
        if (back != null && chosen >= 0 && chosen < back.rows().size()) {
            LookBack.Row row = back.rows().get(chosen);
            day.get().round().lookingBack().leaveOut(row, row.leftOut() == null);
        }
    }
}
