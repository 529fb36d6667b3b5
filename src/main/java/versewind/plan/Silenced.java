package versewind.plan;

/**
 * What is not to be said of a verse again.
 *
 * @param rule word of the rule, "gap"
 * @param note why; may be blank
 */
public record Silenced(String rule, String note) {

    public Silenced {
        if (rule.isBlank()) {
            throw new IllegalArgumentException("a rule has a word");
        }
    }
}
