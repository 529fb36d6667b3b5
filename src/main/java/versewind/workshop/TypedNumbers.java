package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.Footage;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.organ.Stop;

/** Numbers, pitches, ranks and breaks as they are typed. */
final class TypedNumbers {
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,20}(?:[.,]\\d{1,30})?");
    private static final Pattern FEET = Pattern.compile("(.*?)\\s*(?:'|ft\\.?)?");
    private static final Pattern BREAK = Pattern.compile("\\s*(\\S+)\\s+(\\S.*?)\\s*");

    private TypedNumbers() {}

    static OptionalInt whole(String written) {
        String plain = written.strip();
        return WHOLE.matcher(plain).matches() ? OptionalInt.of(Integer.parseInt(plain)) : OptionalInt.empty();
    }

    static OptionalDouble number(String written) {
        String plain = written.strip();
        return NUMBER.matcher(plain).matches()
                ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')) + 0.0)
                : OptionalDouble.empty();
    }

    /** A pitch, with or without a sign for feet behind it. */
    static Optional<Footage> feet(String written) {
        Matcher matcher = FEET.matcher(written.strip());
        return matcher.matches() ? Footage.parse(matcher.group(1)) : Optional.empty();
    }

    /** A number of ranks, in Arabic or Roman figures. */
    static OptionalInt ranks(String written) {
        int numeral = Stop.NUMERALS.indexOf(written.strip().toUpperCase(Locale.ROOT)) + 1;
        OptionalInt ranks = numeral > 0 ? OptionalInt.of(numeral) : whole(written);
        return ranks.orElse(0) >= 1 && ranks.orElse(0) <= Stop.MOST_RANKS ? ranks : OptionalInt.empty();
    }

    /** A number of ranks as it stands on a knob; "" where it cannot be read. */
    static String numeral(String written) {
        return ranks(written).stream()
                .mapToObj(ranks -> Stop.NUMERALS.get(ranks - 1))
                .findFirst()
                .orElse("");
    }

    /** The breaks of a compound stop: "C 1 1/3, 1; c1 2, 1 1/3"; empty where they cannot be read. */
    static Optional<List<MixtureBreak>> breaks(String written) {
        List<MixtureBreak> breaks = new ArrayList<>();
        if (written.isBlank()) {
            return Optional.of(breaks);
        }
        for (String part : written.split(";", -1)) {
            Matcher matcher = BREAK.matcher(part);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            Optional<Integer> key = KeyName.parse(matcher.group(1));
            List<Optional<Footage>> feet = List.of(matcher.group(2).split(",", -1)).stream()
                    .map(TypedNumbers::feet)
                    .toList();
            if (key.isEmpty() || feet.stream().anyMatch(Optional::isEmpty)) {
                return Optional.empty();
            }
            breaks.add(new MixtureBreak(
                    key.get(), feet.stream().map(Optional::orElseThrow).toList()));
        }
        return Optional.of(breaks);
    }

    /** The breaks as they are read. */
    static String written(List<MixtureBreak> breaks) {
        return breaks.stream()
                .map(each -> KeyName.of(each.fromKey()) + " "
                        + each.pitches().stream().map(Object::toString).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }
}
