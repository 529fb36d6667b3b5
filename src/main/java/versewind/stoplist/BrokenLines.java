package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;

/** Entries that a narrow column broke into two lines or more: "Viole de" and "gambe 8'" below it. */
final class BrokenLines {

    private static final int MOST_PIECES = 4;
    private static final int MOST_SMALL = 3;
    private static final int LONGEST = 60;

    private BrokenLines() {}

    /** The lines, those of one entry joined; each with the number of its first. */
    static List<PageText.Numbered> joined(List<PageText.Numbered> lines) {
        List<PageText.Numbered> whole = new ArrayList<>();
        int pieces = 1;
        long small = lines.stream().filter(each -> isSmall(each.text())).count();
        boolean rare = small * MOST_SMALL < lines.size();
        for (PageText.Numbered each : lines) {
            int last = whole.size() - 1;
            String joint = last < 0 || pieces == MOST_PIECES
                    ? ""
                    : joint(whole.get(last).text(), each.text(), rare);
            if (joint.isEmpty()) {
                whole.add(last < 0 ? each : runOn(whole, each));
                pieces = 1;
            } else {
                PageText.Numbered first = whole.remove(last);
                whole.add(new PageText.Numbered(first.number(), joint));
                pieces++;
            }
        }
        return List.copyOf(whole);
    }

    /** What is left of a line when the end of an entry that began in the line before, after a comma, goes up to it. */
    private static PageText.Numbered runOn(List<PageText.Numbered> whole, PageText.Numbered next) {
        PageText.Numbered before = whole.get(whole.size() - 1);
        int comma = before.text().lastIndexOf(',');
        String begun = before.text().substring(comma + 1);
        String[] pieces = next.text().split("(?=[,;.])", 2);
        Line figures = new Line(pieces[0]);
        boolean isPitch = figures.size() > 0
                && Segments.figures(figures, 0) == figures.size()
                && !hasFigures(begun)
                && isNamedAlone(begun + " " + pieces[0]);
        String joint = comma < 0 || isOpen(before.text())
                ? ""
                : isPitch ? begun + " " + pieces[0].strip() : joint(begun, pieces[0], true);
        if (joint.isEmpty()) {
            return next;
        }
        String text = before.text().substring(0, comma + 1) + " " + joint.strip();
        whole.set(whole.size() - 1, new PageText.Numbered(before.number(), text));
        return new PageText.Numbered(next.number(), pieces.length > 1 ? pieces[1].substring(1) : "");
    }

    /** Two lines as the one that they were; "" where each stands for itself. */
    private static String joint(String before, String after, boolean rare) {
        String first = before.stripTrailing();
        String next = after.strip();
        if (first.isBlank() || next.isEmpty() || first.length() + next.length() > LONGEST) {
            return "";
        }
        boolean small = isSmall(next);
        boolean hyphen = first.endsWith("-") && first.length() > 2 && first.charAt(first.length() - 2) != ' ';
        if (hyphen && (small || new Line(next).is(0, Token.Kind.ROMAN))) {
            return small ? first.substring(0, first.length() - 1) + next : first + next;
        }
        Line line = new Line(first + " " + next);
        boolean opened = new Line(first).brackets().isEmpty() && isOpen(first) && !isOpen(line.text());
        int last = line.size() - 1;
        boolean unit = line.is(last, "feet") && line.is(last - 1, Token.Kind.NUMBER) && new Line(next).size() == 1;
        boolean open = rare && small && new Line(first).is(new Line(first).size() - 1, "end of name");
        boolean goesOn = small
                && !Composition.isBreak(next)
                && !hasFigures(first)
                && isNamedAlone(line.text())
                && (rare || !isNamedAlone(next));
        return opened || unit || open || goesOn ? line.text() : "";
    }

    private static boolean isSmall(String text) {
        return !text.isBlank() && Character.isLowerCase(text.strip().charAt(0));
    }

    private static boolean isOpen(String text) {
        Line line = new Line(text);
        return !line.brackets().equals(line.bracketsToEnd());
    }

    private static boolean hasFigures(String text) {
        return text.chars().anyMatch(Character::isDigit);
    }

    private static boolean isNamedAlone(String text) {
        StopLine stop = StopLine.of(text, ListStyle.PLAIN);
        return stop.mark() != StopLine.Mark.NONE
                && Lexicon.get().exact(stop.name(), NameContext.NONE).isPresent();
    }
}
