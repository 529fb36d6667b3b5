package versewind.acoustics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How much sound the materials of a church and the people in it take away, by octave.
 *
 * <p>Source: named at the head of {@code absorption.csv}.
 *
 * <p>Differences: where a source stops at 4 kHz, 8 kHz is given as 4 kHz (estimate).
 *
 * <p>Checked against: {@code AbsorptionTableTest}.
 */
public final class AbsorptionTable {

    /** Centres in Hz of the octaves of every row. */
    public static final List<Integer> OCTAVES_HZ = List.of(125, 250, 500, 1000, 2000, 4000, 8000);

    private static final int FIRST_VALUE = 2;

    private final Map<String, Material> materials;

    private AbsorptionTable(Map<String, Material> materials) {
        this.materials = materials;
    }

    /** What a row's numbers are for. */
    public enum Per {
        /** One square metre: an absorption coefficient. */
        SQUARE_METRE,
        /** One person: absorption area in m2. */
        PERSON
    }

    /**
     * A material or an audience.
     *
     * @param name as written: "limestone wall"
     * @param per what the numbers are for
     * @param absorption coefficient, or m2 a person, for each of {@link #OCTAVES_HZ}
     */
    public record Material(String name, Per per, List<Double> absorption) {

        public Material {
            absorption = List.copyOf(absorption);
            if (absorption.size() != OCTAVES_HZ.size()) {
                throw new IllegalArgumentException(name + " needs " + OCTAVES_HZ.size() + " octaves");
            }
            for (double value : absorption) {
                if (!(value >= 0 && value <= 2)) {
                    throw new IllegalArgumentException(name + " has an absorption that is not between 0 and 2");
                }
            }
        }

        /** Whether there are people in it. */
        boolean hasPeople() {
            return per == Per.PERSON || name.startsWith("audience") || name.endsWith(" occupied");
        }
    }

    /** The table; it is read once. */
    public static AbsorptionTable load() {
        return Once.TABLE;
    }

    /** Holds the table from when it is first asked for. */
    private static final class Once {
        private static final AbsorptionTable TABLE = read();
    }

    private static AbsorptionTable read() {
        Map<String, Material> materials = new LinkedHashMap<>();
        for (List<String> row : TableResource.rows("absorption.csv")) {
            Material material = material(row);
            materials.put(plain(material.name()), material);
        }
        return new AbsorptionTable(materials);
    }

    private static Material material(List<String> row) {
        Double[] absorption = new Double[OCTAVES_HZ.size()];
        for (int octave = 0; octave < absorption.length; octave++) {
            String written = row.get(octave + FIRST_VALUE);
            absorption[octave] = written.isEmpty() ? absorption[octave - 1] : Double.valueOf(written);
        }
        Per per = row.get(1).equals("person") ? Per.PERSON : Per.SQUARE_METRE;
        return new Material(row.get(0), per, List.of(absorption));
    }

    /** The material of this name, if the table has it; capitals do not matter, and underscores stand for spaces. */
    public Optional<Material> material(String name) {
        return Optional.ofNullable(materials.get(plain(name)));
    }

    /**
     * The material that a surface of a room is of.
     *
     * @throws IllegalArgumentException with a sentence, if the table does not have it, or if there are people in it, who
     *     are counted by their number and not as a surface
     */
    public Material surface(String name) {
        Material material = material(name)
                .orElseThrow(() -> new IllegalArgumentException(
                        "the room has a surface of \"" + name + "\", which the table of absorption does not have"));
        if (material.hasPeople()) {
            throw new IllegalArgumentException(
                    "\"" + material.name() + "\" is no surface of an empty room: the people are"
                            + " counted by their number, so name the empty seats");
        }
        return material;
    }

    /** Names of all materials of which a surface can be, in the table's order. */
    public List<String> surfaces() {
        return materials.values().stream()
                .filter(material -> !material.hasPeople())
                .map(Material::name)
                .toList();
    }

    /** All names in the table's order. */
    public List<String> names() {
        return materials.values().stream().map(Material::name).toList();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
