package versewind.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.EnumSet;
import versewind.screen.toolkit.Frame;

/** Paints frames with Lanterna's own screen, against which the emitter is held. */
final class LanternaPainter {

    /** Lanterna has no dim; this stands for it. */
    private static final SGR DIM = SGR.ITALIC;

    private final Palette palette;
    private final DefaultVirtualTerminal terminal;
    private final Screen screen;

    LanternaPainter(int width, int height, Palette palette) throws IOException {
        this.palette = palette;
        this.terminal = new DefaultVirtualTerminal(new TerminalSize(width, height));
        this.screen = new TerminalScreen(terminal);
        screen.startScreen();
    }

    void paint(Frame frame) throws IOException {
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                if (frame.character(x, y) != Frame.SECOND_HALF) {
                    screen.setCharacter(x, y, cell(frame.character(x, y), palette.look(frame.style(x, y))));
                }
            }
        }
        boolean caret = frame.caretX() >= 0;
        screen.setCursorPosition(caret ? new TerminalPosition(frame.caretX(), frame.caretY()) : null);
        screen.refresh();
    }

    private static TextCharacter cell(int character, TextAttributes look) {
        EnumSet<SGR> attributes = EnumSet.noneOf(SGR.class);
        add(attributes, look, TextAttributes.BOLD, SGR.BOLD);
        add(attributes, look, TextAttributes.DIM, DIM);
        add(attributes, look, TextAttributes.UNDERLINE, SGR.UNDERLINE);
        add(attributes, look, TextAttributes.REVERSE, SGR.REVERSE);
        return TextCharacter.fromString(
                Character.toString(character), colour(look.foreground()), colour(look.background()), attributes)[0];
    }

    private static void add(EnumSet<SGR> attributes, TextAttributes look, int attribute, SGR sgr) {
        if ((look.attributes() & attribute) != 0) {
            attributes.add(sgr);
        }
    }

    private static TextColor colour(int index) {
        return index == TextAttributes.OWN
                ? TextColor.ANSI.DEFAULT
                : TextColor.ANSI.values()[index];
    }

    String character(int x, int y) {
        return terminal.getCharacter(x, y).getCharacterString();
    }

    TextAttributes look(int x, int y) {
        TextCharacter cell = terminal.getCharacter(x, y);
        int attributes = (cell.isBold() ? TextAttributes.BOLD : 0)
                | (cell.isItalic() ? TextAttributes.DIM : 0)
                | (cell.isUnderlined() ? TextAttributes.UNDERLINE : 0)
                | (cell.isReversed() ? TextAttributes.REVERSE : 0);
        return new TextAttributes(attributes, index(cell.getForegroundColor()), index(cell.getBackgroundColor()));
    }

    private static int index(TextColor colour) {
        return colour == TextColor.ANSI.DEFAULT ? TextAttributes.OWN : ((TextColor.ANSI) colour).ordinal();
    }

    boolean showsCaret() {
        return terminal.isCursorVisible();
    }

    TerminalPosition caret() {
        return terminal.getCursorPosition();
    }
}
