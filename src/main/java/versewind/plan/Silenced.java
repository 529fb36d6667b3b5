package versewind.plan;

/**
 * A finding that is ignored in a verse.
 *
 * @param rule keyword of the rule: "gap"
 * @param note the reason; may be blank
 */
public record Silenced(String rule, String note) {

    public Silenced {
        if (rule.isBlank()) {
            throw new IllegalArgumentException("a rule has a word");
        }
    }
}
