package versewind.rules;

import java.util.Optional;
import versewind.organ.Registration;

/** One rule on how the stops that a hand or the feet play are put together. */
interface ChorusRule {

    /** Which rule it is. */
    Rule rule();

    /** What breaks the rule in a chorus that sounds, if anything does. */
    Optional<ChorusFault> judge(Chorus chorus);

    /** What is wrong, in one sentence. */
    String sentence(ChorusFault fault);

    /** The smallest change that mends it, if there is one. */
    Optional<Registration> mended(ChorusFault fault);
}
