package versewind.terminal;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import versewind.screen.toolkit.Frame;

/**
 * What a window shows, without a window: its painter on Lanterna's virtual terminal, against which the emitter is held.
 */
final class WindowScreen {

    private final DefaultVirtualTerminal terminal;
    private final ScreenPainter painter;

    WindowScreen(int width, int height, Palette palette) throws IOException {
        terminal = new DefaultVirtualTerminal(new TerminalSize(width, height));
        Screen screen = new TerminalScreen(terminal);
        screen.startScreen();
        painter = new ScreenPainter(screen, palette);
    }

    void paint(Frame frame) throws IOException {
        painter.paint(frame);
    }

    String character(int x, int y) {
        return cell(x, y).getCharacterString();
    }

    /** Whether a cell looks in the window as one with these attributes does in a terminal. */
    boolean looksLike(int x, int y, TextAttributes look) {
        TextCharacter cell = cell(x, y);
        return cell.isBold() == has(look, TextAttributes.BOLD)
                && cell.isUnderlined() == has(look, TextAttributes.UNDERLINE)
                && cell.isReversed() == has(look, TextAttributes.REVERSE)
                && cell.getForegroundColor().equals(ScreenPainter.foreground(look))
                && looksEmptyLike(x, y, look);
    }

    /** Whether a blank cell looks so. */
    boolean looksEmptyLike(int x, int y, TextAttributes look) {
        return cell(x, y).getBackgroundColor().equals(ScreenPainter.background(look));
    }

    private static boolean has(TextAttributes look, int attribute) {
        return (look.attributes() & attribute) != 0;
    }

    private TextCharacter cell(int x, int y) {
        return terminal.getCharacter(x, y);
    }

    boolean showsCaret() {
        return terminal.isCursorVisible();
    }

    TerminalPosition caret() {
        return terminal.getCursorPosition();
    }
}
