package evenfall.report.window;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** Presses what a person would press, with a mouse and a keyboard of the screen. */
final class Hands {

    private static final long PATIENCE_MS = 40_000;
    private static final int PAUSE_MS = 10;
    private static final int SETTLED_MS = 60;
    private static final int LOST_MS = 1500;

    private final Robot robot;

    Hands() throws AWTException {
        robot = new Robot();
        robot.setAutoDelay(PAUSE_MS);
    }

    /** Clicks the control of that name, once it is there and can be pressed. */
    void click(String name) {
        await(name + " can be pressed", () -> {
            Component found = find(name);
            return found != null && found.isEnabled();
        });
        Point at = middle(name);
        Point before = new Point();
        // What is still being laid out moves away from below the hand.
        while (!at.equals(before)) {
            before = at;
            passEvents();
            robot.delay(SETTLED_MS);
            at = middle(name);
        }
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        passEvents();
    }

    /** Lets what has happened so far be dealt with. A window that shows what is measured is never idle, so that is not waited for. */
    private void passEvents() {
        robot.delay(SETTLED_MS);
        inEvents(() -> true);
    }

    /**
     * Clicks what stays down, and looks whether it does, as a person would: a press is lost where something moves just then.
     */
    void hold(String name) {
        BooleanSupplier down = () -> find(name) instanceof AbstractButton button && button.isSelected();
        click(name);
        for (int wait = 0; wait < LOST_MS && !inEvents(down); wait += SETTLED_MS) {
            robot.delay(SETTLED_MS);
        }
        if (!inEvents(down)) {
            click(name);
        }
        await(name + " stays down", down);
    }

    /** Presses a key of the keyboard, some others held meanwhile. */
    void key(int code, int... held) {
        for (int each : held) {
            robot.keyPress(each);
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        for (int each : held) {
            robot.keyRelease(each);
        }
        passEvents();
    }

    void awaitShown(String name) {
        await(name + " is shown", () -> find(name) != null);
    }

    void awaitText(String name, String part) {
        await(
                name + " says '" + part + "', not '" + text(name) + "'",
                () -> text(name).contains(part));
    }

    void await(String what, BooleanSupplier state) {
        long until = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (!inEvents(state)) {
            if (System.nanoTime() > until) {
                throw new AssertionError("not within " + PATIENCE_MS + " ms: " + what);
            }
            robot.delay(PAUSE_MS);
        }
    }

    /** What a text component or a label says; empty if it is not shown. */
    String text(String name) {
        String[] text = {""};
        inEvents(() -> {
            Component found = find(name);
            if (found instanceof JLabel label) {
                text[0] = label.getText();
            } else if (found instanceof JTextComponent area) {
                text[0] = area.getText();
            }
            return true;
        });
        return text[0];
    }

    private Point middle(String name) {
        Point[] point = {new Point()};
        inEvents(() -> {
            Component found = find(name);
            if (found != null) {
                if (found instanceof javax.swing.JComponent component) {
                    component.scrollRectToVisible(new java.awt.Rectangle(component.getSize()));
                }
                Point at = found.getLocationOnScreen();
                at.translate(found.getWidth() / 2, found.getHeight() / 2);
                point[0] = at;
            }
            return true;
        });
        return point[0];
    }

    private static boolean inEvents(BooleanSupplier question) {
        if (SwingUtilities.isEventDispatchThread()) {
            return question.getAsBoolean();
        }
        boolean[] answer = new boolean[1];
        try {
            SwingUtilities.invokeAndWait(() -> answer[0] = question.getAsBoolean());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new AssertionError("a fault in the window: " + e.getCause(), e.getCause());
        }
        return answer[0];
    }

    /** The shown component of that name, or null; for the event thread. */
    static @Nullable Component find(String name) {
        for (Window window : Window.getWindows()) {
            Component found = window.isShowing() ? find(window, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static @Nullable Component find(Container among, String name) {
        for (Component each : among.getComponents()) {
            if (name.equals(each.getName()) && each.isShowing()) {
                return each;
            }
            Component found = each instanceof Container inner ? find(inner, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
