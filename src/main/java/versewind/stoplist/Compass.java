package versewind.stoplist;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Division;
import versewind.stoplist.Token.Kind;

/** The compass of a keyboard as a heading gives it, "C-g3", "CC to A", "56 notes", and of a stop: "from tenor C". */
final class Compass {

    private static final TokenForm NOTES = TokenForm.of("## [-]? <keys> [.]?");
    private static final TokenForm SPAN = TokenForm.of(
            "<begins> =the? <middle> <key_of_stop> ~[#]? octave*",
            "<lowest_key> ~octave* [-]|<span> <key_name> ~[#\u266f]? octave*",
            "<lowest_key> ~octave* [,] =d ~octave* [-]|<span> <key_name> ~[#\u266f]? octave*",
            "<lowest_key> ~octave* =t [/] =m <key_name> ~[#\u266f]? octave*");
    private static final TokenForm OF_STOP = TokenForm.of(
            "<begins> [.]? =the? <middle>? [.]? <key_of_stop> ~[#]? ~octave*",
            "<middle> [.]? <key_of_stop>",
            "<low_key_of_stop> ~[#]? ~octave* [-] <key_of_stop> ~[#]? ~octave ~octave*");
    private static final TokenForm BOTTOM = TokenForm.of("<bottom>", "=t ~[.] ~=c ~[.]?");
    private static final TokenForm GROOVED = TokenForm.of("<grooved>");
    private static final String STEPS = "c d ef g a h";
    private static final int OCTAVE = 12;
    private static final int SMALL_C = Division.BOTTOM_KEY + OCTAVE;

    private Compass() {}

    private static int span(Line line, int token) {
        int length = Pitches.isApart(line, token, "") ? SPAN.at(line, token) : 0;
        return length > 0 && Character.isLetter(line.after(token + length - 1)) ? 0 : length;
    }

    /** A text without what it says of a compass. */
    static String without(String text) {
        Line line = new Line(text);
        return line.without(line.all(i -> Math.max(NOTES.at(line, i), span(line, i))), ' ');
    }

    /** The number of keys, if it is said and can be. */
    static OptionalInt keys(String text, boolean isPedal) {
        Line line = new Line(text);
        int notes = NOTES.in(line);
        if (notes >= 0) {
            return sensible(Integer.parseInt(line.at(notes).text()), isPedal);
        }
        return IntStream.range(0, line.size())
                .filter(i -> span(line, i) > 0)
                .mapToObj(i -> sensible(top(line, i + span(line, i)) - Division.BOTTOM_KEY + 1, isPedal))
                .findFirst()
                .orElse(OptionalInt.empty());
    }

    /**
     * What is said of all keyboards above the first division: "Compass: manuals 58 notes, pedals 30 notes".
     *
     * @param isPedal whether of the pedal or of the manuals
     */
    static OptionalInt ofAll(List<Unread> notes, boolean isPedal, String language) {
        boolean isOfPedal = false;
        boolean isKnown = false;
        int last = 0;
        for (Unread note : notes) {
            if (!note.why().equals(Unread.BEFORE)) {
                continue;
            }
            isKnown &= note.line() == last;
            last = note.line();
            Line line = new Line(note.text());
            for (int i = 0; i < line.size(); i++) {
                boolean pedal = DivisionWord.at(List.of(line.at(i).plain()), 0, language)
                        .filter(each ->
                                each.word().isPedal() && each.word().words().length() > 2)
                        .isPresent();
                isOfPedal = pedal || (isOfPedal && !line.is(i, "all keyboards"));
                isKnown |= pedal || line.is(i, "all keyboards");
                OptionalInt keys = isKnown && isOfPedal == isPedal && NOTES.at(line, i) > 0
                        ? sensible(Integer.parseInt(line.at(i).text()), isPedal)
                        : OptionalInt.empty();
                if (keys.isPresent()) {
                    return keys;
                }
            }
        }
        return OptionalInt.empty();
    }

    /** True if a text gives the compass of several keyboards: "manuals 58 notes, pedals 30 notes". */
    static boolean isOfSeveral(String text) {
        Line line = new Line(text);
        return IntStream.range(0, line.size())
                        .filter(i -> NOTES.at(line, i) > 0)
                        .count()
                > 1;
    }

    /** The key that a span ends with; 0 where it does not say the octave. */
    private static int top(Line line, int end) {
        int key = end - 1;
        while (!line.is(key, Kind.WORD)) {
            key--;
        }
        boolean sharp = line.isSign(key + 1, "#\u266f") || line.at(key).plain().endsWith("is");
        String octave = line.part(key + (line.isSign(key + 1, "#\u266f") ? 2 : 1), end);
        char letter = line.at(key).plain().charAt(0);
        boolean syllable =
                line.at(key).text().length() > 1 && !line.at(key).plain().matches("[a-h](is|b)");
        if (octave.isEmpty() || syllable) {
            return 0;
        }
        int octaves = Character.isDigit(octave.charAt(0))
                ? Character.digit(octave.charAt(0), 10)
                : octave.replace("\"", "''").replace("\u00b0", "").length();
        return SMALL_C + OCTAVE * octaves + (letter == 'b' ? 10 : STEPS.indexOf(letter)) + (sharp ? 1 : 0);
    }

    private static OptionalInt sensible(int keys, boolean isPedal) {
        boolean possible = isPedal ? keys >= 12 && keys <= 37 : keys >= 24 && keys <= 73;
        return possible ? OptionalInt.of(keys) : OptionalInt.empty();
    }

    /** Number of tokens of a compass at a token of a stop's text: "from tenor C", "C-f'"; 0 if there is none. */
    static int ofStop(Line line, int token) {
        if (GROOVED.at(line, token) > 0) {
            return line.size() - token;
        }
        int length = Math.max(OF_STOP.at(line, token), BOTTOM.at(line, token));
        return length > 0 && Character.isLetter(line.after(token + length - 1)) ? 0 : length;
    }

    /** True if a text says from which key a stop begins or whose basses it has, and no more: "grooved to Gedackt". */
    static boolean isOfStop(String text) {
        Line line = new Line(text.replaceAll("[()\\[\\]]", " ").strip());
        return line.size() > 0 && ofStop(line, 0) == line.size();
    }

    /** True if a remark says from which key a stop begins, or whose basses it has. */
    static boolean isSaid(String remark) {
        Line line = new Line(remark);
        return WordList.of("part of compass").in(remark)
                || line.tokens().stream().anyMatch(each -> each.is("middle"))
                || !line.all(i -> ofStop(line, i)).isEmpty();
    }

    /** The half of the keyboard that a remark tells, alone or beside its keys, "Bass, C-h"; "" for none. */
    static String half(String remark) {
        List<String> parts = List.of(remark.split(",\\s*", -1));
        List<String> halves = parts.stream().filter(StopLine::isHalf).toList();
        boolean others = parts.stream()
                .allMatch(each ->
                        StopLine.isHalf(each) || isOfStop(each) || without(each).isBlank());
        return halves.size() == 1 && others ? halves.get(0) : "";
    }
}
