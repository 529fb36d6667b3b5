package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.schema.Field.Layout;

/** The fields of a stop. */
public final class StopFields {
    /** Stands between division and stop in the name of a stop. */
    static final String SEPARATOR = ": ";

    /** A trim in dB. */
    static final Kind<Double> TRIM_DB = Kinds.decimal(-Stop.WIDEST_TRIM_DB, Stop.WIDEST_TRIM_DB);

    /** A stop of the organ with its division. */
    static final Kind<StopName> STOP_NAME = new Kinds.Name<>(
            "a stop", "with its division, as Pedal: Bourdon 16", StopFields::stopName, StopName::toString);

    private static final Kind<Footage> FOOTAGE = new Feet();

    private static final Table<MixtureBreak> BREAK = Table.line(
            "What a compound stop sounds from one key upward until the next break.",
            values -> new MixtureBreak(values.get(StopFields.FROM_KEY), values.get(StopFields.PITCHES)),
            StopFields::of);

    private static final Field<MixtureBreak, Integer> FROM_KEY = BREAK.add(
            "from",
            new Kinds.Parsed<>(
                    "a key",
                    "C to B for the bottom octave, then c to b, c1 to b1 and so on, sharps as c#1",
                    KeyName::parse,
                    KeyName::of),
            "the lowest key");

    private static final Field<MixtureBreak, List<Footage>> PITCHES =
            BREAK.add("feet", new Kinds.Items<>(FOOTAGE, ""), "the pitch of every rank");

    public static final Table<Stop> TABLE = Table.line(
            "One drawable voice. Plans name it by name and pitch as on its knob: \"Open Diapason 8\", \"Mixture III\".",
            StopFields::stop,
            StopFields::of);

    public static final Field<Stop, String> NAME =
            TABLE.add("name", Kinds.NAME, "what stands on the knob, without the pitch");

    public static final Field<Stop, Optional<Footage>> FEET = TABLE.ifAny(
                    "feet", FOOTAGE, "its pitch; only a mixture or cornet may be without")
            .asked("pitch (a mixture or cornet may have none)");

    public static final Field<Stop, Integer> RANKS = TABLE.add(
                    "ranks", new Ranks(), "pipes a note; several for mixtures, cornets and celestes only")
            .orElse(1);

    /** The same in a form, where a mixture or cornet always says it. */
    static final Field<Stop, Optional<Integer>> RANKS_TYPED = new Field<Stop, Optional<Integer>>(
                    RANKS.name(),
                    new Kinds.IfAny<>(RANKS.kind()),
                    RANKS.about(),
                    (stop, field) -> stop.ranks() > 1 || stop.family().isCompound()
                            ? Optional.of(stop.ranks())
                            : Optional.empty())
            .orElse(Optional.empty())
            .asked("pipes a note; a mixture or cornet needs it");

    public static final Field<Stop, Family> FAMILY =
            TABLE.add("family", Kinds.choice(Family.values()), "its tonal family");

    public static final Field<Stop, Optional<Pipe>> PIPE =
            TABLE.ifAny("pipe", Kinds.choice(Pipe.values()), "what its pipes are, if not as usual");

    public static final Field<Stop, Optional<StopName>> FROM =
            TABLE.ifAny("from", STOP_NAME, "the stop whose pipes it plays");

    public static final Field<Stop, Double> TRIM = TABLE.add(
                    "trim", TRIM_DB, "level in dB above that of its family; borrowed pipes are trimmed at the lender")
            .orElse(0.0);

    public static final Field<Stop, Boolean> OUTSIDE = TABLE.add(
                    "outside the box", new Kinds.Flag(Kinds.NO), "whether it stands outside its division's swell box")
            .orElse(false)
            .asked("whether it stands in its division's swell box")
            .label("In box");

    public static final Field<Stop, List<MixtureBreak>> COMPOSITION = TABLE.add(
                    "composition", new Breaks(), "pitches of a mixture or cornet from each key upward")
            .orElse(List.of())
            .label("Breaks")
            .laid(Layout.FIT);

    public static final Field<Stop, String> NOTE =
            TABLE.text("note", "what else there is to know of it, as from tenor C");

    private StopFields() {}

    private static Object of(MixtureBreak part, String field) {
        return switch (field) {
            case "from" -> part.fromKey();
            case "feet" -> part.pitches();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Stop stop, String field) {
        return switch (field) {
            case "name" -> stop.name();
            case "feet" -> stop.footage();
            case "ranks" -> stop.ranks();
            case "family" -> stop.family();
            case "pipe" -> stop.pipe() == stop.family().usualPipe() ? Optional.empty() : Optional.of(stop.pipe());
            case "from" -> stop.borrowed();
            case "trim" -> stop.trimDb();
            case "outside the box" -> stop.enclosure() == Stop.Enclosure.OUTSIDE_THE_BOX;
            case "composition" -> stop.composition();
            case "note" -> stop.note();
            default -> throw Table.without(field);
        };
    }

    private static Stop stop(Values values) throws Refused {
        Family family = values.get(FAMILY);
        return new Stop(
                values.get(NAME),
                values.get(FEET),
                family,
                values.get(PIPE).orElse(family.usualPipe()),
                values.get(RANKS),
                values.get(COMPOSITION),
                values.get(TRIM),
                values.get(OUTSIDE) ? Stop.Enclosure.OUTSIDE_THE_BOX : Stop.Enclosure.AS_ITS_DIVISION,
                values.get(FROM),
                values.get(NOTE));
    }

    private static Optional<StopName> stopName(String text) {
        int cut = text.indexOf(SEPARATOR);
        return cut < 0
                ? Optional.empty()
                : Optional.of(new StopName(text.substring(0, cut), text.substring(cut + SEPARATOR.length())));
    }

    /** A pitch in feet, typed with or without a sign for feet. */
    private static final class Feet extends Kinds.Parsed<Footage> {
        Feet() {
            super("a pitch in feet", "such as 8, 2 2/3 or 1/2", Footage::parse, Footage::toString);
        }

        @Override
        Object shaped(String typed) {
            String plain = typed.strip();
            for (String sign : List.of("'", "ft.", "ft")) {
                if (plain.endsWith(sign)) {
                    return plain.substring(0, plain.length() - sign.length()).stripTrailing();
                }
            }
            return plain;
        }
    }

    /** A number of ranks, typed in Arabic or Roman figures. */
    private static final class Ranks extends Kinds.Whole {
        Ranks() {
            super(1, Stop.MOST_RANKS);
        }

        @Override
        Object shaped(String typed) {
            int numeral = Stop.NUMERALS.indexOf(typed.strip().toUpperCase(Locale.ROOT)) + 1;
            return numeral > 0 ? (Object) (double) numeral : super.shaped(typed);
        }
    }

    /** The breaks of a compound stop, typed as "C 1 1/3, 1; c1 2, 1 1/3". */
    private static final class Breaks extends Kinds.Items<MixtureBreak> {
        Breaks() {
            super(new Kinds.Nested<>(() -> BREAK), "a key, then its feet, as C 1 1/3, 1; c1 2, 1 1/3");
        }

        @Override
        Object shaped(String typed) {
            List<Object> breaks = new ArrayList<>();
            for (String part : typed.strip().split("\\s*;\\s*", -1)) {
                int cut = part.indexOf(' ');
                if (cut < 0) {
                    return part;
                }
                List<Object> feet = new ArrayList<>();
                for (String pitch : part.substring(cut).split(",", -1)) {
                    feet.add(FOOTAGE.shaped(pitch));
                }
                Map<String, Object> row = new LinkedHashMap<>();
                row.put(FROM_KEY.name(), part.substring(0, cut));
                row.put(PITCHES.name(), feet);
                breaks.add(row);
            }
            return breaks;
        }

        @Override
        String typed(List<MixtureBreak> breaks, OrganNames names) {
            return breaks.stream()
                    .map(each -> KeyName.of(each.fromKey()) + " "
                            + each.pitches().stream().map(Footage::toString).collect(Collectors.joining(", ")))
                    .collect(Collectors.joining("; "));
        }
    }
}
