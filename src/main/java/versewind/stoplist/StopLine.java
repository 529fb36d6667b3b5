package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Stop;
import versewind.stoplist.Token.Kind;

/**
 * The text of one stop, taken apart: "3. Mixtur 4-5f. 1 1/3' (Zinn)" is a name, a pitch, ranks and a remark.
 *
 * @param name what is left when everything else is taken away; "" where nothing is
 * @param feet the pitches that are written
 * @param mark how surely the pitches are pitches
 * @param ranks the ranks that are written; 0 for none
 * @param numeral a Roman numeral that may be ranks or part of the name; "" for none
 * @param remarks what else is said
 */
record StopLine(String name, List<Footage> feet, Mark mark, int ranks, String numeral, List<String> remarks) {

    /** How a pitch is written. */
    enum Mark {
        /** With a unit. */
        UNIT,
        /** As a number alone. */
        BARE,
        NONE
    }

    /** A larger numeral without a name is that of an Italian rank, "VIII". */
    private static final int MOST_RANKS_ALONE = 7;

    private static final int MOST_DIGITS = 4;
    private static final TokenForm PIPES = TokenForm.of("#4 <pipes>");
    private static final TokenForm ASIDE = TokenForm.of("#3 [%] <material>?", "#4 <pipes>", "<metal>");
    private static final TokenForm PITCH_FIRST = TokenForm.of("pitch <feet> [,]", "#2 <ranks> [,]");
    private static final TokenForm LEADING = TokenForm.of("#3 _[-] word|roman", "#3 _word|roman");
    private static final Pattern BETWEEN_PIECES = Pattern.compile(Line.GAP + "|: ");
    private static final Pattern BLANKS = Pattern.compile("[ \\t]+");

    private static final String EDGES = ".,;:*\u2022\u2020\u2021=~|/#+>-";

    /** Takes the text of one stop apart. */
    static StopLine of(String text, ListStyle style) {
        return style.stopLines().of(text, each -> new Taker(EntryNumber.without(each), style).taken());
    }

    /** True if a text names a known stop with its pitch. */
    static boolean isPitchedStop(String text, ListStyle style) {
        StopLine stop = of(text, style);
        return stop.mark != Mark.NONE
                && Lexicon.get().known(stop.name, style.setting()).isPresent();
    }

    /** True if a text names the bass or the treble half of a stop and nothing else. */
    static boolean isHalf(String text) {
        return WordList.of("half").isAll(Spelling.words(text));
    }

    /** All words that are neither name nor pitch, for a judgement whether this is a sentence. */
    String said() {
        return String.join(" ", remarks);
    }

    /** The first pitch. */
    Optional<Footage> pitch() {
        return feet.stream().findFirst();
    }

    /** True if a family counts its numeral as ranks. */
    static boolean countsRanks(Family family) {
        return family.isCompound() || family == Family.CELESTE;
    }

    /** The text of one stop while it is taken apart: what is understood is cut out, and what is left is its name. */
    private static final class Taker {
        private final ListStyle style;
        private final List<Footage> feet = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();
        private Mark mark = Mark.NONE;
        private int ranks;
        private Optional<Family> family = Optional.empty();
        private String numeral = "";
        private Line line;

        Taker(String text, ListStyle style) {
            this.style = style;
            this.line = new Line(text);
        }

        StopLine taken() {
            parentheses();
            cut(line.all(this::aside));
            family = family();
            boolean compound = family.filter(Family::isCompound).isPresent();
            intervals(compound);
            leading();
            markedRanks(compound);
            cut(line.all(this::markedFeet));
            numeral(compound);
            pipes();
            if (feet.isEmpty()) {
                palms();
            }
            if (feet.isEmpty()) {
                bare(compound);
            }
            if (compound && ranks == 0) {
                bareRanks();
            }
            String name = name();
            if (name.isEmpty() && !numeral.isEmpty() && (ranks == 1 || ranks > MOST_RANKS_ALONE)) {
                name = numeral;
                numeral = "";
            }
            List<String> halves = remarks.stream()
                    .filter(each -> Compass.half(each).length() > 1
                            || (isHalf(each)
                                    && style.halves()
                                    && !style.language().equals("it")))
                    .toList();
            if (!name.isEmpty() && halves.size() == 1) {
                name = name + " " + Compass.half(halves.get(0));
                remarks.removeIf(StopLine::isHalf);
            }
            return new StopLine(name, List.copyOf(feet), mark, ranks, numeral, List.copyOf(remarks));
        }

        /** The first piece with letters is the name; the others are remarks, but for the half of the keyboard. */
        private String name() {
            String name = "";
            for (String piece : BETWEEN_PIECES.split(line.text(), -1)) {
                String trimmed = BLANKS.matcher(Spelling.trimmed(piece, EDGES)).replaceAll(" ");
                if (Spelling.isSigns(trimmed)) {
                    continue;
                }
                if (isHalf(trimmed) && !name.isEmpty() && (trimmed.length() > 1 || style.halves())) {
                    name = name + " " + trimmed;
                } else if (name.isEmpty() && trimmed.chars().anyMatch(Character::isLetter)) {
                    int last = trimmed.lastIndexOf(' ');
                    boolean open =
                            last > 0 && WordList.of("end of name").has(Spelling.spelled(trimmed.substring(last)));
                    name = Segments.withoutComma(open ? trimmed.substring(0, last) : trimmed);
                } else {
                    remarks.add(trimmed);
                }
            }
            return name;
        }

        private void cut(BitSet tokens) {
            line = tokens.isEmpty() ? line : new Line(line.without(tokens, Line.GAP));
        }

        private void cut(int from, int length) {
            cut(line.all(i -> i == from ? length : 0));
        }

        /** A text in parentheses is a remark, unless it is a pitch or ranks alone. */
        private void parentheses() {
            StringBuilder kept = new StringBuilder();
            BitSet brackets = line.bracketsToEnd();
            int end = 0;
            for (int i = brackets.nextSetBit(0); i >= 0; i = brackets.nextSetBit(i)) {
                int close = i + 1;
                while (close < line.size() && brackets.get(close) && !line.is(close, Kind.CLOSE)) {
                    close++;
                }
                Line inside = new Line(line.part(i + 1, close));
                boolean first = IntStream.range(1, i).allMatch(before -> Segments.figures(line, before) == 0);
                int pitch = isPitch(inside) ? inside.size() : first ? PITCH_FIRST.at(inside, 0) : 0;
                String rest = inside.text().substring(inside.start(pitch));
                if (!Spelling.isSigns(rest) && !PIPES.is(inside)) {
                    remarks.add(rest);
                }
                kept.append(line.text(), end, line.at(i).start())
                        .append(pitch > 0 ? " " + inside.part(0, pitch) + " " : Line.GAP);
                end = close < line.size() ? line.at(close).end() : line.text().length();
                i = Math.min(close + 1, line.size());
            }
            line = new Line(kept.append(line.text().substring(end)).toString());
        }

        private static boolean isPitch(Line inside) {
            int size = inside.size();
            return size > 0
                    && (Pitches.marked(inside, 0) == size
                            || RankCount.marked(inside, 0).length() == size
                            || RankCount.numeral(inside, 0).length() == size
                            || RankCount.scale(inside, 0) == size
                            || (size == 1 && inside.text().matches("32|16|8|4|2|\\d \\d/\\d")));
        }

        /** What is no part of a name; from which key its pipes begin is kept as a remark. */
        private int aside(int token) {
            int compass = Compass.ofStop(line, token);
            if (compass > 0) {
                remarks.add(line.part(token, token + compass));
            }
            return Math.max(compass, Pitches.isInPieds(line, token) ? 0 : ASIDE.at(line, token));
        }

        /** The family of its words, if they are known. */
        private Optional<Family> family() {
            String letters = line.tokens().stream()
                    .filter(token -> token.is(Kind.WORD) && !token.is("ranks") && !token.is("feet"))
                    .map(Token::text)
                    .collect(Collectors.joining(" "));
            return Lexicon.get().known(letters, style.setting()).map(found -> found.kind()
                    .family());
        }

        /** Scale numbers of a mixture, "15.19.22", which count its ranks. */
        private void intervals(boolean compound) {
            for (int i = 0; i < line.size(); i++) {
                int length = RankCount.scale(line, i);
                if (length > 0) {
                    String numbers = line.part(i, i + length);
                    int count = numbers.split("[.,\u00b7 -]+", -1).length - (numbers.endsWith(".") ? 1 : 0);
                    if (compound || count >= 3) {
                        remarks.add(numbers);
                        ranks = compound ? count : 0;
                        cut(i, length);
                    }
                    return;
                }
            }
        }

        /** A number before the name: the stop's number in the list, or its pitch. */
        private void leading() {
            int name = LEADING.at(line, 0) - 1;
            if (name < 0
                    || line.at(0).start() > 0
                    || Pitches.marked(line, 0) + RankCount.marked(line, 0).length() > 0) {
                return;
            }
            Line rest = new Line(line.text().substring(line.at(name).start()));
            Optional<Footage> pitch = Pitches.usual(line.at(0));
            boolean pitchLater = Pitches.isMarked(rest) || endsInPitch(rest);
            if (!pitchLater && !style.numbered() && pitch.isPresent()) {
                feet.add(pitch.get());
                mark = Mark.BARE;
            }
            line = rest;
        }

        /** A last number of two figures or more that can be no pitch counts the pipes. */
        private void pipes() {
            int last = line.size() - 1;
            boolean counts = last > 0
                    && line.at(last).isWhole(MOST_DIGITS)
                    && line.at(last).text().length() > 1
                    && line.gap(last) > 0
                    && (Pitches.usual(line.at(last)).isEmpty()
                            || (line.is(last - 1, Kind.NUMBER)
                                    && Pitches.usual(line.at(last - 1)).isPresent()))
                    && !Pitches.isInName(line, last);
            if (counts) {
                cut(last, 1);
            }
        }

        private static boolean endsInPitch(Line rest) {
            int last = rest.size() - 1;
            last -= last > 0
                            && !rest.is(last, Kind.NUMBER)
                            && rest.at(last).text().length() == 1
                    ? 1
                    : 0;
            return rest.is(last, Kind.NUMBER)
                    && Pitches.isBare(rest, last)
                    && !Pitches.isInName(rest, last)
                    && Pitches.usual(rest.at(last)).isPresent();
        }

        private void markedRanks(boolean compound) {
            for (int i = 0; i < line.size(); i++) {
                RankCount marked = RankCount.marked(line, i);
                if (marked.length() == 0) {
                    continue;
                }
                String unit = Spelling.words(line.part(i, i + marked.length())).stream()
                        .reduce((first, last) -> last)
                        .orElse("");
                boolean number = line.is(i, Kind.NUMBER);
                boolean feetUnit = !compound && unit.matches("\\d*f") && number && !marked.range();
                boolean letter = !compound
                        && unit.matches("[hkrx]")
                        && !(unit.equals("h") && style.language().equals("es"))
                        && line.text().charAt(line.at(i).end()) == ' ';
                if (!feetUnit && !letter) {
                    ranks = marked.count();
                    cut(i, marked.length());
                    return;
                }
                i += marked.length() - 1;
            }
        }

        private int markedFeet(int token) {
            int length = Pitches.marked(line, token);
            boolean palms = length > 0 && line.is(token + length - 1, "palms");
            Optional<Footage> pitch = length == 0
                    ? Optional.empty()
                    : palms
                            ? Pitches.ofPalms(line.at(token).text())
                            : Pitches.read(line.at(token).text());
            pitch.ifPresent(feet::add);
            mark = pitch.isPresent() ? Mark.UNIT : mark;
            return pitch.isPresent() ? length : 0;
        }

        private void numeral(boolean compound) {
            for (int i = 0; i < line.size(); i++) {
                RankCount found = RankCount.numeral(line, i);
                // "V. Cel.": Vox or Voix
                boolean isShort =
                        i == 0 && line.at(0).text().equals("V") && line.isSign(1, ".") && line.is(2, Kind.WORD);
                if (found.length() > 0 && !isShort && !Pitches.isInName(line, i) && !(compound && found.count() == 1)) {
                    numeral = line.part(i, i + found.length());
                    ranks = ranks == 0 ? found.count() : ranks;
                    cut(i, found.length() + (line.isSign(i + found.length(), ".") ? 1 : 0));
                    return;
                }
            }
        }

        /** "Flautado de 6", and "Flauta de 6 tapada" with all its words. */
        private void palms() {
            int number = style.language().equals("pt") ? Pitches.inPalms(line) : -1;
            if (number > 0) {
                feet.add(Pitches.ofPalms(line.at(number).text()).orElseThrow());
                mark = Mark.BARE;
                boolean isLast = !line.is(number + 1) || line.isSign(number + 1, ".");
                cut(number, isLast ? 1 : 0);
            }
        }

        private void bare(boolean compound) {
            List<Integer> places = new ArrayList<>();
            for (int i = 0; i < line.size(); i++) {
                boolean named = Pitches.isInName(line, i)
                        && !(line.is(i - 1, Kind.WORD) && line.at(i - 1).plain().equals("de"));
                boolean palms =
                        Pitches.isPalms(line.at(i).text()) && !style.language().equals("es");
                if (Pitches.isBare(line, i) && pitch(i).isPresent() && !named && !palms) {
                    places.add(i);
                }
            }
            for (int i = places.size() - 1; i >= 0; i--) {
                Footage pitch = pitch(places.get(i)).orElseThrow();
                if (!compound || isPitchOfCompound(pitch)) {
                    feet.add(pitch);
                    mark = Mark.BARE;
                    cut(places.get(i), 1);
                    return;
                }
            }
        }

        /** The pitch that a bare number can mean; of a fifth 3 and 6 too. */
        private Optional<Footage> pitch(int token) {
            return Pitches.usual(line.at(token))
                    .or(() -> family.equals(Optional.of(Family.MUTATION))
                                    && line.at(token).text().matches("[36]")
                            ? Pitches.read(line.at(token).text())
                            : Optional.empty());
        }

        /** Of a compound stop, 1 1/3 is a pitch and 3 are ranks; 2 is either. */
        private boolean isPitchOfCompound(Footage pitch) {
            int feetOfIt = pitch.numerator();
            return pitch.denominator() != 1
                    || feetOfIt >= 8
                    || feetOfIt == 1
                    || (feetOfIt == 2 && !WordList.of("pair of pitches").in(line.text()))
                    || ranks > 0;
        }

        private void bareRanks() {
            for (int i = 0; i < line.size(); i++) {
                RankCount bare = RankCount.bare(line, i);
                if (bare.length() > 0) {
                    if (bare.count() >= 2 && bare.count() <= Stop.MOST_RANKS) {
                        ranks = bare.count();
                        cut(i, bare.length());
                    }
                    return;
                }
            }
        }
    }
}
