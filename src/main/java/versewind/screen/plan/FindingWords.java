package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Severity;
import versewind.screen.state.PlanEdit;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/** A finding in words: where it is, how weighty, and in full with its mend. */
final class FindingWords {

    private FindingWords() {}

    /** The number of the hymn, or which it is. */
    static String hymn(Finding finding, PlanEdit work) {
        int hymn = finding.place().hymn();
        String number = work.plan().hymns().get(hymn).number();
        return number.isBlank() ? Integer.toString(hymn + 1) : number;
    }

    static String label(Finding finding, PlanEdit work) {
        return work.plan().verse(finding.place()).label();
    }

    /** "remark, 214 Amen: The Amen is about 6 dB softer than Last.". */
    static String words(Finding finding, PlanEdit work) {
        return word(finding) + ", " + hymn(finding, work) + " " + label(finding, work) + ": " + finding.sentence();
    }

    /** The severity, or that it is silenced. */
    static String word(Finding finding) {
        return finding.isSilenced() ? "ignored" : finding.severity().word();
    }

    static Style style(Finding finding) {
        if (finding.isSilenced()) {
            return Style.FAINT;
        }
        return finding.severity() == Severity.CAUTION ? Style.BAD : Style.NEAR;
    }

    /**
     * The finding and its mend in so many rows at most; where they are longer, both are shortened, the finding first.
     */
    static List<String> full(Frame frame, Finding finding, Optional<Mend> fix, int columns, int rows) {
        List<String> found = new ArrayList<>();
        if (frame.marks() != Marks.WORDS) { // in words the row itself holds all of it
            found.addAll(Text.wrapped(finding.sentence(), columns));
        }
        finding.silence()
                .filter(note -> !note.isBlank())
                .ifPresent(note -> found.addAll(Text.wrapped("Ignored: " + note, columns)));
        List<String> mend = fix.map(Mend::words)
                .map(words -> Text.wrapped("Fix: " + words, columns))
                .orElse(List.of());
        int mendRows = Math.min(mend.size(), Math.max(FindingsScreen.MEND_ROWS, rows - found.size()));
        List<String> lines = new ArrayList<>(first(frame, found, rows - mendRows, columns));
        lines.addAll(first(frame, mend, mendRows, columns));
        return lines;
    }

    /** The first lines of a text, with a mark where more would follow. */
    private static List<String> first(Frame frame, List<String> lines, int rows, int columns) {
        if (lines.size() <= rows || rows == 0) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, rows));
        first.set(rows - 1, frame.fit(String.join(" ", lines.subList(rows - 1, lines.size())), columns));
        return first;
    }
}
