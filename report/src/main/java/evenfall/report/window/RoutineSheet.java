package evenfall.report.window;

import evenfall.report.round.Day;
import evenfall.report.round.RoutineStep;
import evenfall.report.round.TurnDesk;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The opening routine: what to do now in large words, and each step with what was seen of it. */
final class RoutineSheet implements Sheet {

    private final JPanel panel =
            new JPanel(new MigLayout("fill, insets 16 24 12 24, gap 12", "[grow 3][grow 2, 300::]", "[grow]"));
    private final JPanel keys = new JPanel(new MigLayout("insets 6 20 6 20, gap 10"));
    private final JTextArea instruction = Sheet.sentence("routine.instruction", "font: bold 220%");
    private final Map<RoutineStep.Name, JLabel> steps = new EnumMap<>(RoutineStep.Name.class);
    private final LevelDrawing level;

    RoutineSheet(Supplier<Day> day, Skin skin) {
        level = new LevelDrawing(skin);
        JPanel list = new JPanel(new MigLayout("insets 0, gap 14, wrap 1, fillx", "[grow]"));
        for (RoutineStep.Name name : RoutineStep.Name.values()) {
            JLabel label = Sheet.words("routine.step." + code(name), "font: 130%");
            steps.put(name, label);
            list.add(label, "growx, wmin 50");
        }
        panel.add(instruction, "grow, wmin 200");
        panel.add(list, "top, growx, flowy, split 2");
        panel.add(level, "grow, wrap");
        keys.add(Keys.press("routine.pain", () -> day.get().round().pain()).large());
        keys.add(Keys.press("routine.on", () -> day.get().round().drops()).large());
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent bar() {
        return keys;
    }

    @Override
    public void show(Day now) {
        TurnDesk desk = now.round().desk();
        String told = desk.instruction();
        Sheet.set(instruction, told.isEmpty() ? Keys.WORDS.say("routine.first") : told);
        List<RoutineStep> all = desk.routine();
        for (RoutineStep step : all) {
            JLabel label = steps.get(step.name());
            if (label != null) {
                String state =
                        Keys.WORDS.say("routine.state." + step.state().name().toLowerCase(Locale.ROOT));
                String done = Keys.WORDS.say("routine.done." + code(step.name()), step.done(), step.asked());
                Sheet.set(label, state + " " + Keys.WORDS.say("routine.step." + code(step.name())) + done);
                label.putClientProperty(
                        "FlatLaf.style", step.state() == RoutineStep.State.NOW ? "font: bold 130%" : "font: 130%");
            }
        }
        level.show(desk.glance().pelvis(), desk.glance().upperBack());
    }

    private static String code(RoutineStep.Name name) {
        return name.name().toLowerCase(Locale.ROOT);
    }
}
