package evenfall.report.window;

import evenfall.ingest.words.Words;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Gives controls what each must have: a name, a key, words, and a description for those who cannot see it. */
final class Keys {

    static final Words WORDS = Words.beside(Keys.class);

    private Keys() {}

    /** A large key; its words are {@code name.text} and {@code name.about}, the key is {@code name.key}. */
    static Press press(String name, Runnable action) {
        Press press = new Press(WORDS.say(name + ".text"), action);
        return named(press, name, WORDS.say(name + ".about"), WORDS.say(name + ".key"));
    }

    /** A key that stays pressed. */
    static Hold hold(String name, Runnable action) {
        Hold hold = new Hold(WORDS.say(name + ".text"), action);
        return named(hold, name, WORDS.say(name + ".about"), WORDS.say(name + ".key"));
    }

    /**
     * Names a button and lets a key press it wherever the focus is, while it is seen.
     *
     * @param stroke as {@link KeyStroke#getKeyStroke(String)} reads it; empty for none
     */
    static <B extends AbstractButton> B named(B button, String name, String about, String stroke) {
        button.setName(name);
        describe(button, name, about + (stroke.isEmpty() ? "" : " " + WORDS.say("key", spoken(stroke))));
        button.setToolTipText(about + (stroke.isEmpty() ? "" : " (" + spoken(stroke) + ")"));
        if (!stroke.isEmpty()) {
            bind(button, stroke, button::doClick);
            button.putClientProperty("evenfall.key", spoken(stroke));
        }
        return button;
    }

    /** A name for tests and a description for those who cannot see it. */
    static void describe(JComponent component, String name, String about) {
        component.setName(name);
        component.getAccessibleContext().setAccessibleDescription(about);
    }

    static void bind(JComponent component, String stroke, Runnable action) {
        KeyStroke key = KeyStroke.getKeyStroke(stroke);
        if (key == null) {
            throw new IllegalArgumentException("no key is called '" + stroke + "'");
        }
        component.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, stroke);
        component.getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        });
    }

    /** A key as people call it. */
    static String spoken(String stroke) {
        StringBuilder text = new StringBuilder();
        for (String part : stroke.split(" ", -1)) {
            String word = part.length() > 1 && !part.startsWith("F")
                    ? Character.toUpperCase(part.charAt(0)) + part.substring(1).toLowerCase(java.util.Locale.ROOT)
                    : part;
            text.append(text.length() == 0 ? "" : "+").append(word);
        }
        return text.toString();
    }
}
