package evenfall.report.window;

import evenfall.report.round.Day;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import org.jspecify.annotations.Nullable;

/** What is shown at one step. */
interface Sheet {

    /** The component, made once. */
    JComponent component();

    /** Shows how things stand. */
    void show(Day day);

    /** What most people press here; null if nothing. */
    default @Nullable JComponent first() {
        return null;
    }

    /** Keys that are always in sight, however small the window; null for none. */
    default @Nullable JComponent bar() {
        return null;
    }

    /** Large words. */
    static JLabel title(String name) {
        return words(name, "font: bold 190%");
    }

    /** A word or two in a style of the look and feel. */
    static JLabel words(String name, String style) {
        JLabel label = new JLabel(" ");
        label.setName(name);
        label.putClientProperty("FlatLaf.style", style);
        return label;
    }

    /** A sentence that breaks into lines. */
    static JTextArea sentence(String name, String style) {
        JTextArea text = new JTextArea();
        text.setName(name);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setEditable(false);
        text.setFocusable(false);
        // What changes far below must not scroll what is read now.
        ((DefaultCaret) text.getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        text.setOpaque(false);
        text.setBorder(BorderFactory.createEmptyBorder());
        text.putClientProperty("FlatLaf.style", style);
        return text;
    }

    /** Sets a text if it is another. */
    static void set(JLabel label, String text) {
        String shown = text.isEmpty() ? " " : text;
        if (!shown.equals(label.getText())) {
            label.setText(shown);
            label.getAccessibleContext().setAccessibleName(text);
        }
    }

    /** Sets a text if it is another. */
    static void set(JTextArea area, String text) {
        if (!text.equals(area.getText())) {
            area.setText(text);
            area.getAccessibleContext().setAccessibleName(text);
        }
    }
}
