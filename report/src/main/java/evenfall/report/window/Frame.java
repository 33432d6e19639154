package evenfall.report.window;

import evenfall.report.log.TrainingLog;
import evenfall.report.round.Day;
import evenfall.report.round.Round;
import evenfall.report.round.Step;
import evenfall.report.round.Threads;
import evenfall.report.speech.Speech;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The window itself: head, what is shown at each step, foot. For the event thread. */
final class Frame {

    private final Skin skin;
    private final ExecutorService back = Executors.newSingleThreadExecutor(work -> new Thread(work, "files"));
    private final JFrame frame = new JFrame(Keys.WORDS.say("title"));
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final Map<Step, Sheet> sheets = new EnumMap<>(Step.class);
    private final Map<Step, Fitted> contents = new EnumMap<>(Step.class);
    private final JLabel trail = Sheet.words("trail", "font: bold 105%");
    private final JLabel state = Sheet.words("state", "font: 90%");
    private final Banner banner;
    private final Press unplug;
    private final Press endRehearsal;
    private final Day day;
    private final Runnable closed;
    private @Nullable Step shown;
    private boolean pending;
    private boolean closing;

    /** A window of components that are dressed already. */
    Frame(Skin skin, TrainingLog log, Speech speech, double speed, Runnable closed) {
        this.skin = skin;
        this.closed = closed;
        day = new Day(
                log,
                new Threads(SwingUtilities::invokeLater, back),
                new Machine(this::unshown),
                speech,
                speed,
                this::changed);
        banner = new Banner(skin, () -> day.round().read());
        unplug = Keys.press("rehearsal.unplug", () -> day.plug(!day.plugged())).small();
        endRehearsal = Keys.press("rehearsal.end", day::endRehearsal).small();
        Dialogs dialogs = new Dialogs(frame, () -> day);
        sheets.put(Step.WHO, new WhoSheet(() -> day, dialogs::add, dialogs::list));
        sheets.put(Step.FEEL, new FeelSheet(() -> day, skin));
        sheets.put(Step.STOPPED, new StoppedSheet(() -> day));
        sheets.put(Step.PUT_ON, new PutOnSheet(() -> day, skin, dialogs::port));
        sheets.put(Step.ROUTINE, new RoutineSheet(() -> day, skin));
        sheets.put(Step.DROPS, new DropsSheet(() -> day, skin));
        sheets.put(Step.LOOK_BACK, new LookBackSheet(() -> day, skin));
        sheets.put(Step.OWED, new OwedSheet(() -> day, skin));
        build(speech.unheard());
    }

    void open() {
        frame.setVisible(true);
        day.open();
    }

    private void unshown(String sentence) {
        SwingUtilities.invokeLater(() -> day.round().notice(sentence));
    }

    private void build(String unheard) {
        JPanel all = new JPanel(new MigLayout("fill, insets 0, gap 0, hidemode 3", "[grow]", "[][][grow][]"));
        JPanel head = new JPanel(new MigLayout("fillx, insets 6 20 6 20, gap 8, hidemode 3", "[grow][][][][][]"));
        head.add(trail, "growx, wmin 50");
        head.add(unplug);
        head.add(endRehearsal);
        head.add(Keys.press("larger", () -> skin.zoom(1)).small());
        head.add(Keys.press("smaller", () -> skin.zoom(-1)).small());
        head.add(Keys.press("ground", () -> skin.dark(!skin.dark())).small());
        all.add(head, "growx, wrap");
        all.add(banner.component(), "growx, wrap");
        sheets.forEach((step, sheet) -> {
            Fitted content = new Fitted(sheet.component());
            JScrollPane scroll = new JScrollPane(content);
            scroll.setBorder(BorderFactory.createEmptyBorder());
            scroll.getVerticalScrollBar().setUnitIncrement(24);
            JPanel card = new JPanel(new BorderLayout());
            card.add(scroll);
            JComponent bar = sheet.bar();
            if (bar != null) {
                card.add(bar, BorderLayout.SOUTH);
            }
            middle.add(card, step.name());
            contents.put(step, content);
        });
        all.add(middle, "grow, wrap");
        JPanel foot = new JPanel(new MigLayout("fillx, insets 2 20 6 20, gap 2", "[grow]"));
        JTextArea caution = Sheet.sentence("caution", "font: 80%");
        Sheet.set(caution, Keys.WORDS.say("caution"));
        foot.add(state, "growx, wmin 50, wrap");
        if (!unheard.isEmpty()) {
            JTextArea silent = Sheet.sentence("unheard", "font: 80%");
            Sheet.set(silent, unheard);
            foot.add(silent, "growx, wmin 200, wrap");
        }
        foot.add(caution, "growx, wmin 200");
        all.add(foot, "growx");
        middle.setFocusable(true);
        frame.setName("coach");
        frame.setContentPane(all);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            /** What is focused before a window is seen is not: the keys for larger letters would have it. */
            @Override
            public void windowOpened(WindowEvent e) {
                Sheet sheet = sheets.get(day.round().step());
                if (sheet != null) {
                    focus(sheet);
                }
            }

            @Override
            public void windowClosing(WindowEvent e) {
                close();
            }
        });
        frame.setMinimumSize(new Dimension(640, 420));
        frame.setSize(1180, 760);
        Dimension screen = frame.getToolkit().getScreenSize();
        if (screen.width < 1180 || screen.height < 760) {
            frame.setSize(screen);
        }
        frame.setLocationRelativeTo(null);
        show();
    }

    private void focus(Sheet sheet) {
        JComponent first = sheet.first();
        (first == null ? middle : first).requestFocusInWindow();
    }

    /** However often something changes, it is shown once. */
    private void changed() {
        if (!pending) {
            pending = true;
            SwingUtilities.invokeLater(() -> {
                pending = false;
                show();
            });
        }
    }

    private void show() {
        Round round = day.round();
        Step step = round.step();
        Sheet sheet = sheets.get(step);
        if (sheet == null) {
            return;
        }
        sheet.show(day);
        cards.show(middle, step.name());
        if (step != shown) {
            shown = step;
            Fitted content = contents.get(step);
            if (content != null) {
                content.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
            }
            focus(sheet);
        }
        banner.show(day);
        String words = Keys.WORDS.say("trail." + step.name().toLowerCase(Locale.ROOT));
        Sheet.set(trail, day.rehearsing() ? Keys.WORDS.say("trail.rehearsal", words) : words);
        unplug.setVisible(day.rehearsing());
        unplug.setText(Keys.WORDS.say(day.plugged() ? "rehearsal.unplug.text" : "rehearsal.plug"));
        endRehearsal.setVisible(day.rehearsing());
        String stored = round.desk().stored();
        Sheet.set(
                state,
                round.desk().recording()
                        ? Keys.WORDS.say("state.recording")
                        : round.busy()
                                ? Keys.WORDS.say("state.busy")
                                : stored.isEmpty() ? Keys.WORDS.say("state.idle") : stored);
    }

    /** Nothing is lost: a turn that goes on is ended and stored first. */
    void close() {
        if (closing) {
            return;
        }
        closing = true;
        frame.setVisible(false);
        day.close(() -> {
            back.shutdown();
            frame.dispose();
            closed.run();
        });
    }
}
