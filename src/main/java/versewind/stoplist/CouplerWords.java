package versewind.stoplist;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Coupler;
import versewind.stoplist.UnresolvedCoupler.Named;

/**
 * The words of one coupler, sorted.
 *
 * @param divisions the divisions that are named
 * @param before how many of them stand before the word "to"; all where there is none
 * @param signs how many signs such as / and - stand between divisions
 * @param kinds the pitches that are named
 * @param saysCoupler whether a word such as "coupler" or "Koppel" is there
 * @param tirasse whether it says that the pedal is the keyboard
 * @param manuals whether it says that manuals are joined
 * @param unknown how many words are none of these
 */
record CouplerWords(
        List<Named> divisions,
        int before,
        int signs,
        Set<Coupler.Kind> kinds,
        boolean saysCoupler,
        boolean tirasse,
        boolean manuals,
        int unknown) {

    private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\d']+|[/+>&-]");
    private static final Set<String> TO =
            Spelling.set("to zu zum zur an ans auf au aux sur aan naar al alla allo ai til till on a op al\u00b4 "
                    + "sul sulla into in an's onto vid ved con");
    private static final Set<String> FILLERS = Spelling.set(
            "und and et e y och og the de du le la von af from der des vom manual manuale manuaal man clavier klavier"
                    + " teclado tasto organ organo reg normal mechanical mechanisch electric also auch als pitch foot ft"
                    + " feet unison unisono uni il w keys hand werk full general bij das del dello della");
    private static final Set<String> THE_MANUAL =
            Spelling.set("manual manuals manuale manuaal clavier tasto tastiera manualen");
    private static final Pattern COUPLER = Pattern.compile(
            ".*(?:koppel|coupl|accoupl|tirass|copul|koppl|kobl|acopl|enganch|union[ei]|accopp|coppel|kopel).*|tir");
    private static final Pattern TIRASSE = Pattern.compile(
            "tir|tirass\\w*|pedal?koppel\\w*|pedaalkoppel\\w*|pedalkoppling|pedalkobling|pedaalkoppeling\\w*|pedalcoupler");
    private static final Pattern MANUALS = Pattern.compile(
            "manua?a?l?(?:schiebe)?kopp?el\\w*|manualkoppling|manualkoppel|schiebekoppel\\w*|klavierkoppel\\w*|manuaalkoppel\\w*|gabelkoppel\\w*");
    private static final Pattern SUB = Pattern.compile(
            "sub|sub(?:okt|oct|ott|kop|cou|unis).*|graves?|grave|infra|sousoctaves?|subs|suboctaves?|bassoctave|unteroktav\\w*|underoktav\\w*|lage");
    private static final Pattern OCTAVE = Pattern.compile(
            "octs?|okt|ott|octaves?|oktave?n?|octaaf|ottava|ottave|octavas?|oktav\\w*|octav\\w*|octaaf\\w*|super|super(?:okt|oct|ott|kop|cou).*|aigu\\w*|acut[aoe]s?|superoctaves?|supers|agudas?|hoge");
    private static final Pattern OFF = Pattern.compile("off|uo|cancel|aus|annullatore|silent|supprime");
    private static final Pattern ROMAN = Pattern.compile("I{1,3}|IV|V|VI");

    /** Sorts the words of a text. */
    static CouplerWords of(String text, String language) {
        return new Sorter(prepared(text), language).sorted();
    }

    private static String prepared(String text) {
        return text.replaceAll("(?i)\\bsv[\u00e4e]ll(?:aren?|eren?)\\b", "sv\u00e4llverk")
                .replaceAll("\\bM\\.\\s?K\\.", "Manualkoppel ")
                .replaceAll("\\bP\\.\\s?K\\.", "Pedalkoppel ")
                .replaceAll("(?i)\\bG\\.?\\s?O\\b\\.?", "GO")
                .replaceAll("(?i)\\b(grande?|gd)[\\s.'-]{1,2}(orgue|organo|choeur|ch\u0153ur)", "grand$2")
                .replaceAll("(?i)\\b(sub|super|oktav|octave|r\u00fcck|r\u00e9cit)-(?=\\p{L})(?!expr)", "$1 ")
                .replaceAll("(?i)\\bu\\.\\s?o\\b\\.?", "UO")
                .replaceAll("(?i)\\bgran(?:de|d)?[ ']organo\\b", "grandorgano")
                .replaceAll("(?i)(\\p{L})['\u00b0]s?(?=[\\s/+-]|$)", "$1");
    }

    private static final class Sorter {
        private final List<String> tokens = new ArrayList<>();
        private final String language;
        private final List<Named> divisions = new ArrayList<>();
        private final Set<Coupler.Kind> kinds = EnumSet.noneOf(Coupler.Kind.class);
        private int before = -1;
        private int signs;
        private int unknown;
        private boolean saysCoupler;
        private boolean tirasse;
        private boolean manuals;
        private boolean sub;
        private boolean octave;
        private boolean superOctave;

        Sorter(String text, String language) {
            Matcher matcher = TOKEN.matcher(text);
            while (matcher.find()) {
                tokens.add(matcher.group());
            }
            this.language = language;
        }

        CouplerWords sorted() {
            int at = 0;
            while (at < tokens.size()) {
                at += take(at);
            }
            if (sub) {
                kinds.add(Coupler.Kind.SUB_OCTAVE);
            }
            if (superOctave || (octave && !sub)) {
                kinds.add(Coupler.Kind.OCTAVE);
            }
            return new CouplerWords(
                    List.copyOf(divisions),
                    before < 0 ? divisions.size() : before,
                    signs,
                    Set.copyOf(kinds),
                    saysCoupler,
                    tirasse,
                    manuals,
                    unknown);
        }

        private int take(int at) {
            String token = tokens.get(at);
            if (token.matches("[/+>&-]")) {
                signs += divisions.isEmpty() || token.equals("&") ? 0 : 1;
                return 1;
            }
            Optional<DivisionWord.Spotted> spotted = spotted(at);
            if (spotted.isPresent()) {
                divisions.add(new Named(spotted.get().word()));
                return spotted.get().length();
            }
            String word = Spelling.spelled(token);
            if (isTheManual(at, word)) {
                divisions.add(new Named(new DivisionWord(DivisionWord.MAIN, OptionalInt.empty(), false, word)));
                return 1;
            }
            if (ROMAN.matcher(token).matches() || isArabicManual(at)) {
                divisions.add(new Named(new DivisionWord("", OptionalInt.of(RankCount.number(token)), false, token)));
            } else if (TO.contains(word)) {
                before = before < 0 && !divisions.isEmpty() ? divisions.size() : before;
            } else {
                unknown += known(word) ? 0 : 1;
            }
            return 1;
        }

        private Optional<DivisionWord.Spotted> spotted(int at) {
            List<String> words = new ArrayList<>();
            for (int i = at; i < tokens.size() && i < at + 3; i++) {
                if (tokens.get(i).matches("[/+>&-]")) {
                    break;
                }
                words.add(Spelling.spelled(tokens.get(i)));
            }
            return words.get(0).isEmpty()
                            || TO.contains(words.get(0))
                            || words.get(0).equals("e")
                    ? Optional.empty()
                    : DivisionWord.at(words, 0, language);
        }

        /** "Manual to Pedal", on an organ with one. */
        private boolean isTheManual(int at, String word) {
            if (!THE_MANUAL.contains(word)) {
                return false;
            }
            boolean numbered = at + 1 < tokens.size() && RankCount.number(tokens.get(at + 1)) > 0;
            boolean followed = at > 0 && RankCount.number(tokens.get(at - 1)) > 0;
            boolean joined = (tokens.size() > at + 2 && !tokens.get(at + 1).equals("-")) || at > 1;
            return !numbered && !followed && (joined || tokens.size() == 3);
        }

        /** A figure that names a manual: beside a sign and another such, "2/1". */
        private boolean isArabicManual(int at) {
            if (!tokens.get(at).matches("[1-5]")) {
                return false;
            }
            boolean after =
                    at >= 2 && tokens.get(at - 1).matches(tokens.size() == 3 ? "[/+-]" : "/") && !divisions.isEmpty();
            boolean ahead = at + 2 < tokens.size()
                    && tokens.get(at + 1).matches("[/+-]")
                    && tokens.get(at + 2).matches("[1-5]|(?i:p|ped|pd)");
            return (after && !tokens.get(at).equals("4")) || ahead;
        }

        private boolean known(String word) {
            boolean coupler = COUPLER.matcher(word).matches();
            saysCoupler |= coupler;
            tirasse |= TIRASSE.matcher(word).matches();
            manuals |= MANUALS.matcher(word).matches();
            if (OFF.matcher(word).matches()) {
                kinds.add(Coupler.Kind.UNISON_OFF);
                return true;
            }
            if (SUB.matcher(word).matches() || word.matches("16'?")) {
                sub = true;
                return true;
            }
            if (OCTAVE.matcher(word).matches() || word.matches("4'?")) {
                superOctave |= word.startsWith("super")
                        || word.startsWith("aigu")
                        || word.startsWith("acut")
                        || word.startsWith("4");
                octave = true;
                return true;
            }
            if (word.matches("8'?")) {
                kinds.add(Coupler.Kind.UNISON);
                return true;
            }
            return coupler || FILLERS.contains(word);
        }
    }

    boolean isOnlyPitches() {
        return divisions.isEmpty() && unknown == 0 && !kinds.isEmpty() && !saysCoupler;
    }

    boolean isOnlyDivisions() {
        return !divisions.isEmpty() && unknown == 0 && kinds.isEmpty() && !saysCoupler && !joins();
    }

    boolean joins() {
        return divisions.size() >= 2 && (signs > 0 || before < divisions.size());
    }
}
