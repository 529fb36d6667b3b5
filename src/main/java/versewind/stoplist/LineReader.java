package versewind.stoplist;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Goes through a list from top to bottom, and tells of every text what it is. */
final class LineReader {

    private static final Pattern PLUS = Pattern.compile("[\\p{L}\\d.]\\s?\\+\\s?[\\p{L}\\d]");
    private static final Pattern ONLY_MANUAL = Pattern.compile("(?i)^(?:manuale?|manuaal)\\b");
    private static final Pattern AT_END = Pattern.compile("[\\s:.*-]+$");

    /** "Hoofdwerk - Bovenwerk"; "II - Manuale" and "Manual - Oberwerk" are headings. */
    private static final Pattern DASHED_PAIR =
            Pattern.compile("(?!(?i:manua|clav|klav))(?![IVX]+\\b)\\p{L}{3,}\\.?\\s-\\s\\p{L}{3,}\\.?");

    private static final int LONGEST_PAIR = 16;
    private static final Pattern HALF = Pattern.compile(
            "(?i)(?:mano|lado)\\s+(izquierda|derecha).{0,12}|(m\\.?\\s?[id]\\.?)|(bajos|tiples|bassi|soprani)");

    private final ListStyle style;
    private final ParsedLines gathered = new ParsedLines();
    private final PlayingAids aids;

    private LineReader(ListStyle style) {
        this.style = style;
        this.aids = new PlayingAids(gathered, style.language());
    }

    /** What the rows of a list say. */
    static ParsedLines of(List<Grid.Row> rows, ListStyle style) {
        LineReader reading = new LineReader(style);
        new Columns(reading, rows).read();
        return reading.gathered;
    }

    /** Whether a text heads one half of a keyboard. */
    static boolean isHalf(String text) {
        return HALF.matcher(text.strip()).matches();
    }

    /** Whether a text is the heading of a division or of another part. */
    boolean isHeading(String text) {
        return heading(text).isPresent() || section(text).isPresent() || isHalf(text);
    }

    private Optional<SectionWord> section(String text) {
        return SectionWord.read(text, style.language()).filter(each -> each.kind() != SectionWord.Kind.TITLE);
    }

    private Optional<DivisionHeading> heading(String text) {
        Optional<DivisionHeading> heading = DivisionHeading.read(text, style.language());
        boolean mayBeStop = heading.isPresent()
                && !style.pitched()
                && heading.get().word().role().matches("bombarde|other|echo|positive")
                && Lexicon.get()
                        .exact(AT_END.matcher(text).replaceAll(""), style.setting())
                        .isPresent();
        return mayBeStop ? Optional.empty() : heading;
    }

    /** Reads a text, and says in which part of the list whatever follows stands. */
    Section text(String text, int line, Section section) {
        if (isHalf(text)) {
            return gathered.opened(section, line).ofHalf(Spelling.unnumbered(text));
        }
        Optional<SectionWord> word = SectionWord.read(text, style.language());
        if (word.isPresent()) {
            return part(word.get(), text, line, section);
        }
        Optional<DivisionHeading> heading = heading(text);
        if (heading.isEmpty() || isPair(text, section)) {
            CouplerLine couplers = aids.couplers(text, section);
            if (!couplers.couplers().isEmpty()) {
                aids.take(couplers, line, section);
                return section;
            }
        }
        if (heading.isPresent()) {
            return goingOn(heading.get().inline(), line, gathered.open(heading.get(), line));
        }
        if (Tremulants.isOne(text) && !Pitches.isMarked(text)) {
            aids.tremulants(text, line, section);
            return section;
        }
        if (section.kind().isPresent()) {
            aids.other(text, line, section.kind().get());
            return section;
        }
        return new StopsOfLine(gathered, aids, style, line, section).read(text);
    }

    /** Reads what follows a heading on its line. */
    private Section goingOn(String inline, int line, Section section) {
        return inline.isEmpty() ? section : text(inline, line, section);
    }

    private Section part(SectionWord word, String text, int line, Section section) {
        if (isOnlyManual(word)) {
            String name = Spelling.unnumbered(Compass.without(text).replaceAll("[(\\[].*$", ""));
            return gathered.openManual(name, Compass.keys(text, false), line);
        }
        if (word.kind() == SectionWord.Kind.TITLE) {
            gathered.leaveOut(line, word.head(), "a title", Unread.Weight.NOTE);
            return goingOn(word.inline(), line, section);
        }
        return aids.part(word, line, section);
    }

    /** "Manuale" above the first stops: the manual of an organ that has one. Followed by a heading, it stays empty. */
    private boolean isOnlyManual(SectionWord word) {
        return word.kind() == SectionWord.Kind.TITLE
                && word.inline().isEmpty()
                && gathered.divisions().isEmpty()
                && ONLY_MANUAL.matcher(word.head().strip()).find();
    }

    /** Whether what could be a heading joins two divisions: "I/P", "Ped + I", and among couplers "II-Ped." too. */
    private static boolean isPair(String text, Section section) {
        boolean among = !section.isElsewhere();
        return text.contains("/")
                || PLUS.matcher(text).find()
                || (among && DASHED_PAIR.matcher(text.strip()).matches())
                || (among && text.length() < LONGEST_PAIR && text.matches(".*\\S[-+]\\S.*"));
    }

    /** Opens a division that the list gives a name of its own. */
    Section openNamed(String name, int line) {
        DivisionWord word = new DivisionWord("other", OptionalInt.empty(), false, name);
        return gathered.open(
                new DivisionHeading(Spelling.unnumbered(name), word, Optional.empty(), OptionalInt.empty(), ""), line);
    }

    /** Whether a text names a stop with its pitch. */
    boolean isPitchedStop(String text) {
        return StopLine.isPitchedStop(text, style);
    }

    /** Whether a text may be the heading of a division with a name that nobody else gives one. */
    boolean mayNameDivision(String text) {
        StopLine stop = StopLine.of(text, style);
        return style.pitched()
                && stop.mark() == StopLine.Mark.NONE
                && Spelling.words(text).size() <= 3
                && !text.matches(".*\\d.*")
                && Lexicon.get().find(stop.name(), style.setting()).isEmpty()
                && !PistonLine.isOfPistons(text);
    }
}
