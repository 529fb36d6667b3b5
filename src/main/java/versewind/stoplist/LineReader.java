package versewind.stoplist;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Reads a list from top to bottom, and classifies every text in it. */
final class LineReader {

    private final ListStyle style;
    private final Readings readings;
    private final ParsedLines lines = new ParsedLines();
    private final PlayingAids aids;

    private LineReader(Readings readings) {
        this.style = readings.style;
        this.readings = readings;
        this.aids = new PlayingAids(lines, style.language());
    }

    /** Headings, each text read once. */
    static final class Readings {
        private final ListStyle style;
        private final Map<String, Optional<DivisionHeading>> headings = new HashMap<>();
        private final Map<String, Optional<SectionWord>> parts = new HashMap<>();

        Readings(ListStyle style) {
            this.style = style;
        }

        ListStyle style() {
            return style;
        }

        Optional<SectionWord> part(String text) {
            return parts.computeIfAbsent(
                    text, each -> SectionWord.read(each, style.language()).filter(part -> !isPitchedStop(part, each)));
        }

        /** "Kopula 4'": among couplers in one language, with a pitch a stop in another. */
        private boolean isPitchedStop(SectionWord part, String text) {
            Line line = new Line(text);
            return part.inline().isEmpty()
                    && (Pitches.isMarked(line)
                            || IntStream.range(1, line.size()).anyMatch(token -> Pitches.isBare(line, token)))
                    && Lexicon.get().exact(line.letters(), style.setting()).isPresent();
        }

        Optional<DivisionHeading> heading(String text) {
            return headings.computeIfAbsent(text, each -> DivisionHeading.read(each, style.language()));
        }

        /** True if the heading of a division is the name of a stop too, in a list that writes no pitches. */
        boolean mayBeStop(String text) {
            return !style.pitched()
                    && heading(text)
                            .filter(each ->
                                    WordList.of("soft role").has(each.word().role()))
                            .isPresent()
                    && Lexicon.get()
                            .exact(Spelling.trimmed(text, ":.*-"), style.setting())
                            .isPresent();
        }

        /** True if a text is the heading of a division or of another part. */
        boolean isHeading(String text) {
            return (heading(text).isPresent() && !mayBeStop(text))
                    || part(text)
                            .filter(each -> each.kind() != SectionWord.Kind.TITLE)
                            .isPresent()
                    || isHalf(text);
        }
    }

    /** Reads the rows of a list. */
    static ParsedLines of(List<Grid.Row> rows, Readings readings) {
        LineReader reader = new LineReader(readings);
        new Columns(reader, rows).read();
        return reader.lines;
    }

    /** True if a text heads one half of a keyboard. */
    static boolean isHalf(String text) {
        int colon = text.indexOf(':');
        return WordList.of("half heading").isAll(Spelling.words(colon > 0 ? text.substring(0, colon) : text));
    }

    ListStyle style() {
        return style;
    }

    Readings readings() {
        return readings;
    }

    ParsedLines lines() {
        return lines;
    }

    PlayingAids aids() {
        return aids;
    }

    boolean isHeading(String text) {
        return readings.isHeading(text);
    }

    /**
     * Reads a text, and says in which part of the list whatever follows stands; a text that gives nothing is listed as
     * left out.
     */
    Section text(String text, int line, Section section) {
        LineKind.Candidate candidate = new LineKind.Candidate(this, text, line, section);
        int before = lines.entries();
        LineKind kind = candidate.kind();
        Section next = kind.take(candidate);
        if (kind == LineKind.STOPS && !section.isBeforeDivisions()) {
            lines.division(section).noted(text);
        }
        if (lines.entries() == before) {
            lines.leaveOut(line, text, "no name found", Unread.Weight.NOTE);
        }
        return next;
    }

    /** Opens a division that the list gives a name of its own. */
    Section openNamed(String name, int line) {
        DivisionWord word = new DivisionWord("other", OptionalInt.empty(), false, name);
        return lines.open(
                new DivisionHeading(Spelling.unnumbered(name), word, Optional.empty(), OptionalInt.empty(), ""), line);
    }

    /** True if a text names a stop with its pitch. */
    boolean isPitchedStop(String text) {
        return StopLine.isPitchedStop(text, style);
    }

    /** True if a text may be the heading of a division with a name that nobody else gives one. */
    boolean mayNameDivision(String text) {
        StopLine stop = StopLine.of(text, style);
        return style.pitched()
                && readings.part(text).isEmpty()
                && stop.mark() == StopLine.Mark.NONE
                && Spelling.words(text).size() <= 3
                && text.chars().noneMatch(Character::isDigit)
                && Lexicon.get().find(stop.name(), style.setting()).isEmpty()
                && !PistonLine.isOfPistons(text);
    }
}
