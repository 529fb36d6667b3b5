package versewind.stoplist;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.stoplist.UnresolvedCoupler.Named;

/**
 * The words of one coupler, sorted.
 *
 * @param divisions the divisions that are named
 * @param before how many of them stand before the word "to"; all where there is none
 * @param signs how many signs such as / and - stand between divisions
 * @param kinds the pitches that are named
 * @param says what its words say besides
 * @param unknown how many words are none of these
 */
record CouplerWords(
        List<Named> divisions, int before, int signs, Set<Coupler.Kind> kinds, Set<String> says, int unknown) {

    private static final String SIGNS = "/+>&-";
    private static final String ONTO = "onto";
    private static final int MOST_WORDS = 3;
    private static final int LONGEST_INITIALS = 2;
    private static final int MOST_MANUALS = 6;

    /** A longer ordinal is a word, "segundo", and names a manual by its number. */
    private static final int LONGEST_FIGURES = 4;

    /** Sorts the words of a text. */
    static CouplerWords of(String text, String language) {
        return new Sorter(text, language).sorted();
    }

    /** True if a text without any of this names no coupler, unless couplers are listed where it stands. */
    static boolean mayCouple(String text, String language) {
        List<String> plain = Spelling.words(text);
        CouplerWords words = of(text, language);
        return words.saysCoupler()
                || words.isToPedal()
                || words.isOfManuals()
                || words.joins()
                || words.kinds.contains(Coupler.Kind.UNISON_OFF)
                || (!words.divisions.isEmpty() && WordList.of("own pitch").in(plain))
                || WordList.of("alone").in(plain);
    }

    boolean saysCoupler() {
        return says.contains("coupler");
    }

    /** True if it says that the pedal is the keyboard. */
    boolean isToPedal() {
        return says.contains("to pedal");
    }

    /** "Koppel zum Manual": the keyboard is named, and no division to be coupled to it. */
    boolean isOnto() {
        return says.contains(ONTO);
    }

    /** True if it says that manuals are joined. */
    boolean isOfManuals() {
        return says.contains("manual coupler");
    }

    boolean isOnlyPitches() {
        return divisions.isEmpty() && unknown == 0 && !kinds.isEmpty() && !saysCoupler();
    }

    boolean isOnlyDivisions() {
        return !divisions.isEmpty() && unknown == 0 && kinds.isEmpty() && !saysCoupler() && !joins();
    }

    boolean joins() {
        return divisions.size() >= 2 && (signs > 0 || before < divisions.size());
    }

    private static final class Sorter {
        private final List<String> tokens = new ArrayList<>();
        private final List<String> words = new ArrayList<>();
        private final String language;
        private final List<Named> divisions = new ArrayList<>();
        private final Set<Coupler.Kind> kinds = EnumSet.noneOf(Coupler.Kind.class);
        private final Set<String> said = new java.util.HashSet<>();
        private int before = -1;
        private int signs;
        private int unknown;

        Sorter(String text, String language) {
            this.language = language;
            Line line = new Line(text);
            for (int i = 0; i < line.size(); i++) {
                Token token = line.at(i);
                if (token.isWhole(4) && token.text().length() == 4) {
                    // "added in 1936"
                    continue;
                }
                if (token.is(Token.Kind.NUMBER)) {
                    List.of(token.text().split("(?<=/)|(?=/)|[., ]", -1)).forEach(this::add);
                } else if (!token.plain().isEmpty()) {
                    add(token.text());
                } else if (token.isSign(SIGNS) && !isHyphen(line, i)) {
                    add(token.text());
                }
            }
        }

        private void add(String token) {
            tokens.add(token);
            words.add(Spelling.spelled(token));
        }

        /** "oct/sub": both, where a sign stands between them. */
        private boolean isBoth() {
            return IntStream.range(1, tokens.size() - 1)
                    .filter(i -> tokens.get(i).equals("/"))
                    .anyMatch(i -> isPitch(words.get(i - 1)) && isPitch(words.get(i + 1)));
        }

        private static boolean isPitch(String word) {
            return Stream.of("sub", "super", "octave")
                    .anyMatch(each -> WordList.of(each).has(word));
        }

        /** True if a hyphen joins the parts of one word: "Grand-Orgue", "Sub-Oktavkoppel". */
        private boolean isHyphen(Line line, int token) {
            boolean within = line.at(token).isSign("-")
                    && line.is(token - 1, Token.Kind.WORD)
                    && line.is(token + 1, Token.Kind.WORD)
                    && line.gap(token) + line.gap(token + 1) == 0;
            if (!within) {
                return false;
            }
            List<String> pair =
                    List.of(line.at(token - 1).plain(), line.at(token + 1).plain());
            return DivisionWord.at(pair, 0, language)
                            .filter(each -> each.length() == 2)
                            .isPresent()
                    || WordList.of("coupler").at(pair, 0) == 2
                    || WordList.of("sub").has(pair.get(0))
                    || WordList.of("super").has(pair.get(0))
                    || WordList.of("octave").has(pair.get(0));
        }

        CouplerWords sorted() {
            int at = 0;
            while (at < tokens.size()) {
                at += take(at);
            }
            if (said.contains("unison off")) {
                kinds.add(Coupler.Kind.UNISON_OFF);
            }
            if (said.contains("sub")) {
                kinds.add(Coupler.Kind.SUB_OCTAVE);
            }
            if (said.contains("super") || (said.contains("octave") && (!said.contains("sub") || isBoth()))) {
                kinds.add(Coupler.Kind.OCTAVE);
            }
            return new CouplerWords(
                    List.copyOf(divisions),
                    before < 0 ? divisions.size() : before,
                    signs,
                    Set.copyOf(kinds),
                    Set.copyOf(said),
                    unknown);
        }

        private boolean isSign(int at, String some) {
            return at >= 0 && at < tokens.size() && words.get(at).isEmpty() && some.contains(tokens.get(at));
        }

        private int take(int at) {
            String token = tokens.get(at);
            String word = words.get(at);
            if (word.isEmpty()) {
                signs += divisions.isEmpty() || token.equals("&") ? 0 : 1;
                return 1;
            }
            if (WordList.of("coupler").at(words, at) > 1
                    || WordList.of("octave").at(words, at) > 1) {
                return known(at);
            }
            Optional<DivisionWord.Spotted> spotted = spotted(at);
            if (spotted.isPresent()) {
                divisions.add(new Named(spotted.get().word()));
                return spotted.get().length();
            }
            int ordinal = word.length() > LONGEST_FIGURES ? DivisionWord.ordinal(word) : 0;
            if (ordinal > 0) {
                divisions.add(new Named(DivisionWord.numbered(word, ordinal)));
                return 1;
            }
            if (isTheManual(at)) {
                divisions.add(new Named(new DivisionWord(DivisionWord.MAIN, OptionalInt.empty(), false, word)));
                return 1;
            }
            int manual = Token.number(token);
            boolean roman = manual > 0
                    && manual <= MOST_MANUALS
                    && token.equals(token.toUpperCase(Locale.ROOT))
                    && !Character.isDigit(token.charAt(0));
            if (roman || isArabicManual(at)) {
                divisions.add(new Named(DivisionWord.numbered(token, manual)));
                return 1;
            }
            if (WordList.of("coupled to").has(word)) {
                before = before < 0 && !divisions.isEmpty() ? divisions.size() : before;
                if (divisions.isEmpty()) {
                    said.add(ONTO);
                }
                return 1;
            }
            int known = known(at);
            boolean initials = known == 0
                    && token.length() <= LONGEST_INITIALS
                    && token.equals(token.toUpperCase(Locale.ROOT))
                    && Character.isLetter(token.charAt(0))
                    && (isSign(at - 1, "/+-") || isSign(at + 1, "/+-"));
            if (initials) {
                divisions.add(new Named(new DivisionWord("other", OptionalInt.empty(), false, word)));
                return 1;
            }
            unknown += known > 0 ? 0 : 1;
            return Math.max(1, known);
        }

        private Optional<DivisionWord.Spotted> spotted(int at) {
            int end = at;
            while (end < tokens.size()
                    && end < at + MOST_WORDS
                    && !words.get(end).isEmpty()
                    && !WordList.of("coupled to").has(words.get(end))) {
                end++;
            }
            return end == at || words.get(at).equals("e")
                    ? Optional.empty()
                    : DivisionWord.at(words.subList(at, end), 0, language);
        }

        /** "Manual to Pedal", on an organ with one. */
        private boolean isTheManual(int at) {
            if (!WordList.of("the manual").has(words.get(at))) {
                return false;
            }
            boolean numbered = at + 1 < tokens.size() && Token.number(tokens.get(at + 1)) > 0;
            boolean followed = at > 0 && Token.number(tokens.get(at - 1)) > 0;
            boolean joined = (tokens.size() > at + 2 && !tokens.get(at + 1).equals("-")) || at > 1;
            return !numbered && !followed && (joined || tokens.size() == 3);
        }

        /** A figure that names a manual: beside a sign and another such, "2/1". */
        private boolean isArabicManual(int at) {
            if (!isManual(at)) {
                return false;
            }
            boolean after = at >= 2 && isSign(at - 1, tokens.size() == 3 ? "/+-" : "/") && !divisions.isEmpty();
            boolean ahead = isSign(at + 1, "/+-")
                    && at + 2 < tokens.size()
                    && (isManual(at + 2) || Set.of("p", "ped", "pd").contains(words.get(at + 2)))
                    && !(at > 0 && tokens.get(at).equals("4") && Token.number(tokens.get(at - 1)) > 0);
            return (after && !tokens.get(at).equals("4")) || ahead;
        }

        private boolean isManual(int at) {
            return tokens.get(at).length() == 1 && "12345".contains(tokens.get(at));
        }

        /** How many words of a place on are known; 0 where none is. */
        private int known(int at) {
            int coupler = 0;
            for (String each : List.of("coupler", "to pedal", "manual coupler")) {
                int length = WordList.of(each).at(words, at);
                coupler = Math.max(coupler, length);
                if (length > 0) {
                    said.add(each);
                }
            }
            for (String each : List.of("unison off", "sub", "super", "octave")) {
                int length = WordList.of(each).at(words, at);
                if (length > 0) {
                    said.add(each);
                    return length;
                }
            }
            if (words.get(at).equals("8")) {
                kinds.add(Coupler.Kind.UNISON);
                return 1;
            }
            return coupler > 0 ? coupler : WordList.of("coupler filler").has(words.get(at)) ? 1 : 0;
        }
    }
}
