package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import versewind.schema.DraftLine;
import versewind.schema.Field;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;

/**
 * Reads the particulars below a stop list: a line of the draft by its name, and what is written in some of its slots.
 */
final class Particulars {
    private static final Pattern LINE =
            Pattern.compile("\\s*(\\p{L}+)(?: " + Quotation.QUOTED.pattern() + ")?: (.*)", Pattern.DOTALL);
    private static final Pattern VALUE =
            Pattern.compile("([^\",]+) " + Quotation.QUOTED.pattern() + "(?:, |$)", Pattern.DOTALL);

    /** What fields were called in lists that were printed before. */
    private static final Map<String, String> FORMER =
            Map.of("Shakes", InstrumentFields.AFFECTED.label(), "Played", InstrumentFields.PLAYED_FROM.label());

    private final List<DraftLine> lines;
    private final List<String> troubles;

    /** Where the line before stands, so that of several with one name each gets its own. */
    private int last = -1;

    Particulars(List<DraftLine> lines, List<String> troubles) {
        this.lines = new ArrayList<>(lines);
        this.troubles = new ArrayList<>(troubles);
    }

    List<DraftLine> lines() {
        return lines;
    }

    List<String> troubles() {
        return troubles;
    }

    void read(int number, String text) {
        if (text.isBlank()) {
            return;
        }
        Matcher line = LINE.matcher(text.stripTrailing());
        Optional<RowKind> part = line.matches()
                ? Stream.of(RowKind.values())
                        .filter(each -> each.word().equals(line.group(1)))
                        .findFirst()
                : Optional.empty();
        if (part.isEmpty()) {
            trouble(number, "it names no part of an organ", text);
            return;
        }
        if (part.get() == RowKind.SURFACE) {
            lines.add(DraftLine.blank(RowKind.SURFACE));
            last = lines.size() - 2;
        }
        String name = line.group(2) == null ? "" : Quotation.inside(line.group(2));
        int at = find(part.get(), name, line.group(2) != null);
        if (at < 0) {
            trouble(number, "the list above has no such " + part.get().word().toLowerCase(Locale.ROOT), text);
            return;
        }
        last = at;
        write(number, at, line.group(3));
    }

    private int find(RowKind part, String name, boolean named) {
        OrganDraft draft = new OrganDraft(lines);
        for (int step = 1; step <= lines.size(); step++) {
            int at = Math.floorMod(last + step, lines.size());
            if (lines.get(at).part() == part && (!named || draft.fullName(at).equals(name))) {
                return at;
            }
        }
        return -1;
    }

    private void write(int number, int at, String values) {
        Matcher value = VALUE.matcher(values);
        int end = 0;
        while (value.find() && value.start() == end) {
            end = value.end();
            String word = value.group(1);
            Optional<Field<?, ?>> slot = lines.get(at).part().fields().stream()
                    .filter(each -> each.label().equals(word)
                            || FORMER.getOrDefault(word, "").equals(each.label()))
                    .findFirst();
            if (slot.isEmpty()) {
                trouble(number, "a " + lines.get(at).part().word() + " has no \"" + word + "\"", values);
                return;
            }
            lines.set(at, lines.get(at).with(slot.get(), Quotation.inside(value.group(2))));
        }
        if (end < values.length()) {
            trouble(number, "this is not a word and a text in quotation marks", values.substring(end));
        }
    }

    private void trouble(int number, String why, String text) {
        troubles.add("Line " + number + " cannot be read, for " + why + ": " + text.strip());
    }
}
