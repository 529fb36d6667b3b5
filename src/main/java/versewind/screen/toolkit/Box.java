package versewind.screen.toolkit;

import java.util.List;

/**
 * A blank rectangle in the middle of the screen with a heading, for what lies over the plan.
 *
 * @param x first column inside
 * @param y first row inside, under the heading
 * @param width columns inside
 * @param height rows inside
 */
public record Box(int x, int y, int width, int height) {

    /** Clears the place for a box and draws its edge. */
    public static Box open(Frame frame, String title, int wantedWidth, int wantedHeight) {
        int width = Math.min(wantedWidth, frame.width() - 4);
        int height = Math.min(wantedHeight, frame.height() - 4);
        int left = (frame.width() - width) / 2 - 2;
        // What is read aloud stands alone, and below it what is said.
        int top = frame.marks() == Marks.WORDS ? 0 : (frame.height() - height) / 2 - 1;
        frame.clear(left, top, width + 4, height + 2);
        String rule = frame.mark(Mark.RULE).repeat(width + 4);
        frame.write(left, top, rule, Style.FAINT);
        frame.write(left + 2, top, " " + frame.fit(title, width - 2) + " ", Style.HEADING);
        frame.write(left, top + height + 1, rule, Style.FAINT);
        frame.caret(-1, -1);
        return new Box(left + 2, top + 1, width, height);
    }

    public int end() {
        return x + width;
    }

    /** Some rows of it, the first of them so many under its own first. */
    public Box rows(int under, int rows) {
        return new Box(x, y + under, width, rows);
    }

    /** Writes the first of some lines, so many at most, one under the other. */
    public static void write(Frame frame, int x, int y, List<String> lines, int most, Style style) {
        for (int i = 0; i < Math.min(most, lines.size()); i++) {
            frame.write(x, y + i, lines.get(i), style);
        }
    }

    /** Writes lines one under the other. */
    public void write(Frame frame, int firstY, List<String> lines, Style style) {
        write(frame, x, firstY, lines, lines.size(), style);
    }
}
