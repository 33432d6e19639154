package evenfall.report.window;

import evenfall.report.round.Day;
import java.awt.Color;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What must be read now, across the window, until it was. */
final class Banner {

    private final JPanel panel = new JPanel(new MigLayout("fillx, insets 8 20 8 20, gap 10", "[grow][]"));
    private final JTextArea sentence = Sheet.sentence("banner", "font: bold 115%");
    private final Skin skin;

    Banner(Skin skin, Runnable read) {
        this.skin = skin;
        panel.add(sentence, "growx, wmin 200");
        panel.add(Keys.press("banner.read", read).small());
        panel.setVisible(false);
    }

    JComponent component() {
        return panel;
    }

    void show(Day day) {
        String newest = day.round().notices().newest();
        panel.setVisible(!newest.isEmpty());
        Sheet.set(sentence, newest);
        Color ground = skin.palette().alarm();
        panel.setBackground(ground);
        sentence.setForeground(skin.palette().alarmText());
    }
}
