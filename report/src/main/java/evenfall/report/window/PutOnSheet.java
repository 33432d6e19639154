package evenfall.report.window;

import evenfall.ingest.place.Place;
import evenfall.ingest.serial.PortIdentity;
import evenfall.report.round.Day;
import evenfall.report.round.Glance;
import evenfall.report.round.Round;
import evenfall.report.round.SensorGlance;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Put on: are the sensors found and named, at rest, is their rate right? */
final class PutOnSheet implements Sheet {

    private final Supplier<Day> day;
    private final JPanel panel =
            new JPanel(new MigLayout("fill, insets 12 20 12 20, gap 10", "[grow, sg][grow, sg]", "[][][grow][]"));
    private final JLabel title = Sheet.title("puton.title");
    private final JPanel ports = new JPanel(new MigLayout("insets 0, gap 8, wrap 1, fillx", "[grow]"));
    private final JPanel named = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow]"));
    private final JTextArea pelvis = Sheet.sentence("puton.pelvis", "font: bold 120%");
    private final JTextArea upperBack = Sheet.sentence("puton.upper-back", "font: bold 120%");
    private final JPanel keys = new JPanel(new MigLayout("insets 6 20 6 20, fillx", "[grow]"));
    private final JTextArea instruction = Sheet.sentence("puton.instruction", "font: 120%");
    private final LevelDrawing level;
    private final Press strapped;
    private final Press rehearse;
    private final Press typePath;
    private final Press look;
    private List<PortIdentity> shownPorts = List.of();
    private List<Integer> shownUnplaced = List.of();
    private boolean portsShown;

    PutOnSheet(Supplier<Day> day, Skin skin, Runnable typePort) {
        this.day = day;
        level = new LevelDrawing(skin);
        strapped =
                Keys.press("puton.strapped", () -> day.get().round().strapped()).large();
        rehearse = Keys.press("puton.rehearse", () -> day.get().rehearse());
        typePath = Keys.press("puton.path", typePort);
        look = Keys.press("puton.look", () -> day.get().round().lookForPorts());
        JPanel state = new JPanel(new MigLayout("insets 0, gap 8, fillx, hidemode 3", "[grow]", "[][][][][grow]"));
        state.add(pelvis, "growx, wmin 50, wrap");
        state.add(upperBack, "growx, wmin 50, wrap");
        state.add(ports, "growx, wrap");
        state.add(named, "growx, wrap");
        state.add(instruction, "grow, wmin 100");
        panel.add(title, "span, wrap");
        panel.add(state, "grow, spany 2");
        panel.add(level, "grow, spany 2, wrap");
        keys.add(strapped, "growx");
    }

    @Override
    public JComponent first() {
        return strapped;
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
        Round round = now.round();
        boolean connected = round.desk().connected();
        Glance glance = round.desk().glance();
        String name = round.person() == null ? "" : round.person().name();
        Sheet.set(title, Keys.WORDS.say(connected ? "puton.title.text" : "puton.title.ports", name));
        Sheet.set(pelvis, connected ? words(Place.PELVIS, glance.pelvis()) : "");
        Sheet.set(upperBack, connected ? words(Place.UPPER_BACK, glance.upperBack()) : "");
        pelvis.setVisible(connected);
        upperBack.setVisible(connected);
        level.setVisible(connected);
        strapped.setVisible(connected);
        keys.setVisible(connected);
        ports.setVisible(!connected);
        if (!connected && (!portsShown || !round.ports().equals(shownPorts))) {
            shownPorts = round.ports();
            portsShown = true;
            fillPorts();
        }
        if (!glance.unplaced().equals(shownUnplaced)) {
            shownUnplaced = glance.unplaced();
            fillNames();
        }
        String told = round.desk().instruction();
        Sheet.set(
                instruction,
                !connected
                        ? Keys.WORDS.say(shownPorts.isEmpty() ? "puton.ports.none" : "puton.ports.choose")
                        : told.isEmpty() ? Keys.WORDS.say("puton.how") : told);
        level.show(glance.pelvis(), glance.upperBack());
    }

    private static String words(Place place, SensorGlance sensor) {
        String key = !sensor.heard()
                ? "sensor.unheard"
                : !sensor.speaks()
                        ? "sensor.silent"
                        : sensor.rateHz() == 0
                                ? "sensor.found"
                                : !sensor.rateIsRight()
                                        ? "sensor.slow"
                                        : sensor.atRest() ? "sensor.rest" : "sensor.moving";
        return Keys.WORDS.say(key, Keys.WORDS.say("place." + place.code()), Math.round(sensor.rateHz()));
    }

    private void fillPorts() {
        ports.removeAll();
        int number = 0;
        for (PortIdentity port : shownPorts) {
            number++;
            String text = port.description().isEmpty() ? port.path() : port.description() + " (" + port.path() + ")";
            Press press = new Press(text, () -> day.get().round().connect(port.path())).large();
            Keys.named(
                    press,
                    "puton.port." + number,
                    Keys.WORDS.say("puton.port.about", port.path()),
                    number < 10 ? String.valueOf(number) : "");
            ports.add(press, "growx");
        }
        ports.add(look, "growx");
        ports.add(typePath, "growx");
        if (!day.get().rehearsing()) {
            ports.add(rehearse, "growx");
        }
        ports.revalidate();
    }

    /** Sensors that do not say where they are worn: taps tell, or a key. */
    private void fillNames() {
        named.removeAll();
        for (int i = 0; i < shownUnplaced.size(); i++) {
            int sensor = shownUnplaced.get(i);
            String number = String.format(Locale.ROOT, "%04X", sensor);
            Press press = new Press(
                    Keys.WORDS.say("puton.named.text", number),
                    () -> day.get().round().desk().worn(sensor, Place.PELVIS));
            Keys.named(
                    press,
                    "puton.named." + number,
                    Keys.WORDS.say("puton.named.about", number),
                    i < 9 ? String.valueOf(i + 1) : "");
            named.add(press, "growx, wrap");
        }
        named.revalidate();
    }
}
