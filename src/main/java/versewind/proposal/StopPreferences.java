package versewind.proposal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import versewind.acoustics.TableResource;
import versewind.plan.Mood;
import versewind.rules.StopClass;

/**
 * The classes of stops that suit a role and a mood: points for one stop of a class (the table {@code stop_costs.csv}),
 * and for a class that is missed. Points are estimates; common practice, no source.
 */
final class StopPreferences {

    private static final Map<Role, double[][]> COSTS = read();

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

    /** For each role and class: gentle, plain, bright, festal. */
    private static Map<Role, double[][]> read() {
        Map<Role, double[][]> costs = new EnumMap<>(Role.class);
        for (List<String> row : TableResource.rows("proposal", "stop_costs.csv")) {
            double[] byMood =
                    row.stream().skip(2).mapToDouble(Double::parseDouble).toArray();
            costs.computeIfAbsent(Role.valueOf(row.get(0)), role -> new double[StopClass.COUNT][Mood.values().length])[
                    StopClass.valueOf(row.get(1)).ordinal()] = byMood;
        }
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
