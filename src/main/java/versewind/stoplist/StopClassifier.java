package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Stop;
import versewind.stoplist.StopLine.Mark;

/** What the text of one stop comes to. */
sealed interface StopClassifier {

    /**
     * A stop.
     *
     * @param stops the stop, or one for every pitch that is written after its name
     */
    record Stops(List<ReadStop> stops) implements StopClassifier {}

    /**
     * A pitch or ranks that belong to the stop before.
     *
     * @param line what is written
     */
    record Further(StopLine line) implements StopClassifier {}

    /**
     * No stop.
     *
     * @param why a sentence
     * @param weight whether it wants a second look
     */
    record None(String why, Unread.Weight weight) implements StopClassifier {}

    /** Whether a text says something of the organ or the page that is no part to play. */
    static boolean isNote(String text) {
        return Reader.PROSE.matcher(text).find() || Reader.TOY.matcher(text).find();
    }

    /** Reads the text of one stop. */
    static StopClassifier of(String text, int line, ListStyle style, NameContext.Keyboard keyboard) {
        return new Reader(text, line, style, keyboard).read();
    }

    /** Reads one text. */
    final class Reader {
        private static final Pattern PREPARED = Pattern.compile(
                "(?i)\\bprepar|\\bprep\\b|pr\u00e9par|vorbereitet|voorbereid|gereserveerd|predispost|preparad|f\u00f6rberedd|forberedt|\\bvacant\\b|\\bvakant\\b|\\bvacat\\b|\\bblank\\b|\\bspare\\b|\\bspare"
                        + " slide\\b|\\bvuoto\\b|\\bleer\\b|r\u00e9serve|for future|future addition");
        private static final Pattern TOY = Pattern.compile(
                "(?i)zimbelstern|[cz]y?i?mbelst[ea]r|cymbalst|zimbelstjern|cimbelster|glocken|klokke|klockspel|\\bchimes?\\b|\\bharp\\b|\\bcelesta\\b|xylophon|marimba|\\bpiano\\b|\\bdrums?\\b|\\bpauken?\\b|tambour|rossignol|nightingale|nachtigall?|nachtegaal|nattergal|usignol|kuckuck|koekoek|cuckoo|\\bcucu|vogel|pajarit|tympan|timpan|timball|thunder|tonnerre|\\borage\\b|campan|\\bbells?\\b|kalkant|calcant|ventil|evacuant|windlos|afsluit|afsluyt|vibraphone|handbells|sleigh|gong|triangle|castanet|\\bstern\\b|cascabel|banda"
                        + " turca|temporal\\b");
        private static final Pattern PROSE = Pattern.compile(
                "(?i)\\b(?:1[4-9]\\d\\d|20\\d\\d)\\b|\\w*(?:traktur|omfang|umfang|schleiflade|kegellade|windlade)\\w*|\\b(?:church|kirche|kerk|\u00e9glise|eglise|chiesa|iglesia|kirke|kyrka|cathedral|dom|built|erbaut|gebouwd|builder|orgelbau|opus|total|wind|pressure|temperament|blower|www|http|stimmung|traktur|tracker|action|console|case|spieltisch|winddruck|pipes|restored|rebuilt|restauriert|photo|page|copyright|width|height|email|tel|phone|the|is|are|was|were|has|have|wurde|ist|sind|und|wird|est|sont|une|with|from|date|price|metres|meters|cm|mm|kg|hz|ton|pitch|diapason"
                        + " normal|ranks|stops|note|notes|keys|tasten|tel)\\b|@|\u00a9|=");
        private static final Pattern BORROWED = Pattern.compile(
                "(?i)\\b(?:from|ext|extension|ext'n|transm\\w*|borrowed|emprunt\\w*|uit|aus|dal|prestato|auszug|auxiliar|tr|unit|dupl\\w*)\\b");
        private static final String SEVERAL_HIGH = "X[XVI]+(?:\\s?[-./+]\\s?X[XVI]+)+";
        private static final List<String> COUNTS = List.of("uno", "due", "tre", "quattro", "cinque", "sei", "sette");
        private static final int MOST_WORDS = 4;
        private static final int MOST_REMARK_WORDS = 9;
        private static final int MOST_TRIMMED = 4;

        private final String text;
        private final int line;
        private final ListStyle style;
        private final StopLine said;
        private final NameContext setting;

        Reader(String text, int line, ListStyle style, NameContext.Keyboard keyboard) {
            this.text = text;
            this.line = line;
            this.style = style;
            this.said = StopLine.of(text, style);
            this.setting = new NameContext(style.language(), keyboard, said.pitch(), said.ranks());
        }

        StopClassifier read() {
            if (PREPARED.matcher(text).find()) {
                return new None("prepared for only; it has no pipes yet, so it is left out", Unread.Weight.NOTE);
            }
            if (said.name().isEmpty()) {
                return (said.feet().isEmpty() && said.ranks() == 0) || !text.matches(".*\\d.*|.*[IVX].*")
                        ? new None("nothing here is a name", Unread.Weight.NOTE)
                        : new Further(said);
            }
            Optional<Lexicon.Found> whole = Lexicon.get().known(said.name(), setting);
            boolean exact = Lexicon.get().exact(said.name(), setting).isPresent();
            if ((TOY.matcher(said.name()).find() && (!exact || said.mark() == Mark.NONE)) || isCarillonOfBells()) {
                return new None(
                        "a bell, bird, drum, valve or the like: no rank of pipes that a plan can draw",
                        Unread.Weight.NOTE);
            }
            return said.mark() == Mark.NONE && said.ranks() == 0 ? withoutPitch(whole) : withPitch(whole);
        }

        private boolean isCarillonOfBells() {
            return said.ranks() == 0
                    && Spelling.plain(said.name()).matches("carillons?")
                    && !style.language().equals("fr");
        }

        private StopClassifier withoutPitch(Optional<Lexicon.Found> whole) {
            if (isSentence()) {
                return note();
            }
            if (whole.isPresent()) {
                return stop(whole.get());
            }
            Optional<Lexicon.Found> first =
                    said.name().matches(".*\\s(?:e|con|y|et|und|and)\\s.*") ? trimmed() : Optional.empty();
            if (first.isPresent()) {
                return stop(first.get());
            }
            Optional<Lexicon.Found> near = Lexicon.get().find(said.name(), setting);
            if (near.isPresent() && Spelling.words(said.name()).size() <= 3) {
                return stop(near.get());
            }
            boolean goesOn = !text.isEmpty() && Character.isLowerCase(text.charAt(0));
            return goesOn || PROSE.matcher(text).find() || Spelling.words(text).size() > MOST_WORDS
                    ? note()
                    : new None("no pitch, and the name is not in the lexicon", Unread.Weight.DOUBT);
        }

        private StopClassifier withPitch(Optional<Lexicon.Found> whole) {
            if (whole.isPresent() && !isSentence()) {
                return stop(whole.get());
            }
            if (isSentence()) {
                return note();
            }
            Optional<Lexicon.Found> trimmed = trimmed();
            if (trimmed.isPresent()) {
                return stop(trimmed.get());
            }
            Optional<Lexicon.Found> near = Lexicon.get().find(said.name(), setting);
            if (near.isPresent()) {
                return stop(near.get());
            }
            boolean few = DivisionHeading.read(said.name(), style.language()).isEmpty()
                    && Spelling.words(said.name()).size() <= MOST_WORDS
                    && said.name().matches(".*\\p{L}{3,}.*");
            boolean surely = said.mark() == Mark.UNIT
                    || (said.mark() == Mark.BARE
                            && said.feet().get(0).feet() <= 32
                            && !said.name().matches(".*\\d.*"));
            if (few && surely && !PROSE.matcher(text).find()) {
                return stop(new Lexicon.Found(guessed(), Confidence.GUESS));
            }
            return PROSE.matcher(text).find()
                    ? note()
                    : new None("it cannot be told whether this is a stop", Unread.Weight.DOUBT);
        }

        private boolean isSentence() {
            int words = Spelling.words(said.said()).size();
            boolean prose = Pattern.compile(
                            "(?i)\\b(?:was|were|is|are|has|have|had|wurde|wurden|ist|sind|war|est|sont|een|werd|zijn|the|which|auch|nach|som|med|che)\\b")
                    .matcher(text.replaceAll("\\([^)]*\\)", " "))
                    .find();
            return words > 2 * MOST_REMARK_WORDS
                    || (prose
                            && Spelling.words(text.replaceAll("\\([^)]*\\)", " "))
                                            .size()
                                    > MOST_WORDS);
        }

        private static None note() {
            return new None("it says something of the organ or the page, and is no stop", Unread.Weight.NOTE);
        }

        /** The name without words at its end, or at its beginning, that the lexicon does not know. */
        private Optional<Lexicon.Found> trimmed() {
            List<String> words = List.of(said.name().split("[ /]+", -1));
            for (int cut = 1; cut <= MOST_TRIMMED && cut < words.size(); cut++) {
                String head = String.join(" ", words.subList(0, words.size() - cut));
                String tail = String.join(" ", words.subList(cut, words.size()));
                for (String part : List.of(head, tail)) {
                    Optional<StopKind> kind = part.length() > 2 ? Lexicon.get().exact(part, setting) : Optional.empty();
                    if (kind.isPresent()) {
                        return kind.map(each -> new Lexicon.Found(each, Confidence.PARTS));
                    }
                }
            }
            return Optional.empty();
        }

        private StopKind guessed() {
            Footage feet = said.pitch().orElse(Footage.of(8));
            Family family = (said.ranks() >= 2 && said.numeral().isEmpty()) || said.ranks() >= 3
                    ? Family.MIXTURE
                    : isFifthOrThird(feet) ? Family.MUTATION : Family.FLUTE;
            return new StopKind(
                    said.name(),
                    "la",
                    family,
                    feet,
                    Optional.empty(),
                    family.usualPipe(),
                    0,
                    "A stop that the lexicon does not know.");
        }

        static boolean isFifthOrThird(Footage feet) {
            int odd = feet.denominator();
            return odd % 3 == 0 || odd % 5 == 0 || odd % 7 == 0 || odd > 8;
        }

        private Family family(StopKind kind) {
            Family family = said.name().matches(SEVERAL_HIGH) ? Family.MIXTURE : kind.family();
            boolean single = family == Family.PRINCIPAL
                    || family == Family.FLUTE
                    || family == Family.STRING
                    || family == Family.MUTATION;
            boolean several = (said.ranks() >= 2 && said.numeral().isEmpty())
                    || (said.ranks() >= 2
                            && !said.numeral().isEmpty()
                            && (family == Family.MUTATION
                                    || (said.ranks() >= 3
                                            && said.pitch()
                                                    .filter(feet -> feet.feet() < 4)
                                                    .isPresent())));
            if (single
                    && several
                    && (family == Family.MUTATION
                            || said.pitch().filter(feet -> feet.feet() < 4).isPresent())) {
                return Family.MIXTURE;
            }
            return single && said.pitch().filter(Reader::isFifthOrThird).isPresent() ? Family.MUTATION : family;
        }

        private StopClassifier stop(Lexicon.Found found) {
            StopKind kind = found.kind();
            Family family = family(kind);
            boolean counts = StopLine.countsRanks(family);
            String name = counts || said.numeral().isEmpty() || (said.ranks() > 3 && family != Family.FLUTE)
                    ? said.name()
                    : said.name() + " " + said.numeral();
            List<String> remarks = new ArrayList<>(said.remarks());
            if (BORROWED.matcher(said.said()).find()) {
                remarks.add("borrowed or extended; read as a stop of its own");
            }
            int ranks = ranks(kind, family, remarks);
            Optional<Footage> feet = said.pitch();
            boolean supposed = feet.isEmpty() && !family.isCompound();
            if (supposed) {
                feet = Optional.of(kind.usualFootage(setting.inPedal()));
                remarks.add("its pitch is not written; " + feet.get() + " ft is usual");
            }
            var pipe = family == kind.family() ? kind.pipe() : kind.pipe().isReed() ? family.usualPipe() : kind.pipe();
            List<ReadStop> stops = new ArrayList<>();
            stops.add(new ReadStop(
                    name, feet, supposed, ranks, family, pipe, found.how(), kind.strengthDb(), remarks, line));
            return new Stops(stops);
        }

        private int ranks(StopKind kind, Family family, List<String> remarks) {
            if (!StopLine.countsRanks(family)) {
                return 1;
            }
            if (said.ranks() > 0) {
                return Math.min(said.ranks(), Stop.MOST_RANKS);
            }
            if (family == Family.CELESTE) {
                return 1;
            }
            int usual = said.name().matches(SEVERAL_HIGH)
                    ? said.name().split("[-./+]", -1).length
                    : family == Family.CORNET
                            ? kind.footage().feet() == 8 ? 5 : 2
                            : kind.name().startsWith("Rausch") ? 2 : 3;
            int counted = COUNTS.indexOf(Spelling.words(said.name()).get(0)) + 1;
            if (counted > 1) {
                return counted;
            }
            remarks.add("its ranks are not written; " + usual + " are supposed");
            return usual;
        }
    }
}
