package versewind.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;

/**
 * Paints frames on Lanterna's own screen, in the colours of a window: dark ink on white paper. Not thread-safe.
 *
 * <p>Every pair of colours has a contrast of at least 4.5 to 1. Source: Web Content Accessibility Guidelines 2.2,
 * success criterion 1.4.3.
 */
final class ScreenPainter {

    static final TextColor.RGB INK = new TextColor.RGB(0x10, 0x10, 0x10);
    static final TextColor.RGB PAPER = new TextColor.RGB(0xFF, 0xFF, 0xFF);

    /** Lanterna has no dim attribute. */
    static final TextColor.RGB DIM_INK = new TextColor.RGB(0x60, 0x60, 0x60);

    private static final TextColor.RGB GREEN = new TextColor.RGB(0, 0x64, 0);
    private static final TextColor.RGB MAGENTA = new TextColor.RGB(0x80, 0, 0x80);

    /** The eight colours in ANSI order; the pale ones are backgrounds. */
    private static final TextColor.RGB[] COLOURS = {
        new TextColor.RGB(0, 0, 0),
        new TextColor.RGB(0xA8, 0, 0),
        new TextColor.RGB(0, 0x64, 0),
        new TextColor.RGB(0xFF, 0xD8, 0x4D),
        new TextColor.RGB(0, 0, 0xA0),
        new TextColor.RGB(0x80, 0, 0x80),
        new TextColor.RGB(0x8C, 0xE6, 0xE6),
        new TextColor.RGB(0xE6, 0xE6, 0xE6)
    };

    private final Screen screen;
    private final Palette palette;
    private final Map<Integer, TextCharacter> cells = new HashMap<>();

    ScreenPainter(Screen screen, Palette palette) {
        this.screen = screen;
        this.palette = palette;
    }

    /** Paints what has changed since the last frame. */
    void paint(Frame frame) throws IOException {
        screen.doResizeIfNecessary();
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                if (frame.character(x, y) != Frame.SECOND_HALF) {
                    screen.setCharacter(x, y, cell(frame.character(x, y), frame.style(x, y)));
                }
            }
        }
        boolean caret = frame.caretX() >= 0;
        screen.setCursorPosition(caret ? new TerminalPosition(frame.caretX(), frame.caretY()) : null);
        screen.refresh();
    }

    /** A cell as Lanterna has it; kept, since making one costs it microseconds. */
    private TextCharacter cell(int character, Style style) {
        return cells.computeIfAbsent(character << 8 | style.ordinal(), any -> cell(character, palette.look(style)));
    }

    private static TextCharacter cell(int character, TextAttributes look) {
        EnumSet<SGR> attributes = EnumSet.noneOf(SGR.class);
        add(attributes, look, TextAttributes.BOLD, SGR.BOLD);
        add(attributes, look, TextAttributes.UNDERLINE, SGR.UNDERLINE);
        add(attributes, look, TextAttributes.REVERSE, SGR.REVERSE);
        return TextCharacter.fromString(Character.toString(character), foreground(look), background(look), attributes)[
                0];
    }

    private static void add(EnumSet<SGR> attributes, TextAttributes look, int attribute, SGR sgr) {
        if ((look.attributes() & attribute) != 0) {
            attributes.add(sgr);
        }
    }

    /** The colour of a character. */
    static TextColor.RGB foreground(TextAttributes look) {
        if (look.foreground() != TextAttributes.OWN) {
            return switch (look.foreground()) {
                case Palette.GREEN -> GREEN;
                case Palette.MAGENTA -> MAGENTA;
                default -> COLOURS[look.foreground()];
            };
        }
        return (look.attributes() & TextAttributes.DIM) != 0 ? DIM_INK : INK;
    }

    /** The colour behind it. */
    static TextColor.RGB background(TextAttributes look) {
        return look.background() == TextAttributes.OWN ? PAPER : COLOURS[look.background()];
    }
}
