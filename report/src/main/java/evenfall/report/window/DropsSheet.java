package evenfall.report.window;

import evenfall.fusion.landing.Side;
import evenfall.ingest.place.Place;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.round.Day;
import evenfall.report.round.Drops;
import evenfall.report.round.Plan;
import evenfall.report.round.Round;
import evenfall.report.round.SensorGlance;
import evenfall.report.round.TurnDesk;
import evenfall.report.words.Figures;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The drops: what comes next, what was last, and a large key for pain. */
final class DropsSheet implements Sheet {

    private static final double[] HEIGHTS = {0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0};
    private static final String[] SURFACES = {"floor", "mat", "grass", "sand"};

    private final Supplier<Day> day;
    private final JPanel panel = new JPanel(
            new MigLayout("fill, insets 8 20 8 20, gap 8, hidemode 3", "[grow 3][grow 2]", "[grow 2][grow][][]"));
    private final JTextArea headline = Sheet.sentence("drops.headline", "font: bold 300%");
    private final JLabel second = Sheet.words("drops.second", "font: 120%");
    private final JTextArea reasons = Sheet.sentence("drops.reasons", "font: 105%");
    private final JLabel heard = Sheet.words("drops.heard", "font: italic 105%");
    private final JLabel health = Sheet.words("drops.health", "font: 90%");
    private final JPanel keys = new JPanel(new MigLayout("insets 6 20 6 20, gap 10, fillx", "[][][grow]"));
    private final FiguresDrawing figures;
    private final StripDrawing strip;
    private final Map<Side, Hold> feet = new EnumMap<>(Side.class);
    private final Map<Double, Hold> heights = new LinkedHashMap<>();
    private final Map<String, Hold> surfaces = new LinkedHashMap<>();
    private final Map<TalkChoice, Hold> talks = new EnumMap<>(TalkChoice.class);
    private final Press goOn;

    DropsSheet(Supplier<Day> day, Skin skin) {
        this.day = day;
        figures = new FiguresDrawing(skin, "drops.figures");
        strip = new StripDrawing(skin, "strip");
        goOn = Keys.press("drops.goon", () -> day.get().round().goOn()).large();
        JPanel last = new JPanel(new MigLayout("insets 0, gap 4, fill, hidemode 3", "[grow]", "[][][grow][][]"));
        last.add(headline, "growx, wmin 200, wrap");
        last.add(second, "growx, wmin 50, wrap");
        last.add(reasons, "grow, wmin 200, wrap");
        last.add(heard, "growx, wmin 50, wrap");
        last.add(goOn, "wrap");
        panel.add(last, "grow");
        panel.add(figures, "grow, wrap");
        panel.add(strip, "span, grow, hmin 80, hmax 200, wrap");
        panel.add(next(), "span, growx, wrap");
        keys.add(Keys.press("drops.pain", () -> day.get().round().pain()).large());
        keys.add(Keys.press("drops.next", () -> day.get().round().next()).large());
        keys.add(health, "right, wmin 50");
    }

    @Override
    public JComponent bar() {
        return keys;
    }

    private JPanel next() {
        JPanel rows = new JPanel(new MigLayout("insets 0, gap 6", "[right][grow]"));
        JPanel foot = row(3);
        Side[] sides = {Side.LEFT, Side.BOTH, Side.RIGHT};
        for (Side side : sides) {
            Hold hold = Keys.hold("drops.foot." + side.code(), () -> plan(plan -> plan.press(side)));
            feet.put(side, hold);
            foot.add(hold);
        }
        JPanel height = row(HEIGHTS.length);
        for (int i = 0; i < HEIGHTS.length; i++) {
            double metres = HEIGHTS[i];
            Hold hold =
                    new Hold(Keys.WORDS.say("metres", Figures.height(metres)), () -> plan(plan -> plan.press(metres)));
            Keys.named(
                    hold,
                    "drops.height." + Figures.height(metres),
                    Keys.WORDS.say("drops.height.about", Figures.height(metres)),
                    String.valueOf(i + 1));
            heights.put(metres, hold);
            height.add(hold);
        }
        JPanel surface = row(SURFACES.length);
        for (int i = 0; i < SURFACES.length; i++) {
            String code = SURFACES[i];
            Hold hold = Keys.hold("drops.surface." + code, () -> plan(plan -> plan.press(code)));
            surfaces.put(code, hold);
            surface.add(hold);
        }
        JPanel talk = row(4);
        for (TalkChoice choice : TalkChoice.values()) {
            Hold hold = Keys.hold(
                    "drops.talk." + choice.code(), () -> day.get().round().talk(choice));
            talks.put(choice, hold);
            talk.add(hold);
        }
        rows.add(label("drops.next.words"));
        rows.add(foot, "split 2");
        rows.add(surface, "gapleft 16, wrap");
        rows.add(label("drops.height.words"));
        rows.add(height, "wrap");
        rows.add(label("drops.talk.words"));
        rows.add(talk);
        return rows;
    }

    private static JLabel label(String name) {
        JLabel label = Sheet.words(name, "font: 95%");
        Sheet.set(label, Keys.WORDS.say(name));
        return label;
    }

    private static JPanel row(int count) {
        return new JPanel(new MigLayout("insets 0, gap 4", "[]".repeat(count)));
    }

    /** Changes what is said of the next landings; what is pressed again is taken back. */
    private void plan(UnaryOperator<Plan> pressed) {
        Round round = day.get().round();
        round.plan(pressed.apply(round.desk().drops().plan()));
        show(day.get());
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Day now) {
        TurnDesk desk = now.round().desk();
        Drops drops = desk.drops();
        String name = now.round().person() == null ? "" : now.round().person().name();
        Sheet.set(
                headline,
                drops.fallen()
                        ? Keys.WORDS.say("drops.fallen", name)
                        : drops.headline().isEmpty() ? Keys.WORDS.say("drops.wait") : drops.headline());
        Sheet.set(second, drops.fallen() ? Keys.WORDS.say("drops.fallen.do") : drops.second());
        Sheet.set(
                reasons,
                drops.fallen()
                        ? ""
                        : drops.strip().isEmpty()
                                ? Keys.WORDS.say("drops.caution")
                                : String.join("\n", drops.reasons()));
        Sheet.set(heard, drops.heard().isEmpty() ? "" : Keys.WORDS.say("drops.heard.text", drops.heard()));
        goOn.setVisible(drops.fallen());
        figures.show(drops.last());
        strip.show(drops.strip(), OptionalInt.empty());
        Plan plan = drops.plan();
        feet.forEach((side, hold) -> hold.setSelected(side == plan.foot()));
        heights.forEach((metres, hold) -> hold.setSelected(metres.equals(plan.heightM())));
        surfaces.forEach((code, hold) -> hold.setSelected(Objects.equals(code, plan.surface())));
        talks.forEach((choice, hold) -> hold.setSelected(choice == desk.choice()));
        Sheet.set(
                health,
                Keys.WORDS.say(
                        "drops.health.text",
                        state(Place.PELVIS, desk.glance().pelvis()),
                        state(Place.UPPER_BACK, desk.glance().upperBack())));
    }

    private static String state(Place place, SensorGlance sensor) {
        String key = !sensor.heard() ? "health.none" : !sensor.speaks() ? "health.silent" : "health.well";
        return Keys.WORDS.say(key, Keys.WORDS.say("place." + place.code()), Math.round(sensor.rateHz()));
    }
}
