package versewind.stoplist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What a line says of pistons: "6 generals, Great 4, Swell 4", "Generals 1-8", "64 memory levels".
 *
 * @param generals number of general pistons; 0 where none is said
 * @param levels number of memory levels; 0 where none is said
 * @param toEach number of pistons of each division; 0 where none is said
 * @param divisionals number of pistons by the words that name their divisions
 * @param rest what was not understood of it
 */
record PistonLine(int generals, int levels, int toEach, Map<DivisionWord, Integer> divisionals, List<String> rest) {

    private static final Pattern NAMED = Pattern.compile(
            "(?i)\\b(?:pistons?|studs?|generals?|generalkoppel|composition|divisionals?|memor(?:y|ies)|levels?|setzer\\w*|combination\\w*|kombination\\w*|combinaison\\w*|combinazion\\w*|reversib\\w*|sequencer|crescendo\\w*|walze|rollschweller|tutti|sforzando|appels?|anches|cancel|organo pleno|toe|thumb|schwelltritt|expression|swell pedal|setzen|zungen ab|pleno|absteller|registercrescendo|handregister|kombinationen|annullator\\w*|lock|zungeneinzelabsteller|ripieno al)\\b");
    private static final Pattern PARTS = Pattern.compile("[,;:]|\\.\\s|(?i)\\s(?:and|und|et|en|e|y)\\s(?=\\d)");
    private static final Pattern COUNT =
            Pattern.compile("(?<!\\p{L})(\\d{1,5})(?:\\s?(?:-|to|bis)\\s?(\\d{1,3}))?(?!\\p{L})");
    private static final Pattern GENERAL =
            Pattern.compile("(?i)\\bg[e\u00e9]n[e\u00e9]r[a\u00e4]|\\bfreie?\\b|\\blibres?\\b|\\bliber[ae]\\b");
    private static final Pattern EACH =
            Pattern.compile("(?i)\\b(?:each|every|all|je)\\b.*(?:division|manual|keyboard|werk)");
    private static final Pattern AIDS =
            Pattern.compile("(?i)\\b(?:composition|combination|toe|thumb|foot)\\s+(?:pedals?|pistons?|studs?)\\b");
    private static final Pattern LEVELS =
            Pattern.compile("(?i)memor|level|ebene|niveau|livell|nivel|setzer|kombinationen|combinaisons|combinazioni");
    private static final Pattern OTHERS = Pattern.compile("(?i)revers|cancel|coupler|\\bto pedal\\b|tutti|crescendo");
    private static final int MOST = 40;
    private static final int MOST_LEVELS = 100_000;

    PistonLine {
        divisionals = Collections.unmodifiableMap(new LinkedHashMap<>(divisionals));
        rest = List.copyOf(rest);
    }

    /** Whether a text tells of pistons and the like. */
    static boolean isOfPistons(String text) {
        return NAMED.matcher(text).find();
    }

    /** Whether anything was understood. */
    boolean saysAnything() {
        return generals > 0 || levels > 0 || toEach > 0 || !divisionals.isEmpty();
    }

    static PistonLine read(String text, String language) {
        int generals = 0;
        int levels = 0;
        int toEach = 0;
        Map<DivisionWord, Integer> divisionals = new LinkedHashMap<>();
        List<String> rest = new ArrayList<>();
        for (String part : PARTS.split(text, -1)) {
            if (part.isBlank()) {
                continue;
            }
            int count = OTHERS.matcher(part).find() ? 0 : count(part);
            Optional<DivisionWord> division = division(AIDS.matcher(part).replaceAll(" "), language);
            if (count > 0 && count <= MOST && GENERAL.matcher(part).find()) {
                generals = count;
            } else if (count > 0 && count <= MOST && EACH.matcher(part).find()) {
                toEach = count;
            } else if (count > 0 && count <= MOST && division.isPresent()) {
                divisionals.put(division.get(), count);
            } else if (count > 0 && count <= MOST_LEVELS && LEVELS.matcher(part).find()) {
                levels = count;
            } else {
                rest.add(part.strip());
            }
        }
        return new PistonLine(generals, levels, toEach, divisionals, rest);
    }

    /** "6" is six; "1-8" is eight; 0 where no number is said, or more than one. */
    private static int count(String part) {
        Matcher matcher = COUNT.matcher(part);
        if (!matcher.find()) {
            return 0;
        }
        int first = Integer.parseInt(matcher.group(1));
        int count = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2)) - first + 1;
        return matcher.find() ? 0 : Math.max(0, count);
    }

    private static Optional<DivisionWord> division(String part, String language) {
        List<String> words = Spelling.words(part);
        return IntStream.range(0, words.size())
                .mapToObj(i -> DivisionWord.at(words, i, language))
                .flatMap(Optional::stream)
                .map(DivisionWord.Spotted::word)
                .findFirst();
    }
}
