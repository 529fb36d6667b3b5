package versewind.organ;

/**
 * A tremulant.
 *
 * @param name its name
 * @param division the division it acts on
 */
public record Tremulant(String name, String division) {

    public Tremulant {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a tremulant needs a name");
        }
    }
}
