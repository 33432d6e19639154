package evenfall.report.window;

import evenfall.report.round.Day;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What has to be typed: somebody's name, the path of a port. */
final class Dialogs {

    private final JFrame frame;
    private final Supplier<Day> day;

    Dialogs(JFrame frame, Supplier<Day> day) {
        this.frame = frame;
        this.day = day;
    }

    /** Somebody new. */
    void add() {
        JTextField name = field("add.name");
        JTextField guardian = field("add.guardian");
        JCheckBox consent = Keys.named(
                new JCheckBox(Keys.WORDS.say("add.consent.text")),
                "add.consent",
                Keys.WORDS.say("add.consent.about"),
                "alt C");
        JPanel form = form();
        labelled(form, "add.name", name);
        form.add(consent, "skip, wrap");
        labelled(form, "add.guardian", guardian);
        show("add", form, () -> {
            if (!name.getText().isBlank()) {
                day.get().round().add(name.getText(), consent.isSelected(), guardian.getText());
            }
        });
    }

    /** A port by its path. */
    void port() {
        JTextField path = field("port.path");
        JPanel form = form();
        labelled(form, "port.path", path);
        show("port", form, () -> {
            if (!path.getText().isBlank()) {
                day.get().round().connect(path.getText().strip());
            }
        });
    }

    /** Somebody who is in the log and not on today's list. */
    void list() {
        JDialog dialog = dialog("list");
        JPanel form = form();
        List<String> others = day.get().round().others();
        for (int i = 0; i < others.size(); i++) {
            String id = others.get(i);
            Press press = new Press(id, () -> {
                dialog.dispose();
                day.get().round().list(id);
            });
            Keys.named(press, "list." + id, Keys.WORDS.say("list.about", id), i < 9 ? String.valueOf(i + 1) : "");
            form.add(press, "span, growx, wrap");
        }
        form.add(Keys.press("dialog.cancel", dialog::dispose), "span");
        open(dialog, form);
    }

    private static JPanel form() {
        return new JPanel(new MigLayout("insets 20, gap 10, fillx", "[][grow, 320::]"));
    }

    private static JTextField field(String name) {
        JTextField field = new JTextField(24);
        Keys.describe(field, name, Keys.WORDS.say(name + ".about"));
        return field;
    }

    private static void labelled(JPanel form, String name, JTextField field) {
        JLabel label = new JLabel(Keys.WORDS.say(name + ".text"));
        label.setLabelFor(field);
        label.setDisplayedMnemonic(Keys.WORDS.say(name + ".key").charAt(0));
        form.add(label);
        form.add(field, "growx, wrap");
    }

    private void show(String name, JPanel form, Runnable done) {
        JDialog dialog = dialog(name);
        Press ok = Keys.press("dialog.ok", () -> {
            dialog.dispose();
            done.run();
        });
        form.add(ok, "newline, skip, split 2");
        form.add(Keys.press("dialog.cancel", dialog::dispose));
        dialog.getRootPane().setDefaultButton(ok);
        open(dialog, form);
    }

    private JDialog dialog(String name) {
        JDialog dialog = new JDialog(frame, Keys.WORDS.say(name + ".title"), true);
        dialog.setName(name);
        return dialog;
    }

    private void open(JDialog dialog, JComponent content) {
        dialog.setContentPane(new javax.swing.JScrollPane(content));
        dialog.pack();
        dialog.setLocationRelativeTo(frame);
        dialog.setVisible(true);
    }
}
