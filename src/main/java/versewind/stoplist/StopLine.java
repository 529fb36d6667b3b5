package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
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

    private static final String BULLETS = "*\u2022\u00b7\u25cf\u25cb\u25aa\u25e6\u2023\u25a0\u25b6>+=~|\u2020\u2021#-";
    private static final String EDGES = ".,;:*\u2022\u2020\u2021=~|/#+>-";

    /** Takes the text of one stop apart. */
    static StopLine of(String text, ListStyle style) {
        return new Taker(unnumbered(text), style).taken();
    }

    /** Whether a text names a known stop with its pitch. */
    static boolean isPitchedStop(String text, ListStyle style) {
        StopLine stop = of(text, style);
        return stop.mark != Mark.NONE
                && Lexicon.get().known(stop.name, style.setting()).isPresent();
    }

    /** Whether a text names the bass or the treble half of a stop and nothing else. */
    static boolean isHalf(String text) {
        List<String> words = Spelling.words(text);
        return !words.isEmpty() && WordClass.HALF.without(words).isEmpty();
    }

    /** All words that are neither name nor pitch, for a judgement whether this is a sentence. */
    String said() {
        return String.join(" ", remarks);
    }

    /** The first pitch. */
    Optional<Footage> pitch() {
        return feet.stream().findFirst();
    }

    /** Whether a family counts its numeral as ranks. */
    static boolean countsRanks(Family family) {
        return family.isCompound() || family == Family.CELESTE;
    }

    /** Without bullets and the number in the list before it: "3. ", "No. 3: ", "[3]", "a) ". */
    private static String unnumbered(String text) {
        Line line = new Line(text);
        int at = bulletsEnd(line, 0);
        at = bulletsEnd(line, ordinalEnd(line, at));
        return at == 0 ? text : at == line.size() ? "" : text.substring(line.at(at).start());
    }

    private static int bulletsEnd(Line line, int from) {
        int at = from;
        while (line.isSign(at, BULLETS)) {
            at++;
        }
        return at;
    }

    private static int ordinalEnd(Line line, int from) {
        boolean bracket = line.is(from, Kind.OPEN) && line.at(from).text().equals("[");
        int at = from + (bracket ? 1 : line.is(from, WordClass.BULLET) ? line.isSign(from + 1, ".") ? 2 : 1 : 0);
        boolean letter = at == from && line.is(from, Kind.WORD) && line.at(from).text().length() == 1;
        boolean number = line.is(at, Kind.NUMBER) && line.at(at).isWhole(3);
        boolean closed = line.is(at + 1, Kind.CLOSE) && line.gap(at + 1) <= 1;
        if (bracket || letter) {
            return closed && (number || letter) ? at + 2 : from;
        }
        boolean ends = closed || (line.isSign(at + 1, ".:") && line.gap(at + 1) <= 1);
        boolean unit = line.is(at + 2, Kind.NUMBER)
                && !(line.is(at + 3, Kind.QUOTE) || (at + 3 < line.size() && line.gap(at + 3) > 0));
        return number && ends && at + 2 < line.size() && !unit && !line.isSign(at + 2, ".,") ? at + 2 : from;
    }

    /** The text of one stop while it is taken apart: what is understood is cut out, and what is left is its name. */
    private static final class Taker {
        private final ListStyle style;
        private final List<Footage> feet = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();
        private Mark mark = Mark.NONE;
        private int ranks;
        private String numeral = "";
        private Line line;

        Taker(String text, ListStyle style) {
            this.style = style;
            this.line = new Line(text);
        }

        StopLine taken() {
            parentheses();
            cutAll(this::aside);
            boolean compound = isCompound();
            intervals(compound);
            leading();
            markedRanks(compound);
            cutAll(this::markedFeet);
            numeral();
            if (feet.isEmpty()) {
                bare(compound);
            }
            if (compound && ranks == 0) {
                bareRanks();
            }
            String name = name();
            if (name.isEmpty() && !numeral.isEmpty()) {
                name = numeral;
                numeral = "";
            }
            List<String> halves = remarks.stream().filter(StopLine::isHalf).toList();
            if (!name.isEmpty() && halves.size() == 1) {
                name = name + " " + halves.get(0);
                remarks.remove(halves.get(0));
            }
            return new StopLine(name, List.copyOf(feet), mark, ranks, numeral, List.copyOf(remarks));
        }

        /** The first piece with letters is the name; the others are remarks, but for the half of the keyboard. */
        private String name() {
            String name = "";
            for (String piece : line.text().split(String.valueOf(Line.GAP), -1)) {
                String trimmed = Spelling.trimmed(piece, EDGES).replaceAll("[ \\t]+", " ");
                if (trimmed.isEmpty()) {
                    continue;
                }
                if (isHalf(trimmed) && !name.isEmpty()) {
                    name = name + " " + trimmed;
                } else if (name.isEmpty() && trimmed.chars().anyMatch(Character::isLetter)) {
                    int last = trimmed.lastIndexOf(' ');
                    boolean open = last > 0 && WordClass.END_OF_NAME.has(Spelling.spelled(trimmed.substring(last)));
                    name = open ? trimmed.substring(0, last) : trimmed;
                } else {
                    remarks.add(trimmed);
                }
            }
            return name;
        }

        /** Cuts out what begins at any token, as long as this says it is. */
        private void cutAll(IntUnaryOperator length) {
            BitSet cut = new BitSet();
            for (int i = 0; i < line.size(); i++) {
                int tokens = length.applyAsInt(i);
                cut.set(i, i + tokens);
                i += Math.max(0, tokens - 1);
            }
            cut(cut);
        }

        private void cut(BitSet tokens) {
            line = tokens.isEmpty() ? line : new Line(line.without(tokens, Line.GAP));
        }

        private void cut(int from, int length) {
            BitSet tokens = new BitSet();
            tokens.set(from, from + length);
            cut(tokens);
        }

        /** What stands in parentheses is a remark, unless it is nothing but a pitch or ranks. */
        private void parentheses() {
            StringBuilder kept = new StringBuilder();
            BitSet brackets = line.bracketsToEnd();
            int end = 0;
            for (int i = brackets.nextSetBit(0); i >= 0; i = brackets.nextSetBit(i)) {
                int close = i + 1;
                while (close < line.size() && brackets.get(close) && !line.is(close, Kind.CLOSE)) {
                    close++;
                }
                String inside = line.part(i + 1, close);
                boolean pitch = isPitch(new Line(inside));
                Line aside = new Line(inside);
                if (!pitch && !inside.isEmpty() && pipes(aside, 0) != aside.size()) {
                    remarks.add(inside);
                }
                kept.append(line.text(), end, line.at(i).start()).append(pitch ? " " + inside + " " : Line.GAP);
                end = close < line.size() ? line.at(close).end() : line.text().length();
                i = Math.min(close + 1, line.size());
            }
            line = new Line(kept.append(line.text().substring(end)).toString());
        }

        private static boolean isPitch(Line inside) {
            int size = inside.size();
            return size > 0
                    && (Pitches.marked(inside, 0) == size
                            || Ranks.marked(inside, 0).length() == size
                            || Ranks.numeral(inside, 0).length() == size
                            || intervalsEnd(inside, 0) == size
                            || (size == 1 && inside.text().matches("32|16|8|4|2|\\d \\d/\\d")));
        }

        private int aside(int token) {
            return aside(line, token);
        }

        /** "61 pipes", "70% tin", "spotted metal", "TC", "from tenor C": how many tokens it takes. */
        private static int aside(Line line, int token) {
            if (line.is(token, Kind.NUMBER) && line.isSign(token + 1, "%")) {
                return 2 + line.phrase(WordClass.MATERIAL, token + 2);
            }
            int pipes = pipes(line, token);
            int material = line.phrase(WordClass.MATERIAL, token);
            return material > 1 ? material : pipes > 0 ? pipes : Compass.ofStop(line, token);
        }

        private static int pipes(Line line, int token) {
            boolean count = line.is(token, Kind.NUMBER) && line.at(token).isWhole(4) && line.is(token + 1, WordClass.PIPES);
            return count ? 2 : line.phrase(WordClass.BOTTOM, token);
        }

        private boolean isCompound() {
            String letters = line.tokens().stream()
                    .filter(token -> token.is(Kind.WORD) && !token.is(WordClass.RANKS) && !token.is(WordClass.FEET))
                    .map(Token::text)
                    .collect(Collectors.joining(" "));
            return Lexicon.get()
                    .known(letters, style.setting())
                    .map(found -> found.kind().family().isCompound())
                    .orElse(false);
        }

        /** Scale numbers of a mixture, "15.19.22", which count its ranks. */
        private void intervals(boolean compound) {
            for (int i = 0; i < line.size(); i++) {
                int end = intervalsEnd(line, i);
                if (end > 0) {
                    String numbers = line.part(i, end);
                    int count = numbers.split("[.,\u00b7 -]+", -1).length - (numbers.endsWith(".") ? 1 : 0);
                    if (compound || count >= 3) {
                        remarks.add(numbers);
                        ranks = compound ? count : 0;
                        cut(i, end - i);
                    }
                    return;
                }
            }
        }

        /** The token after scale numbers that begin at a token; 0 where none do. */
        private static int intervalsEnd(Line line, int token) {
            boolean apart = line.is(token, Kind.NUMBER) && Pitches.isApart(line, token, "/'");
            if (!apart || !Intervals.areFirst(line.at(token).text())) {
                return 0;
            }
            int end = token + 1;
            boolean several = !line.at(token).isWhole(2);
            while (line.isSign(end, ".,\u00b7-")
                    && line.is(end + 1, Kind.NUMBER)
                    && line.gap(end) <= 1
                    && line.gap(end + 1) <= 1
                    && Intervals.areNext(line.at(end + 1).text())) {
                end += 2;
                several = true;
            }
            end += several && line.isSign(end, ".") && line.gap(end) == 0 ? 1 : 0;
            char after = line.after(end - 1);
            return several && !Character.isDigit(after) && after != '/' && after != '\'' ? end : 0;
        }

        /** A number before the name: the stop's number in the list, or its pitch. */
        private void leading() {
            boolean leads = line.is(0, Kind.NUMBER)
                    && line.at(0).start() == 0
                    && line.at(0).isWhole(3)
                    && (line.is(1, Kind.WORD) || line.is(1, Kind.ROMAN) || line.isSign(1, "-"))
                    && line.gap(1) > 0;
            int name = line.isSign(1, "-") ? 2 : 1;
            boolean named = line.is(name, Kind.WORD) || line.is(name, Kind.ROMAN);
            if (!leads || !named || Pitches.marked(line, 0) > 0 || Ranks.marked(line, 0).length() > 0) {
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

        private static boolean endsInPitch(Line rest) {
            int last = rest.size() - 1;
            last -= last > 0 && !rest.is(last, Kind.NUMBER) && rest.at(last).text().length() == 1 ? 1 : 0;
            return rest.is(last, Kind.NUMBER)
                    && Pitches.isBare(rest, last)
                    && !isInName(rest, last)
                    && Pitches.usual(rest.at(last)).isPresent();
        }

        /** "Flauto in XII", "No. 2": whether a number belongs to the name. */
        private static boolean isInName(Line line, int number) {
            boolean sign = line.isSign(number - 1, ".\u00b0");
            int word = number - (sign ? 2 : 1);
            if (!line.is(word, WordClass.PITCH_IN_NAME)) {
                return false;
            }
            boolean shortened = line.at(word).plain().startsWith("n");
            boolean bare = line.at(word).text().length() > 1;
            return sign ? shortened : bare;
        }

        private void markedRanks(boolean compound) {
            for (int i = 0; i < line.size(); i++) {
                Ranks marked = Ranks.marked(line, i);
                if (marked.length() == 0) {
                    continue;
                }
                String unit = Spelling.words(line.part(i, i + marked.length())).stream()
                        .reduce((first, last) -> last)
                        .orElse("");
                boolean number = line.is(i, Kind.NUMBER);
                boolean feetUnit = !compound && unit.matches("\\d*f") && number && !marked.range();
                boolean letter = !compound && unit.matches("[hkrx]") && line.text().charAt(line.at(i).end()) == ' ';
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
            Optional<Footage> pitch =
                    length > 0 ? Pitches.read(line.at(token).text()) : Optional.empty();
            pitch.ifPresent(feet::add);
            mark = pitch.isPresent() ? Mark.UNIT : mark;
            return pitch.isPresent() ? length : 0;
        }

        private void numeral() {
            for (int i = 0; i < line.size(); i++) {
                Ranks found = Ranks.numeral(line, i);
                if (found.length() > 0 && !isInName(line, i)) {
                    numeral = line.part(i, i + found.length());
                    ranks = ranks == 0 ? found.count() : ranks;
                    cut(i, found.length() + (line.isSign(i + found.length(), ".") ? 1 : 0));
                    return;
                }
            }
        }

        private void bare(boolean compound) {
            List<Integer> places = new ArrayList<>();
            for (int i = 0; i < line.size(); i++) {
                boolean named = isInName(line, i) && !(line.is(i - 1, Kind.WORD) && line.at(i - 1).plain().equals("de"));
                boolean palms = line.at(i).text().matches("13|26|52") && !style.language().equals("es");
                if (Pitches.isBare(line, i) && Pitches.usual(line.at(i)).isPresent() && !named && !palms) {
                    places.add(i);
                }
            }
            for (int i = places.size() - 1; i >= 0; i--) {
                Footage pitch = Pitches.usual(line.at(places.get(i))).orElseThrow();
                if (!compound || isPitchOfCompound(pitch)) {
                    feet.add(pitch);
                    mark = Mark.BARE;
                    cut(places.get(i), 1);
                    return;
                }
            }
        }

        /** Of a compound stop, 1 1/3 is a pitch and 3 are ranks; 2 is either. */
        private boolean isPitchOfCompound(Footage pitch) {
            int feetOfIt = pitch.numerator();
            return pitch.denominator() != 1
                    || feetOfIt >= 8
                    || feetOfIt == 1
                    || (feetOfIt == 2 && !WordClass.PAIR_OF_PITCHES.in(line.text()))
                    || ranks > 0;
        }

        private void bareRanks() {
            for (int i = 0; i < line.size(); i++) {
                Ranks bare = Ranks.bare(line, i);
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
