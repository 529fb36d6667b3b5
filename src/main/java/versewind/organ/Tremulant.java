package versewind.organ;

/**
 * A tremulant.
 *
 * @param name what stands on its knob
 * @param division the division whose wind it shakes
 */
public record Tremulant(String name, String division) {

    public Tremulant {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a tremulant needs a name");
        }
    }
}
