package versewind.terminal;

import com.googlecode.lanterna.terminal.swing.SwingTerminal;
import java.awt.EventQueue;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import versewind.cli.Commands;
import versewind.cli.Environment;
import versewind.cli.Reply;

/** The program in a window, played by events; in a process of its own, since the tests have no display. */
final class WindowProbe {

    private static final long PATIENCE_MS = 30_000;

    /** The colour of a verse that is led. */
    private static final int GREEN = 0x006400;

    private WindowProbe() {}

    /** Prints a line a finding: the library, then the file for a picture of the window. */
    public static void main(String[] arguments) {
        try {
            play(arguments[0], arguments[1]);
            System.exit(0);
        } catch (Exception e) {
            e.printStackTrace();
            System.exit(1);
        }
    }

    private static void play(String library, String picture) throws Exception {
        CompletableFuture<Reply> ended = CompletableFuture.supplyAsync(() -> Commands.run(
                List.of("--window", "--library", library, "harvest-festival"),
                new Environment(
                        Path.of(""),
                        Optional.empty(),
                        Map.of(),
                        InputStream.nullInputStream(),
                        StandardCharsets.UTF_8,
                        LocalDate.of(2026, 9, 28),
                        "")));
        await(() -> shown(ended, "Harvest Festival"));
        say("columns", terminal().getTerminalSize().getColumns());
        press(KeyEvent.VK_SPACE, ' ', 0);
        await(() -> shown(ended, "unsaved"));
        press(KeyEvent.VK_EQUALS, '+', KeyEvent.CTRL_DOWN_MASK);
        SwingTerminal small = terminal();
        await(() -> terminal() != small && shown(ended, "unsaved"));
        say("columns with larger letters", terminal().getTerminalSize().getColumns());
        press(KeyEvent.VK_N, 'n', 0);
        await(() -> shown(ended, "V1 "));
        BufferedImage[] seen = new BufferedImage[1];
        Robot robot = new Robot();
        await(() -> {
            seen[0] = robot.createScreenCapture(window().getBounds());
            return has(seen[0], GREEN);
        });
        ImageIO.write(seen[0], "png", new File(picture));
        EventQueue.invokeAndWait(() -> window().dispatchEvent(new WindowEvent(window(), WindowEvent.WINDOW_CLOSING)));
        await(() -> shown(ended, "unsaved changes"));
        press(KeyEvent.VK_X, 'x', 0);
        say("status", ended.get(PATIENCE_MS, TimeUnit.MILLISECONDS).status());
    }

    private static boolean has(BufferedImage picture, int colour) {
        return IntStream.range(0, picture.getWidth() * picture.getHeight())
                .anyMatch(i -> (picture.getRGB(i % picture.getWidth(), i / picture.getWidth()) & 0xFFFFFF) == colour);
    }

    private static void say(String what, int number) {
        System.out.println(what + ": " + number);
    }

    private static Window window() {
        return Window.getWindows()[0];
    }

    private static SwingTerminal terminal() {
        return (SwingTerminal) ((JFrame) window()).getContentPane();
    }

    /** Whether the window is there and complete; it is listed while it is still being made. */
    private static boolean isComplete() {
        return Window.getWindows().length > 0
                && window() instanceof JFrame frame
                && frame.getRootPane() != null
                && frame.getContentPane() instanceof SwingTerminal
                && frame.isShowing();
    }

    /** Whether some row of the window contains a text. */
    private static boolean shown(CompletableFuture<Reply> ended, String text) {
        if (ended.isDone()) {
            throw new IllegalStateException("it ended: " + ended.join().words());
        }
        if (!isComplete()) {
            return false;
        }
        int columns = terminal().getTerminalSize().getColumns();
        for (int y = 0; y < terminal().getTerminalSize().getRows(); y++) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < columns; x++) {
                row.append(terminal().newTextGraphics().getCharacter(x, y).getCharacterString());
            }
            if (row.indexOf(text) >= 0) {
                return true;
            }
        }
        return false;
    }

    private static void press(int code, char character, int modifiers) throws Exception {
        EventQueue.invokeAndWait(() -> {
            long now = System.currentTimeMillis();
            terminal().dispatchEvent(new KeyEvent(terminal(), KeyEvent.KEY_PRESSED, now, modifiers, code, character));
            terminal()
                    .dispatchEvent(new KeyEvent(
                            terminal(), KeyEvent.KEY_TYPED, now, modifiers, KeyEvent.VK_UNDEFINED, character));
        });
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS);
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("it did not come");
            }
            Thread.onSpinWait();
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }
}
