package versewind.proposal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import versewind.plan.Mood;

/**
 * Which layers suit whom, and in which mood: what one stop of a layer costs, and what is missed where it is not drawn.
 * Points are estimates; common practice, no source.
 */
final class StopPreferences {

    /** For each role and layer: gentle, plain, bright, festal. */
    private static final Map<Role, double[][]> COSTS = new EnumMap<>(Map.of(
            Role.PEOPLE,
            read("""
                DOUBLE          4    1.5  0.9  0.3
                PRINCIPAL_8     0.6  0    0    0
                FLUTE_8         0    0.25 0.35 0.35
                STRING_8        0.3  0.4  0.5  0.5
                CELESTE         9    9    9    9
                PRINCIPAL_4     0.8  0    0    0
                FLUTE_4         0    0.25 0.35 0.4
                TWELFTH         3    1    0.3  0.15
                PRINCIPAL_2     2.5  0.3  0    0
                FLUTE_2         1.5  0.6  0.5  0.5
                HIGH            3    1.5  0.7  0.5
                MUTATION        3    3    2.5  2
                MIXTURE         8    1.2  0.15 0
                CORNET          8    3    2    1
                REED_16         10   4    1.2  0.3
                REED_8          10   4    0.8  0
                REED_4          10   4    1.2  0.2
                SOLO_REED       4    3    2.5  2
                ODD_REED        6    5    4    3
                PEDAL_32        4    3    2    0.4
                PEDAL_16        0    0    0    0
                PEDAL_8         0    0    0    0
                PEDAL_4         2    0.5  0.1  0
                PEDAL_MUTATION  4    2    1    0.6
                PEDAL_MIXTURE   4    2    0.6  0
                PEDAL_REED_32   9    6    3    0.8
                PEDAL_REED_16   6    3    1    0.1
                PEDAL_REED_8    6    4    2    0.3
                PEDAL_COLOUR    4    3    3    3
                """),
            Role.CHOIR,
            read("""
                DOUBLE          4    3    2    1
                PRINCIPAL_8     0.4  0.1  0    0
                FLUTE_8         0    0    0.1  0.2
                STRING_8        0.2  0.2  0.3  0.3
                CELESTE         5    6    6    6
                PRINCIPAL_4     0.8  0.2  0    0
                FLUTE_4         0    0    0.1  0.2
                TWELFTH         3    2    1    0.5
                PRINCIPAL_2     2.5  1.2  0.3  0
                FLUTE_2         1.2  0.8  0.4  0.3
                HIGH            3    2    1    0.6
                MUTATION        3    3    2.5  2
                MIXTURE         5    3    1    0.3
                CORNET          5    4    3    2
                REED_16         8    6    3    1.5
                REED_8          6    4    2    0.8
                REED_4          8    6    3    1.5
                SOLO_REED       4    3    2.5  2
                ODD_REED        6    5    4    4
                PEDAL_32        5    4    3    2
                PEDAL_16        0    0    0    0
                PEDAL_8         0    0    0    0
                PEDAL_4         3    1.5  0.6  0.3
                PEDAL_MUTATION  4    3    2    2
                PEDAL_MIXTURE   5    4    2    1
                PEDAL_REED_32   9    9    6    4
                PEDAL_REED_16   8    6    3    1.5
                PEDAL_REED_8    8    6    3    2
                PEDAL_COLOUR    4    4    4    4
                """),
            Role.SOLOIST,
            read("""
                DOUBLE          5    5    4    4
                PRINCIPAL_8     1    0.8  0.5  0.4
                FLUTE_8         0    0    0    0
                STRING_8        0.2  0.2  0.2  0.3
                CELESTE         3    4    5    5
                PRINCIPAL_4     1.5  1    0.6  0.5
                FLUTE_4         0.1  0    0    0
                TWELFTH         5    4    3    3
                PRINCIPAL_2     4    3    2    1.5
                FLUTE_2         2    1.5  0.8  0.6
                HIGH            5    4    3    3
                MUTATION        4    4    3    3
                MIXTURE         7    6    5    4
                CORNET          6    6    5    5
                REED_16         9    9    8    8
                REED_8          8    7    6    5
                REED_4          9    9    8    8
                SOLO_REED       4    4    3    3
                ODD_REED        6    6    6    6
                PEDAL_32        6    5    5    5
                PEDAL_16        0    0    0    0
                PEDAL_8         0    0    0    0
                PEDAL_4         4    3    2    2
                PEDAL_MUTATION  5    5    4    4
                PEDAL_MIXTURE   7    6    5    5
                PEDAL_REED_32   9    9    9    9
                PEDAL_REED_16   9    8    7    6
                PEDAL_REED_8    9    8    7    6
                PEDAL_COLOUR    5    5    5    5
                """),
            Role.SOLO_LINE,
            read("""
                DOUBLE          4    4    4    4
                PRINCIPAL_8     0.4  0.4  0.4  0.9
                FLUTE_8         0.2  0.4  0.7  1.5
                STRING_8        0.8  1    1.2  1.4
                CELESTE         4    4    4    4
                PRINCIPAL_4     3    3    3    3
                FLUTE_4         1.2  1.2  1.2  1.2
                TWELFTH         1    1    1    1
                PRINCIPAL_2     4    4    4    4
                FLUTE_2         2    1.5  1.5  1.5
                HIGH            4    4    4    4
                MUTATION        0.2  0.2  0.2  0.2
                MIXTURE         6    6    6    6
                CORNET          1.5  0.3  0    0
                REED_16         5    5    5    5
                REED_8          3    1    0.2  0
                REED_4          5    5    5    5
                SOLO_REED       0    0    0.2  1.2
                ODD_REED        3    3    3    3
                """),
            Role.UNDER_SOLO,
            read("""
                DOUBLE          5    5    5    5
                PRINCIPAL_8     1.5  1.2  0.6  0.1
                FLUTE_8         0    0    0    0.5
                STRING_8        0    0.1  0.1  0.2
                CELESTE         2    3    3    3
                PRINCIPAL_4     4    3    1.5  0.1
                FLUTE_4         1    0.8  0.5  0.4
                TWELFTH         6    6    6    6
                PRINCIPAL_2     6    6    4    0.8
                FLUTE_2         4    4    3    3
                HIGH            6    6    6    6
                MUTATION        6    6    6    6
                MIXTURE         8    8    8    8
                CORNET          8    8    8    8
                REED_16         9    9    9    9
                REED_8          9    9    9    9
                REED_4          9    9    9    9
                SOLO_REED       5    5    5    5
                ODD_REED        6    6    6    6
                PEDAL_32        6    6    6    6
                PEDAL_16        0    0    0    0
                PEDAL_8         0    0    0    0
                PEDAL_4         4    4    4    4
                PEDAL_MUTATION  6    6    6    6
                PEDAL_MIXTURE   8    8    8    8
                PEDAL_REED_32   9    9    9    9
                PEDAL_REED_16   9    9    9    9
                PEDAL_REED_8    9    9    9    9
                PEDAL_COLOUR    6    6    6    6
                """)));

    private StopPreferences() {}

    /**
     * Layers of which one is missed.
     *
     * @param anyOf one of these is enough
     * @param where under which stops of the hand it is looked for
     * @param points what it costs where none is drawn, though one could be
     * @param words what is then said
     */
    record Want(List<StopClass> anyOf, Where where, double points, String words) {}

    /** Where a layer is looked for. */
    enum Where {
        /** In the division under the hand; where that has none, in all that the hand sounds. */
        UNDER_THE_HAND,
        /** In all that the hand sounds. */
        IN_THE_HAND
    }

    private static double[][] read(String table) {
        double[][] costs = new double[StopClass.COUNT][Mood.values().length];
        table.lines().forEach(line -> {
            String[] cells = line.strip().split(" +", -1);
            for (int mood = 0; mood < Mood.values().length; mood++) {
                costs[StopClass.valueOf(cells[0]).ordinal()][mood] = Double.parseDouble(cells[1 + mood]);
            }
        });
        return costs;
    }

    /** What one stop of a layer costs. */
    static double cost(Role role, Mood mood, StopClass layer) {
        return COSTS.get(role)[layer.ordinal()][mood.ordinal()];
    }

    /** What is missed where it is not drawn. */
    static List<Want> wants(Role role, Mood mood) {
        return switch (role) {
            case PEOPLE -> ofPeople(mood);
            case CHOIR ->
                List.of(
                        in(
                                0.8,
                                "no 8 ft carries the choir",
                                StopClass.FLUTE_8,
                                StopClass.PRINCIPAL_8,
                                StopClass.STRING_8),
                        in(1, "4 ft would give definition", StopClass.FLUTE_4, StopClass.PRINCIPAL_4));
            case SOLOIST ->
                List.of(
                        in(1, "an 8 ft flute would be kinder to the voice", StopClass.FLUTE_8),
                        in(0.5, "4 ft would help the singer", StopClass.FLUTE_4, StopClass.PRINCIPAL_4));
            case SOLO_LINE -> List.of();
            case UNDER_SOLO -> underSolo(mood);
        };
    }

    private static List<Want> underSolo(Mood mood) {
        return mood == Mood.FESTAL
                ? List.of(
                        in(0.8, "a firm 8 ft would carry the melody", StopClass.PRINCIPAL_8),
                        in(0.6, "4 ft would carry the melody", StopClass.PRINCIPAL_4, StopClass.FLUTE_4))
                : List.of(in(0.8, "a soft 8 ft would carry the melody", StopClass.FLUTE_8, StopClass.STRING_8));
    }

    private static List<Want> ofPeople(Mood mood) {
        Want eight = under(2, "the principal 8 is missed", StopClass.PRINCIPAL_8);
        Want four = under(2, "the principal 4 is missed", StopClass.PRINCIPAL_4);
        Want two = under(1.5, "2 ft is missed", StopClass.PRINCIPAL_2, StopClass.FLUTE_2);
        return switch (mood) {
            case GENTLE ->
                List.of(
                        in(1.2, "flutes would be gentler", StopClass.FLUTE_8),
                        in(0.8, "4 ft would hold the singing together", StopClass.FLUTE_4, StopClass.PRINCIPAL_4));
            case PLAIN -> List.of(eight, four);
            case BRIGHT -> List.of(eight, four, two, under(0.5, "a mixture would brighten it", StopClass.MIXTURE));
            case FESTAL ->
                List.of(
                        eight,
                        four,
                        two,
                        under(1.5, "the mixture is missed", StopClass.MIXTURE),
                        in(0.8, "a reed would crown it", StopClass.REED_8));
        };
    }

    private static Want under(double points, String words, StopClass... anyOf) {
        return new Want(List.of(anyOf), Where.UNDER_THE_HAND, points, words);
    }

    private static Want in(double points, String words, StopClass... anyOf) {
        return new Want(List.of(anyOf), Where.IN_THE_HAND, points, words);
    }
}
