package versewind.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.sheet.LevelText;

/** The numbers given for an option. */
final class Numbers {

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");
    private static final Pattern COLON = Pattern.compile(":");
    private static final Pattern SIGN = Pattern.compile("=");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,7}(\\.\\d{0,12})?|\\.\\d{1,12})");

    private final Typed typed;

    Numbers(Typed typed) {
        this.typed = typed;
    }

    /** True if an option was given. */
    boolean has(String option) {
        return typed.has(option);
    }

    /** The value of a required option. */
    String needed(String option) throws NotationException {
        if (!has(option)) {
            throw new UsageException(option + " is needed for this. See versewind calc --help.");
        }
        return typed.value(option).orElse("");
    }

    /** The value of an option, or a default. */
    String or(String option, String otherwise) {
        return typed.value(option).orElse(otherwise);
    }

    /** A required number. */
    double one(String option) throws NotationException {
        return number(option, needed(option).strip());
    }

    /** A number, or a default. */
    double one(String option, double otherwise) throws NotationException {
        return has(option) ? one(option) : otherwise;
    }

    /** Several numbers, a hyphen for a level of nothing. */
    double[] several(String option) throws NotationException {
        List<Double> numbers = new ArrayList<>();
        for (String part : BETWEEN.split(needed(option).strip(), -1)) {
            numbers.add(level(option, part));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Pairs with a colon between the two numbers, "12.4:0.05". */
    List<double[]> pairs(String option) throws NotationException {
        List<double[]> pairs = new ArrayList<>();
        for (String part : BETWEEN.split(needed(option).strip(), -1)) {
            String[] both = COLON.split(part, -1);
            if (both.length != 2) {
                throw new UsageException(
                        "Enter pairs such as 12.4:0.05 for " + option + ", not " + Quoted.text(part) + ".");
            }
            pairs.add(new double[] {number(option, both[0]), number(option, both[1])});
        }
        return pairs;
    }

    /** Levels of all third octaves: one each from 25 Hz up, or some as "1000=60", the others silent. */
    double[] thirdOctaves(String option) throws NotationException {
        if (!needed(option).contains("=")) {
            double[] levels = several(option);
            if (levels.length != ThirdOctaves.COUNT) {
                throw new UsageException(
                        option + " takes a level for each of the 28 third octaves from 25 Hz to 12.5 kHz, or some"
                                + " like 1000=60; here are " + levels.length + ".");
            }
            return levels;
        }
        double[] levels = new double[ThirdOctaves.COUNT];
        Arrays.fill(levels, Double.NEGATIVE_INFINITY);
        for (String part : BETWEEN.split(needed(option).strip(), -1)) {
            String[] both = SIGN.split(part, -1);
            if (both.length != 2) {
                throw new UsageException(
                        "Enter levels such as 1000=60 for " + option + ", not " + Quoted.text(part) + ".");
            }
            double hz = number(option, both[0]);
            int band = ThirdOctaves.bandOf(hz)
                    .orElseThrow(() ->
                            new UsageException("No third octave from 25 Hz to 12.5 kHz is at " + both[0] + " Hz."));
            levels[band] = level(option, both[1]);
        }
        return levels;
    }

    /** A level; a hyphen for a level of nothing. */
    private static double level(String option, String part) throws NotationException {
        return part.equals(LevelText.NONE) ? Double.NEGATIVE_INFINITY : number(option, part);
    }

    private static double number(String option, String part) throws NotationException {
        if (!NUMBER.matcher(part).matches()) {
            throw new UsageException(
                    "Enter numbers such as 12 or 2.5 for " + option + ", not " + Quoted.text(part) + ".");
        }
        return Double.parseDouble(part);
    }
}
