package versewind.screen.plan;

import java.util.List;
import versewind.rules.Advice;
import versewind.rules.Finding;
import versewind.rules.Touch;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * The touch of the verse where we are, and the weightiest finding in it, in a row. Where the finding is long, less is
 * said of the touch, or nothing.
 */
final class AdviceLine {

    /** Columns for how many more findings there are. */
    private static final int MORE = 12;

    /** The same in words. */
    private static final int SPOKEN_MORE = 16;

    private AdviceLine() {}

    /** Rows in which the weightiest finding is said to its end. */
    static int rows(State state, PlanEdit work, int columns) {
        List<Finding> findings = Advice.on(work.sound()).mentions(work.plan(), work.place());
        return findings.isEmpty()
                ? 1
                : Text.wrapped(words(findings.get(0)), room(state, findings, columns))
                        .size();
    }

    /** "caution: The lead is lost.". */
    static String words(Finding finding) {
        return FindingWords.word(finding) + ": " + finding.sentence();
    }

    static void paint(Frame frame, State state, PlanEdit work, int y, int rows) {
        Advice advice = Advice.on(work.sound());
        Touch touch = advice.touch(work.plan(), work.place());
        List<Finding> findings = advice.mentions(work.plan(), work.place());
        String manner = touch.manner().word();
        String held = touch.words();
        if (findings.isEmpty()) {
            frame.write(1, y, held, Style.TEXT);
            return;
        }
        Finding first = findings.get(0);
        String more = findings.size() == 1 ? "" : more(state, findings.size() - 1);
        if (rows > 1) {
            List<String> lines = Text.wrapped(words(first), room(state, findings, frame.width() - 2));
            Box.write(frame, 1, y, lines, rows, Style.TEXT);
            frame.write(1, y, FindingWords.word(first) + ": ", FindingWords.style(first));
            int last = Math.min(rows, lines.size()) - 1;
            frame.write(1 + Text.columns(lines.get(last)), y + last, more, Style.FAINT);
            return;
        }
        int room = frame.width() - 2 - Text.columns(words(first) + more);
        String wall = state.marks().between();
        int x = 1;
        for (String before : List.of(held, manner)) {
            if (x == 1 && Text.columns(before + wall) <= room) {
                x = frame.write(x, y, before, Style.TEXT);
                x = frame.write(x, y, wall, Style.FAINT);
            }
        }
        x = frame.write(x, y, FindingWords.word(first) + ": ", FindingWords.style(first));
        int left = frame.width() - 1 - x - Text.columns(more);
        x = frame.write(x, y, shortened(first.sentence(), left, Mark.CUT.in(state.marks())), Style.TEXT);
        frame.write(x, y, more, Style.FAINT);
    }

    /** Columns of the finding. */
    private static int room(State state, List<Finding> findings, int columns) {
        int more = findings.size() == 1 ? 0 : state.isSpoken() ? SPOKEN_MORE : MORE;
        return columns - more;
    }

    private static String more(State state, int others) {
        return state.isSpoken() ? " And " + others + " more: f." : " (" + others + " more: f)";
    }

    /** The sentence as far as there is room, cut after a word. */
    private static String shortened(String sentence, int columns, String cut) {
        return Text.columns(sentence) <= columns
                ? sentence
                : Text.wrapped(sentence, columns - Text.columns(cut) - 1).get(0) + " " + cut;
    }
}
