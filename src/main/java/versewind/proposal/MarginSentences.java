package versewind.proposal;

import versewind.plan.Mode;

/** Sentences about a margin. */
final class MarginSentences {

    private static final double WORTH_A_WORD_DB = 0.5;

    private MarginSentences() {}

    /** Where the margin lies, and where it should. */
    static String balance(Requirement requirement, double marginDb) {
        Target target = requirement.target();
        String lies = subject(requirement) + " " + signed(marginDb) + "±" + Math.round(requirement.sdDb()) + " dB; ";
        String wanted = "target: " + signed(target.lowDb()) + " to " + signed(target.highDb()) + ".";
        if (marginDb < target.lowDb() - WORTH_A_WORD_DB) {
            return lies + "that is below the target: " + wanted;
        }
        if (marginDb > target.highDb() + WORTH_A_WORD_DB) {
            return lies + "that is above the target: " + wanted;
        }
        return lies + wanted;
    }

    private static String subject(Requirement requirement) {
        if (requirement.mode() == Mode.MELODY_SOLOED) {
            return "The melody stands above its accompaniment by";
        }
        boolean isPeople = requirement.isPeople();
        if (requirement.company().isSung()) {
            return isPeople ? "The organ's margin over the singing is" : "The words' margin over the organ is";
        }
        return isPeople ? "The organ would stand above the singing by" : "The voice would stand above the organ by";
    }

    private static String signed(double db) {
        long whole = Math.round(db);
        return whole > 0 ? "+" + whole : Long.toString(whole);
    }
}
