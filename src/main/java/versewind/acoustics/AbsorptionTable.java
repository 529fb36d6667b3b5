package versewind.acoustics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Sound absorption of the materials of a church and of the people in it, by octave.
 *
 * <p>Source: listed at the head of {@code absorption.csv}.
 *
 * <p>Differences: where a source ends at 4 kHz, 8 kHz repeats 4 kHz (an estimate).
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

    /** The unit that a row refers to. */
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
     * @param per the unit that the numbers refer to
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

        /** True for an audience and for occupied seats. */
        boolean hasPeople() {
            return per == Per.PERSON || name.startsWith("audience") || name.endsWith(" occupied");
        }
    }

    /** The table, read at first use. */
    public static AbsorptionTable load() {
        return Once.TABLE;
    }

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

    /** The material of a name, in capitals or not, with underscores or spaces. */
    public Optional<Material> material(String name) {
        return Optional.ofNullable(materials.get(plain(name)));
    }

    /**
     * The material of a surface of a room.
     *
     * @throws IllegalArgumentException with a sentence, if the table lacks it, or if it includes people, who are
     *     counted by their number and not as a surface
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

    /** Names of all materials for surfaces, in the order of the table. */
    public List<String> surfaces() {
        return materials.values().stream()
                .filter(material -> !material.hasPeople())
                .map(Material::name)
                .toList();
    }

    /** All names, in the order of the table. */
    public List<String> names() {
        return materials.values().stream().map(Material::name).toList();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
