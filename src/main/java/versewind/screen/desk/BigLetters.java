package versewind.screen.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * Text in letters made of cells, five dots high, to be read from the bench in poor light. Small letters are written as
 * capitals and accents are left out.
 */
final class BigLetters {

    /** Rows of a letter at its smallest. */
    static final int DOTS_HIGH = 5;

    /** A letter a line: the letter, then its five rows from the top. */
    private static final String TABLE = """
        A .##. #..# #### #..# #..#
        B ###. #..# ###. #..# ###.
        C .### #... #... #... .###
        D ###. #..# #..# #..# ###.
        E #### #... ###. #... ####
        F #### #... ###. #... #...
        G .#### #.... #.### #...# .####
        H #..# #..# #### #..# #..#
        I ### .#. .#. .#. ###
        J ..## ...# ...# #..# .##.
        K #..# #.#. ##.. #.#. #..#
        L #... #... #... #... ####
        M #...# ##.## #.#.# #...# #...#
        N #...# ##..# #.#.# #..## #...#
        O .##. #..# #..# #..# .##.
        P ###. #..# ###. #... #...
        Q .##. #..# #..# #.## .###
        R ###. #..# ###. #.#. #..#
        S .### #... .##. ...# ###.
        T ##### ..#.. ..#.. ..#.. ..#..
        U #..# #..# #..# #..# .##.
        V #...# #...# #...# .#.#. ..#..
        W #...# #...# #.#.# ##.## #...#
        X #...# .#.#. ..#.. .#.#. #...#
        Y #...# .#.#. ..#.. ..#.. ..#..
        Z #### ...# .##. #... ####
        0 #### #..# #..# #..# ####
        1 .#. ##. .#. .#. ###
        2 ###. ...# .##. #... ####
        3 ###. ...# .##. ...# ###.
        4 #..# #..# #### ...# ...#
        5 #### #... ###. ...# ###.
        6 #### #... #### #..# ####
        7 #### ...# ..#. .#.. .#..
        8 .##. #..# .##. #..# .##.
        9 .##. #..# .### ...# .##.
        - ... ... ### ... ...
        + ... .#. ### .#. ...
        . . . . . #
        , .. .. .. .# #.
        : . # . # .
        ' # # . . .
        ! # # # . #
        ? ###. ...# .##. .... .#..
        / ....# ...#. ..#.. .#... #....
        ( .# #. #. #. .#
        ) #. .# .# .# #.
        & .##.. #..#. .##.# #..#. .##.#
        """;

    private static final Map<Integer, String[]> LETTERS = letters();

    private static final Map<Integer, String> WRITTEN_AS =
            Map.of(0xC6, "AE", 0x152, "OE", 0xD8, "O", 0x141, "L", 0x110, "D");

    private final List<String[]> text;

    private BigLetters(List<String[]> text) {
        this.text = text;
    }

    private static Map<Integer, String[]> letters() {
        Map<Integer, String[]> letters = new HashMap<>();
        TABLE.lines()
                .forEach(line ->
                        letters.put((int) line.charAt(0), line.substring(2).split(" ")));
        letters.put((int) ' ', new String[] {"...", "...", "...", "...", "..."});
        return letters;
    }

    /** A text in big letters; empty if there is nothing to show, or one of its letters has no form. */
    static Optional<BigLetters> of(String text) {
        String capitals = text.strip()
                .toUpperCase(Locale.ROOT)
                .codePoints()
                .mapToObj(Text::typewritten)
                .collect(Collectors.joining())
                .toUpperCase(Locale.ROOT);
        List<String[]> letters = new ArrayList<>();
        for (int point : capitals.codePoints().toArray()) {
            for (int letter : WRITTEN_AS
                    .getOrDefault(point, Character.toString(point))
                    .codePoints()
                    .toArray()) {
                if (!LETTERS.containsKey(letter)) {
                    return Optional.empty();
                }
                letters.add(LETTERS.get(letter));
            }
        }
        return letters.isEmpty() ? Optional.empty() : Optional.of(new BigLetters(letters));
    }

    /**
     * How large a dot is.
     *
     * @param columns cells that it is wide
     * @param rows cells that it is high
     */
    record Dot(int columns, int rows) {}

    /** Columns that the text takes. */
    int columns(Dot dot) {
        int dots = text.stream().mapToInt(letter -> letter[0].length() + 1).sum() - 1;
        return dots * dot.columns();
    }

    /** The first of some sizes in which it fits. */
    Optional<Dot> fitting(List<Dot> dots, int columns) {
        return dots.stream().filter(dot -> columns(dot) <= columns).findFirst();
    }

    /** Writes it with its upper left corner in a cell. */
    void paint(Frame frame, int x, int y, Dot dot, Marks marks, Style style) {
        String cell = Mark.FULL.in(marks).repeat(dot.columns());
        int at = x;
        for (String[] letter : text) {
            for (int row = 0; row < DOTS_HIGH * dot.rows(); row++) {
                String dots = letter[row / dot.rows()];
                for (int i = 0; i < dots.length(); i++) {
                    if (dots.charAt(i) == '#') {
                        frame.write(at + i * dot.columns(), y + row, cell, style);
                    }
                }
            }
            at += (letter[0].length() + 1) * dot.columns();
        }
    }
}
