package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Pipe;
import versewind.organ.Stop;
import versewind.stoplist.StopLine.Mark;
import versewind.stoplist.Token.Kind;
import versewind.stoplist.Unread.Weight;

/** Decides whether the text of one entry is a stop, and which. */
final class StopClassifier {

    /** The outcome: a stop, an addition to the stop before, or no stop. */
    sealed interface Result permits OneStop, Further, None {}

    record OneStop(ReadStop stop) implements Result {}

    /**
     * A pitch or ranks that belong to the stop before.
     *
     * @param line what is written
     */
    record Further(StopLine line) implements Result {}

    /**
     * No stop.
     *
     * @param why a sentence
     * @param weight whether it wants a second look
     */
    record None(String why, Weight weight) implements Result {}

    private static final TokenForm RUN_ON = TokenForm.of("word _#2 _word");
    private static final Set<String> IBERIAN = Set.of("es", "pt", "ca");
    /** "Lleno en 15\u00aa": the fifteenth, which is feminine. */
    private static final Pattern DEGREE = Pattern.compile("(?<=\\b(?:en|de) \\d{1,2})\u00b0");

    /** "Octave 4" with another pitch behind it. */
    private static final Pattern PITCH_LAST = Pattern.compile("\\p{L} (?:32|16|8|4)$");

    private static final int FIRST_YEAR = 1400;
    private static final int LAST_YEAR = 2099;
    private static final int MOST_WORDS = 4;
    private static final int MOST_REMARK_WORDS = 18;
    private static final int MOST_TRIMMED = 4;
    private static final int LARGEST_FT = 32;
    private static final int LOWEST_HIGH_FT = 4;

    private final String text;
    private final int line;
    private final ListStyle style;
    private final StopLine said;
    private final NameContext setting;

    private StopClassifier(String text, int line, ListStyle style, NameContext.Keyboard keyboard) {
        this.text = text;
        this.line = line;
        this.style = style;
        this.said = StopLine.of(text, style);
        this.setting = new NameContext(style.language(), keyboard, said.pitch(), said.ranks());
    }

    /** Reads the text of one stop. */
    static Result of(String text, int line, ListStyle style, NameContext.Keyboard keyboard) {
        return new StopClassifier(text, line, style, keyboard).read();
    }

    /** True if a text says something of the organ or the page that is no part to play. */
    static boolean isNote(String text) {
        return isProse(text) || WordList.of("toy").in(text);
    }

    /** True if a text has words of sentences, signs of addresses or years. */
    private static boolean isProse(String text) {
        return WordList.of("prose").in(text)
                || new Line(text).tokens().stream().anyMatch(token -> token.isSign("@\u00a9=") || isYear(token));
    }

    private static boolean isYear(Token token) {
        int year = token.isWhole(4) ? Integer.parseInt(token.text()) : 0;
        return year >= FIRST_YEAR && year <= LAST_YEAR;
    }

    private Result read() {
        if (WordList.of("prepared").in(text)) {
            return new None("prepared for only: no pipes yet, so it is left out", Weight.NOTE);
        }
        if (said.name().isEmpty()) {
            boolean figures =
                    new Line(text).tokens().stream().anyMatch(each -> each.is(Kind.NUMBER) || each.count() > 0);
            return figures && (!said.feet().isEmpty() || said.ranks() > 0)
                    ? new Further(said)
                    : new None("no name found", Weight.NOTE);
        }
        Optional<Lexicon.Found> whole = numbered().or(() -> Lexicon.get().known(said.name(), setting));
        boolean pitched = said.mark() != Mark.NONE;
        boolean toy = WordList.of("toy").in(said.name())
                && Lexicon.get()
                        .exact(said.name(), setting)
                        .filter(kind -> pitched || kind.family().isReed())
                        .isEmpty();
        if (toy || isCarillonOfBells()) {
            return new None("a bell, bird, drum, valve or the like: no rank of pipes to draw", Weight.NOTE);
        }
        if (isSentence()) {
            return note();
        }
        Optional<Lexicon.Found> found =
                whole.or(this::shortened).or(() -> pitched || said.ranks() > 0 ? withPitch() : withoutPitch());
        boolean isDated = found.filter(each -> each.how() != Confidence.NAME).isPresent()
                && new Line(said.name()).tokens().stream().anyMatch(StopClassifier::isYear);
        if (isDated) {
            return new None("a year, with the name of a stop", Weight.DOUBT);
        }
        return found.map(this::stop).orElseGet(() -> isNoteHere(pitched || said.ranks() > 0) ? note() : doubt());
    }

    /** "Vox h.", "Baarp.": each word as it begins. */
    private Optional<Lexicon.Found> shortened() {
        boolean isShort = said.name().contains(".")
                || text.contains(said.name() + ".")
                || said.name().contains(" ");
        boolean isStop = said.mark() != Mark.NONE || said.ranks() > 0 || !style.pitched();
        return isShort && isStop ? Lexicon.get().shortened(said.name(), setting) : Optional.empty();
    }

    /** "Open Diapason II": the second of its name, and not of two ranks. */
    private Optional<Lexicon.Found> numbered() {
        return said.numeral().isEmpty()
                ? Optional.empty()
                : Lexicon.get()
                        .exact(said.name() + " " + said.numeral(), setting)
                        .filter(kind -> !StopLine.countsRanks(kind.family()))
                        .map(kind -> new Lexicon.Found(kind, Confidence.NAME));
    }

    private boolean isNoteHere(boolean pitched) {
        boolean goesOn =
                Character.isLowerCase(text.charAt(0)) || Spelling.words(text).size() > MOST_WORDS;
        return isProse(text) || (!pitched && goesOn);
    }

    private None note() {
        if (WordList.of("no knob").in(text)) {
            return new None("has no knob of its own: is the stop before it drawn at all?", Weight.DOUBT);
        }
        return WordList.of("coupler").in(text)
                ? new None("speaks of couplers, but it is unclear of which", Weight.DOUBT)
                : new None(Unread.REMARK, Weight.NOTE);
    }

    private None doubt() {
        if (Spelling.words(Compass.without(text)).isEmpty()) {
            return note();
        }
        boolean pitched = said.mark() != Mark.NONE || said.ranks() > 0;
        return new None(
                pitched ? "unclear whether this is a stop" : "no pitch, and not a known name of a stop", Weight.DOUBT);
    }

    private boolean isCarillonOfBells() {
        return said.ranks() == 0
                && WordList.of("carillon").isAll(Spelling.words(said.name()))
                && !style.language().equals("fr");
    }

    private Optional<Lexicon.Found> withoutPitch() {
        List<String> words = Spelling.words(said.name());
        int last = words.size() - 1;
        boolean joined = last > 1 && WordList.of("joined names").in(words.subList(1, last));
        Optional<Lexicon.Found> first = joined ? joined(words).or(this::trimmed) : Optional.empty();
        return first.or(() -> words.size() <= 3 ? Lexicon.get().find(said.name(), setting) : Optional.empty());
    }

    /** "Twelfth and Fifteenth": two ranks of the chorus under one knob. */
    private Optional<Lexicon.Found> joined(List<String> words) {
        int and = IntStream.range(1, words.size() - 1)
                .filter(i -> WordList.of("joined names").has(words.get(i)))
                .findFirst()
                .orElse(0);
        Optional<StopKind> first = Lexicon.get().exact(String.join(" ", words.subList(0, and)), setting);
        Optional<StopKind> last = Lexicon.get().exact(String.join(" ", words.subList(and + 1, words.size())), setting);
        boolean high = first.isPresent()
                && last.isPresent()
                && Stream.of(first.get(), last.get())
                        .allMatch(each -> each.footage().feet() < LOWEST_HIGH_FT
                                && !each.family().isReed());
        return high
                ? Lexicon.get().exact("Rauschquinte", setting).map(kind -> new Lexicon.Found(kind, Confidence.PARTS))
                : Optional.empty();
    }

    private Optional<Lexicon.Found> withPitch() {
        return trimmed().or(() -> Lexicon.get().find(said.name(), setting)).or(this::guessed);
    }

    private boolean isSentence() {
        String outside = new Line(text).outside();
        return WordList.of("short octave").in(outside)
                || WordList.of("former").at(Spelling.words(said.name()), 0) > 0
                || Spelling.words(said.said()).size() > MOST_REMARK_WORDS
                || (WordList.of("sentence").in(outside)
                        && Spelling.words(outside).size() > MOST_WORDS);
    }

    /** The name without words at its end, or at its beginning, that the lexicon does not know. */
    private Optional<Lexicon.Found> trimmed() {
        List<String> words = List.of(said.name().split("[ /]+", -1));
        return IntStream.rangeClosed(1, Math.min(MOST_TRIMMED, words.size() - 1))
                .boxed()
                .flatMap(cut -> Stream.of(words.subList(0, words.size() - cut), words.subList(cut, words.size())))
                .map(part -> String.join(" ", part))
                .filter(part -> part.length() > 2)
                .flatMap(part -> Lexicon.get()
                        .exact(part, setting)
                        .map(kind -> new Lexicon.Found(kind, Confidence.PARTS))
                        .or(() -> part.contains(".") ? Lexicon.get().shortened(part, setting) : Optional.empty())
                        .stream())
                .findFirst();
    }

    /** A stop that the lexicon does not know, where its pitch is plain and its name could be one. */
    private Optional<Lexicon.Found> guessed() {
        boolean few = Spelling.words(said.name()).size() <= MOST_WORDS
                && !(Character.isLowerCase(said.name().charAt(0)) && new Line(said.name()).is(0, "article"))
                && Spelling.hasWord(said.name())
                && !WordList.of("article").has(last(said.name()))
                && !WordList.of("keys").isAll(Spelling.words(said.name()))
                && DivisionHeading.read(said.name(), style.language()).isEmpty();
        boolean surely = said.mark() == Mark.UNIT
                || (said.ranks() >= 2 && !text.strip().startsWith(said.numeral() + " "))
                || (said.mark() == Mark.BARE
                        && said.feet().get(0).feet() <= LARGEST_FT
                        && said.name().chars().noneMatch(Character::isDigit));
        if (!few || !surely || isProse(text) || PistonLine.isOfPistons(text)) {
            return Optional.empty();
        }
        Footage feet = said.pitch().orElse(Footage.of(8));
        boolean several = said.ranks() >= (said.numeral().isEmpty() || said.mark() == Mark.NONE ? 2 : 3);
        Optional<StopKind> hint = said.remarks().stream()
                .flatMap(remark -> Lexicon.get().exact(remark, setting).stream())
                .findFirst();
        Family usual = several ? Family.MIXTURE : isFifthOrThird(feet) ? Family.MUTATION : Family.FLUTE;
        Family family = hint.map(StopKind::family).orElse(usual);
        String what = "A stop that the lexicon does not know.";
        return Optional.of(new Lexicon.Found(
                new StopKind(said.name(), "la", family, feet, Optional.empty(), family.usualPipe(), 0, what),
                Confidence.GUESS));
    }

    private static String last(String name) {
        List<String> words = Spelling.words(name);
        return words.get(words.size() - 1);
    }

    static boolean isFifthOrThird(Footage feet) {
        int odd = feet.denominator();
        return odd % 3 == 0 || odd % 5 == 0 || odd % 7 == 0 || odd > 8;
    }

    /** True if it is octaves from 8 ft. */
    private static boolean isUnison(Footage feet) {
        return feet.denominator() == 1 && Integer.bitCount(feet.numerator()) == 1;
    }

    /** "XIX-XXII": ranks of the ripieno under one knob. */
    private long highRanks() {
        List<Token> tokens = new Line(said.name()).tokens();
        boolean numerals = tokens.stream()
                .allMatch(each -> each.isSign("-./+") || each.text().startsWith("X"));
        return numerals ? tokens.stream().filter(each -> each.is(Kind.ROMAN)).count() : 0;
    }

    private Family family(StopKind kind) {
        if (highRanks() > 1) {
            return Family.MIXTURE;
        }
        Family family = Lexicon.family(said.remarks()).orElse(kind.family());
        if (!family.isReed() && isSaid("said reed")) {
            return Family.SOLO_REED;
        }
        if (isSaid("said undulating")) {
            return Family.CELESTE;
        }
        boolean single =
                switch (family) {
                    case PRINCIPAL, FLUTE, STRING, MUTATION -> true;
                    case CELESTE, MIXTURE, CORNET, CHORUS_REED, SOLO_REED -> false;
                };
        boolean high = said.pitch().filter(feet -> feet.feet() < 4).isPresent();
        boolean several = said.ranks() >= (said.numeral().isEmpty() || family == Family.MUTATION ? 2 : 3);
        if (single && several && (family == Family.MUTATION || high)) {
            return Family.MIXTURE;
        }
        if (family == Family.PRINCIPAL && isSaidStopped()) {
            return Family.FLUTE;
        }
        return single && said.pitch().filter(StopClassifier::isFifthOrThird).isPresent() ? Family.MUTATION : family;
    }

    /** "Voce umana (ancia)" is a reed, and without that two ranks of flues. */
    private boolean isSaid(String kind) {
        return said.remarks().stream().anyMatch(each -> WordList.of(kind).isAll(Spelling.words(each)));
    }

    /** "Principal (stopped) 16": stopped pipes have the tone of a flute, whatever stands on the knob. */
    private boolean isSaidStopped() {
        return said.remarks().stream()
                .flatMap(remark -> Stream.of(remark.split("[,;]", -1)))
                .map(Spelling::words)
                .anyMatch(words -> WordList.of("stopped").in(words)
                        && WordList.of("stopped").without(words).stream().allMatch(WordList.of("stopped pipes")::has));
    }

    /** "Open Diapason (wood)" of a pedal is broader than others. */
    private StopKind withMaterial(StopKind kind) {
        return said.remarks().stream()
                .filter(each -> setting.inPedal() && WordList.of("extra column").isAll(Spelling.words(each)))
                .flatMap(each -> Lexicon.get().exact(said.name() + " " + each, setting).stream())
                .findFirst()
                .orElse(kind);
    }

    private Result stop(Lexicon.Found found) {
        StopKind kind = withMaterial(found.kind());
        Family family = family(kind);
        boolean counts = StopLine.countsRanks(family);
        boolean plain = counts || said.numeral().isEmpty() || (said.ranks() > 3 && family != Family.FLUTE);
        List<String> remarks = new ArrayList<>(said.remarks());
        if (remarks.stream().anyMatch(each -> WordList.of("borrowed").in(each) && !BorrowedRanks.isFromKey(each))) {
            remarks.add("borrowed or extended; read as a stop of its own");
        }
        if (found.how() == Confidence.GUESS) {
            remarks.add("unknown name, treated as a " + family.word() + "; please check");
        }
        boolean isDouble = said.ranks() == 2 && said.numeral().isEmpty();
        int ranks = counts ? ranks(kind, family, remarks) : isDouble ? 2 : 1;
        if (family.isCompound() && said.feet().size() > 1) {
            remarks.add(said.feet().stream().map(Footage::toString).collect(Collectors.joining(" + ")));
        }
        Optional<Footage> feet = said.pitch();
        boolean supposed = feet.isEmpty() && !family.isCompound();
        if (supposed) {
            feet = Optional.of(kind.usualFootage(setting.inPedal()));
            remarks.add("pitch not given; " + feet.get() + " ft assumed");
        }
        Pipe own =
                family != kind.family() && (kind.pipe().isReed() || family.isReed()) ? family.usualPipe() : kind.pipe();
        Pipe pipe = family == Family.FLUTE && isSaidStopped() ? Pipe.STOPPED : own;
        String whole = plain ? said.name() : said.name() + " " + said.numeral();
        String name = IBERIAN.contains(style.language()) ? DEGREE.matcher(whole).replaceAll("\u00aa") : whole;
        Line words = new Line(name);
        int runOn = RUN_ON.in(words);
        if (runOn >= 0
                && !words.is(runOn, "end of name")
                && Lexicon.get().exact(name, setting).isEmpty()) {
            return new None("several pitches: it may be several stops", Weight.DOUBT);
        }
        boolean odd = kind.family() == Family.MUTATION
                && said.ranks() == 0
                && feet.filter(each -> !supposed && isUnison(each)).isPresent();
        boolean isPitchedTwice = !supposed && PITCH_LAST.matcher(name).find();
        Confidence how = odd || isPitchedTwice ? Confidence.PITCH : found.how();
        return new OneStop(
                new ReadStop(name, feet, supposed, ranks, family, pipe, how, kind.strengthDb(), remarks, line));
    }

    private int ranks(StopKind kind, Family family, List<String> remarks) {
        if (said.ranks() > 0) {
            return Math.min(said.ranks(), Stop.MOST_RANKS);
        }
        int named = number(Spelling.words(said.name()).get(0));
        if (family == Family.CELESTE || named > 1) {
            return Math.max(1, family == Family.CELESTE ? 1 : named);
        }
        boolean pair = family == Family.CORNET
                ? kind.footage().feet() != 8
                : WordList.of("two ranks").has(Spelling.spelled(kind.name()));
        int usual = highRanks() > 1 ? (int) highRanks() : pair ? 2 : family == Family.CORNET ? 5 : 3;
        remarks.add("ranks not given; " + usual + " assumed");
        return usual;
    }

    /** "tre" is three; 0 for what is no number in words. */
    private static int number(String word) {
        return IntStream.rangeClosed(2, 7)
                .filter(i -> WordList.of("ranks in name " + i).has(word))
                .findFirst()
                .orElse(0);
    }
}
