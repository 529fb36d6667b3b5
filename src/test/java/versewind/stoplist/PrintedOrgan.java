package versewind.stoplist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Footage;

/**
 * An organ that is known in full before it is printed and read again.
 *
 * @param words how its language writes lists
 * @param divisions from the main manual on, the pedal last
 * @param couplers which division sounds on which keyboard
 */
record PrintedOrgan(Words words, List<KnownDivision> divisions, List<KnownCoupler> couplers) {

    private static final Path VOCABULARY = Path.of("src/test/resources/stoplists/made/vocabulary.txt");
    private static final List<Family> FAMILIES = List.of(
            Family.PRINCIPAL,
            Family.FLUTE,
            Family.STRING,
            Family.CELESTE,
            Family.MUTATION,
            Family.MIXTURE,
            Family.CORNET,
            Family.CHORUS_REED,
            Family.SOLO_REED);

    /**
     * @param name as it is printed
     * @param feet empty for a compound stop
     * @param ranks of a compound stop; 1 for others
     */
    record KnownStop(String name, Optional<Footage> feet, int ranks, Family family) {

        private static final Pattern STOP =
                Pattern.compile("(.*?) (\\d+ \\d+/\\d+|\\d+/\\d+|0 \\d+|\\d+) ([PFSCMXKTR])");

        /** Reads "Twelfth 2 2/3 M" and "Mixture 0 3 X". */
        static KnownStop of(String text) {
            Matcher parts = STOP.matcher(text.strip());
            if (!parts.matches()) {
                throw new IllegalArgumentException(text);
            }
            String figures = parts.group(2);
            boolean compound = figures.startsWith("0 ");
            return new KnownStop(
                    parts.group(1),
                    compound ? Optional.empty() : Footage.parse(figures),
                    compound ? Integer.parseInt(figures.substring(2)) : 1,
                    FAMILIES.get("PFSCMXKTR".indexOf(parts.group(3))));
        }
    }

    /**
     * @param place its place among all headings of the language
     * @param isPedal whether it is played by the feet
     */
    record KnownDivision(int place, boolean isPedal, List<KnownStop> stops) {}

    /**
     * @param source index of the division that sounds
     * @param keyboard index of the division whose keys are played
     */
    record KnownCoupler(int source, int keyboard, Coupler.Kind kind) {}

    /** How lists are written in a language, by the heads of the vocabulary. */
    record Words(String language, Map<String, String> heads) {

        String one(String head) {
            return heads.get(head);
        }

        String at(String head, int place) {
            return heads.get(head).split(", ", -1)[place];
        }

        List<KnownStop> stops(String head) {
            return Stream.of(heads.get(head).split("; ", -1)).map(KnownStop::of).toList();
        }
    }

    /** The languages of the vocabulary. */
    static List<Words> languages() throws IOException {
        List<Words> languages = new ArrayList<>();
        for (String line : Files.readAllLines(VOCABULARY)) {
            if (line.startsWith("[")) {
                languages.add(new Words(line.substring(1, line.length() - 1), new LinkedHashMap<>()));
            } else if (!line.startsWith("#") && !line.isBlank()) {
                int blank = line.indexOf(' ');
                languages.get(languages.size() - 1).heads().put(line.substring(0, blank), line.substring(blank + 1));
            }
        }
        return languages;
    }

    /** An organ of one to three manuals and a pedal at random. */
    static PrintedOrgan atRandom(Words words, int manuals, Random random) {
        List<KnownDivision> divisions = new ArrayList<>();
        List<KnownCoupler> couplers = new ArrayList<>();
        for (int i = 0; i < manuals; i++) {
            divisions.add(new KnownDivision(i, false, some(words.stops("manual"), 4 + random.nextInt(6), random)));
            couplers.add(new KnownCoupler(i, manuals, Coupler.Kind.UNISON));
            if (i > 0) {
                couplers.add(new KnownCoupler(i, 0, Coupler.Kind.UNISON));
            }
        }
        divisions.add(new KnownDivision(3, true, some(words.stops("pedal"), 2 + random.nextInt(4), random)));
        return new PrintedOrgan(words, divisions, couplers);
    }

    private static List<KnownStop> some(List<KnownStop> all, int count, Random random) {
        Set<KnownStop> drawn = new HashSet<>();
        while (drawn.size() < Math.min(count, all.size())) {
            drawn.add(all.get(random.nextInt(all.size())));
        }
        return all.stream().filter(drawn::contains).toList();
    }
}
