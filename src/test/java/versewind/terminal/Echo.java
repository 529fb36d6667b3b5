package versewind.terminal;

import java.util.ArrayList;
import java.util.List;
import versewind.screen.Drawing;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Style;

/** A program that shows every input it gets, the last ones at the bottom. Q ends it, ! throws. */
public final class Echo {

    private Echo() {}

    public static void main(String[] arguments) {
        try (Console console = Console.open()) {
            echo(console);
        } catch (NoTerminalException e) {
            System.err.println(e.getMessage());
            System.exit(2);
        }
    }

    private static void echo(Console console) {
        List<String> heard = new ArrayList<>();
        Event input = console.size();
        while (!isEnd(input)) {
            if (isKey(input, '!')) {
                throw new IllegalStateException("the bellows are empty");
            }
            heard.add(words(input));
            console.paint(frame(console, heard));
            input = console.inbox().next();
        }
        // After a hangup the terminal is gone; what is said here goes where the caller has led the errors.
        System.err.println("kept " + heard.size() + " after " + words(input));
    }

    private static boolean isEnd(Event input) {
        return input instanceof Event.Hangup || isKey(input, 'Q');
    }

    private static boolean isKey(Event input, char character) {
        return input instanceof Event.Press press && press.key().character() == character;
    }

    private static Frame frame(Console console, List<String> heard) {
        Frame frame = new Frame(console.size().columns(), console.size().rows());
        Drawing.write(frame, 0, 0, "Echo " + (console.utf8() ? "\u2192 UTF-8" : "ASCII"), Style.HEADING);
        int rows = frame.height() - 2;
        List<String> last = heard.subList(Math.max(0, heard.size() - rows), heard.size());
        for (int i = 0; i < last.size(); i++) {
            Drawing.write(frame, 0, i + 1, last.get(i), Style.TEXT);
        }
        int styleX = 20;
        for (Style style : Style.values()) {
            Drawing.write(frame, styleX, frame.height() - 1, style.name().substring(0, 3), style);
            styleX += 4;
        }
        return frame;
    }

    static String words(Event input) {
        if (input instanceof Event.Press press) {
            return words(press.key());
        }
        if (input instanceof Event.Paste paste) {
            return "paste<" + paste.text().replace("\n", "|") + ">";
        }
        if (input instanceof Event.Resize resize) {
            return "size<" + resize.columns() + "x" + resize.rows() + ">";
        }
        return "hangup";
    }

    private static String words(Key key) {
        String name = key.named() == Key.Named.CHARACTER
                ? Character.toString(key.character())
                : key.named().name();
        return "key<" + (key.control() ? "control " : "") + name + ">";
    }
}
