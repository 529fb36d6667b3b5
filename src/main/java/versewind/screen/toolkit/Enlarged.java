package versewind.screen.toolkit;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A frame painted larger on another: each cell becomes two columns and three rows, its character a form of four by six
 * quarters of cells (Unicode, Block Elements). No terminal needs to know larger letters for that. Small letters are
 * written as capitals and accents are left out; a character without a form is written as it is.
 */
public final class Enlarged {

    public static final int COLUMNS = 2;
    public static final int ROWS = 3;

    /** A quarter is filled at upper left 1, upper right 2, lower left 4, lower right 8. */
    private static final String QUARTERS = " ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█";

    /** The eighths of a cell from the left, from the whole to one. */
    private static final String EIGHTHS = "█▉▊▋▌▍▎▏";

    /** A character, then its rows from the top. */
    private static final String TABLE = """
        A .#. #.# ### #.# #.#, B ##. #.# ##. #.# ##., C .## #.. #.. #.. .##, D ##. #.# #.# #.# ##.
        E ### #.. ##. #.. ###, F ### #.. ##. #.. #.., G .## #.. #.# #.# .##, H #.# #.# ### #.# #.#
        I ### .#. .#. .#. ###, J ..# ..# ..# #.# .#., K #.# #.# ##. #.# #.#, L #.. #.. #.. #.. ###
        M #.# ### ### #.# #.#, N ##. #.# #.# #.# #.#, O .#. #.# #.# #.# .#., P ##. #.# ##. #.. #..
        Q .#. #.# #.# .#. ..#, R ##. #.# ##. #.# #.#, S .## #.. .#. ..# ##., T ### .#. .#. .#. .#.
        U #.# #.# #.# #.# ###, V #.# #.# #.# #.# .#., W #.# #.# ### ### #.#, X #.# #.# .#. #.# #.#
        Y #.# #.# .#. .#. .#., Z ### ..# .#. #.. ###, Ø .## #.# ### #.# ##., Ł .#. .#. ##. .#. .##
        0 ### #.# #.# #.# ###, 1 .#. ##. .#. .#. ###, 2 ##. ..# .#. #.. ###, 3 ##. ..# .#. ..# ##.
        4 #.# #.# ### ..# ..#, 5 ### #.. ##. ..# ##., 6 .## #.. ### #.# ###, 7 ### ..# .#. .#. .#.
        8 ### #.# ### #.# ###, 9 ### #.# ### ..# ##., . ... ... ... ... .#., - ... ... ### ... ...
        + ... .#. ### .#. ..., − ... ... ### ... ..., ± .#. ### .#. ... ###, / ..# ..# .#. #.. #..
        : ... .#. ... .#. ..., ; ... .#. ... .#. #.., ' .#. .#. ... ... ..., ’ .#. .#. ... ... ...
        ( .#. #.. #.. #.. .#., ) .#. ..# ..# ..# .#., ! .#. .#. .#. ... .#., ? ##. ..# .#. ... .#.
        & .#. #.# .#. #.# .##, = ... ### ... ### ..., × ... #.# .#. #.# ..., # #.# ### #.# ### #.#
        < ..# .#. #.. .#. ..#, > #.. .#. ..# .#. #.., % #.# ..# .#. #.. #.#, _ ... ... ... ... ###
        ● .##. #### #### #### .##., · ... ... .#. ... ..., … ... ... ... ... #.#, ┃ .# .# .# .# .# .#
        ▸ #.. ##. ### ##. #.., ◂ ..# .## ### .## ..#, ■ .... #### #### #### #### ...., ─ .... .... ....
        □ .... #### #..# #..# #### ...., ◆ .... .##. #### #### .##. ...., ◇ .... .##. #..# #..# .##. ....
        ▲ .... .##. .##. #### #### ...., △ .... .##. .##. #..# #### ...., ▼ .... #### #### .##. .##. ....
        ▽ .... #### #..# .##. .##. ....
        """;

    private static final Map<Integer, String[]> FORMS = forms();

    private Enlarged() {}

    private static Map<Integer, String[]> forms() {
        Map<Integer, String[]> forms = new HashMap<>();
        TABLE.lines().flatMap(line -> Stream.of(line.split(", "))).forEach(form -> {
            forms.put(form.codePointAt(0), form.substring(2).split(" "));
        });
        forms.put((int) ',', new String[] {"...", "...", "...", ".#.", "#.."});
        forms.put((int) ' ', new String[] {""});
        for (int lost = 0; lost < EIGHTHS.length(); lost++) {
            String row = "#".repeat((EIGHTHS.length() - lost + 1) / 2);
            forms.put(
                    (int) EIGHTHS.charAt(lost),
                    List.of(row, row, row, row, row, "").toArray(String[]::new));
        }
        return forms;
    }

    /** Paints a frame with its upper left corner in a cell of a larger one. */
    public static void paint(Frame small, Frame frame, int x, int y) {
        for (int row = 0; row < small.height(); row++) {
            for (int column = 0; column < small.width(); column++) {
                int character = small.character(column, row);
                if (character != Frame.SECOND_HALF) {
                    paint(character, small.style(column, row), frame, x + column * COLUMNS, y + row * ROWS);
                }
            }
        }
    }

    private static void paint(int character, Style style, Frame frame, int x, int y) {
        String[] form = FORMS.get(plain(character));
        for (int row = 0; row < ROWS; row++) {
            // a line under each of the rows would go through the letter
            Style of = style == Style.RESTING_CURSOR && row < ROWS - 1 ? Style.STRONG : style;
            StringBuilder cells = new StringBuilder();
            for (int column = 0; column < COLUMNS; column++) {
                cells.append(form == null ? ' ' : QUARTERS.charAt(quarters(form, column * 2, row * 2)));
            }
            frame.write(x, y + row, cells.toString(), of);
        }
        if (form == null) {
            frame.write(x, y + 1, Character.toString(character), style);
        }
    }

    private static int plain(int character) {
        String capital = Character.toString(character).toUpperCase(Locale.ROOT);
        return Normalizer.normalize(capital, Normalizer.Form.NFD).codePointAt(0);
    }

    private static int quarters(String[] form, int x, int y) {
        return dot(form, x, y) + 2 * dot(form, x + 1, y) + 4 * dot(form, x, y + 1) + 8 * dot(form, x + 1, y + 1);
    }

    private static int dot(String[] form, int x, int y) {
        return y < form.length && x < form[y].length() && form[y].charAt(x) == '#' ? 1 : 0;
    }
}
