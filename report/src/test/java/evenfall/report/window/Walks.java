package evenfall.report.window;

import evenfall.report.log.TrainingLog;
import evenfall.report.speech.Unspoken;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;

/**
 * Walks through the window in a program of its own, which has a screen: {@code Walks NAME LOG SPEED}. Ends with 0 if all went
 * as it should.
 */
final class Walks {

    private final Hands hands;
    private final CoachWindow window;
    private final CountDownLatch closed = new CountDownLatch(1);

    private Walks(Path log, double speed) throws Exception {
        hands = new Hands();
        window = new CoachWindow(TrainingLog.open(log), Unspoken.WISHED, speed, closed::countDown);
        window.open();
    }

    /** One of the walks. */
    public static void main(String[] args) throws Exception {
        int status = 1;
        Thread.setDefaultUncaughtExceptionHandler((thread, broke) -> {
            System.out.println("FAILED in " + thread.getName());
            broke.printStackTrace(System.out);
            Runtime.getRuntime().halt(1);
        });
        try {
            Walks walks = new Walks(Path.of(args[1]), Double.parseDouble(args[2]));
            switch (args[0]) {
                case "session" -> walks.session();
                case "again" -> walks.again();
                default -> throw new IOException("no walk is called " + args[0]);
            }
            status = 0;
        } catch (AssertionError e) {
            System.out.println("FAILED " + e.getMessage());
        }
        // A walk ends like a program that is killed: what is not on the disk by now is lost.
        Runtime.getRuntime().halt(status);
    }

    /** A whole turn, six landings, a cable that is pulled, a look back, and a hand-over; then the program is killed. */
    private void session() throws Exception {
        hands.await("the first key is the one to begin with", () -> {
            Component add = Hands.find("who.add");
            return add != null && add.isFocusOwner();
        });
        hands.click("who.rehearse");
        hands.awaitShown("who.person.Mirel");
        long firstPress = System.nanoTime();
        hands.key(KeyEvent.VK_1);
        hands.awaitText("feel.title", "Mirel");
        hands.click("feel.part.right.calf");
        hands.key(KeyEvent.VK_3);
        hands.awaitText("feel.answers", "right calf sore, 3 of 10");
        hands.key(KeyEvent.VK_F8);
        hands.awaitText("puton.pelvis", "200 samples a second");
        hands.key(KeyEvent.VK_ENTER);
        hands.await(
                "the routine is led", () -> hands.text("routine.instruction").matches(".*(bend|heel|still).*"));
        said("routine led");
        hands.awaitShown("drops.next");
        hands.key(KeyEvent.VK_B);
        hands.key(KeyEvent.VK_4);
        hands.hold("drops.surface.mat");
        hands.awaitText("drops.second", "both feet, 0.5 m");
        said("a landing " + (System.nanoTime() - firstPress) / 1_000_000 + " ms after the first press");
        hands.awaitText("drops.second", "Landing 6");
        hands.awaitText("drops.reasons", "leaned right");
        said("six landings");
        hands.click("rehearsal.unplug");
        hands.awaitText("banner", "is gone; look at the cable");
        hands.click("rehearsal.unplug");
        hands.awaitText("banner", "is back");
        hands.key(KeyEvent.VK_ESCAPE);
        said("cable pulled and put in again");
        long handOver = System.nanoTime();
        hands.key(KeyEvent.VK_F10);
        hands.awaitShown("who.person.Tovan");
        hands.key(KeyEvent.VK_2);
        hands.awaitText("feel.title", "Tovan");
        hands.key(KeyEvent.VK_ENTER);
        hands.awaitText("puton.pelvis", "200 samples a second");
        said("handed over in three presses, " + (System.nanoTime() - handOver) / 1_000_000 + " ms");
        hands.awaitText("state", "Recording");
        Thread.sleep(2500);
    }

    /** What was cut short is found; answers that are owed, a look back, pain, and the window is closed while it records. */
    private void again() throws Exception {
        hands.click("who.rehearse");
        hands.awaitText("banner", "A session of Tovan");
        hands.key(KeyEvent.VK_ESCAPE);
        said("what was cut short is found");
        hands.click("who.owed");
        hands.awaitText("owed.question", "Mirel");
        hands.click("owed.minutes.45");
        hands.key(KeyEvent.VK_6);
        hands.await("Mirel owes nothing", () -> !hands.text("owed.question").contains("Mirel"));
        said("effort answered");
        hands.click("owed.done");
        hands.click("who.back.Mirel");
        hands.awaitText("back.sentence", "6 landings");
        hands.click("back.row.6");
        hands.awaitText("back.detail", "both feet, 0.5 m");
        hands.key(KeyEvent.VK_DELETE);
        hands.awaitText("back.detail", "left out by the coach");
        said("looked back and left one out");
        hands.click("back.done");
        hands.click("who.person.Senka");
        hands.click("feel.part.left.knee");
        hands.click("feel.pain");
        hands.click("feel.number.4");
        hands.click("feel.on");
        hands.awaitText("stopped.title", "No drops today, Senka");
        said("pain before the first drop stops");
        hands.click("stopped.next");
        hands.click("who.person.Mirel");
        hands.click("feel.well");
        hands.awaitText("puton.pelvis", "200 samples a second");
        Thread.sleep(1500);
        window.close();
        closed.await();
        said("closed while it recorded");
    }

    private static void said(String what) {
        System.out.println("DONE " + what);
    }
}
