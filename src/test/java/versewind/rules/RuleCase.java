package versewind.rules;

import static versewind.rules.Loft.CATHEDRAL;

import java.util.List;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** A hymn that breaks a rule, or nearly does, on a shipped organ before so many people. */
record RuleCase(Rule rule, Loft loft, int people, String sentence, String mend, List<Verse> verses) {

    static final int FEW = 60;
    static final int MANY = 1400;

    /** Stands for a finding that no single change mends. */
    static final String NO_MEND = "";

    static final String EIGHT = "Great: Diapason II 8";
    static final String FOUR = "Great: Principal 4";
    static final String TWO = "Great: Fifteenth 2";
    static final String[] SWELL_FLUTES = {"Swell: Stopped Diap 8", "Swell: Lieblich Flute 4"};

    /** A case on the cathedral's organ and for few people. */
    static RuleCase breaks(Rule rule, String sentence, String mend, Verse... verses) {
        return breaks(rule, CATHEDRAL, FEW, sentence, mend, verses);
    }

    static RuleCase breaks(Rule rule, String sentence, String mend, Loft loft, Verse... verses) {
        return breaks(rule, loft, FEW, sentence, mend, verses);
    }

    static RuleCase breaks(Rule rule, Loft loft, int people, String sentence, String mend, Verse... verses) {
        return new RuleCase(rule, loft, people, sentence, mend, List.of(verses));
    }

    /** A near miss. */
    static RuleCase keeps(Rule rule, Verse... verses) {
        return breaks(rule, "", NO_MEND, verses);
    }

    static Verse great(String... knobs) {
        return CATHEDRAL.verse("Great", knobs);
    }

    static Verse swell(String... knobs) {
        return CATHEDRAL.verse("Swell", knobs);
    }

    static Verse pedal(String... knobs) {
        return CATHEDRAL.withPedal("Great", knobs);
    }

    static Verse strong(Verse verse) {
        return verse.withSinging(Singing.STRONG);
    }

    static Verse introducing(Verse verse) {
        return verse.withKind(VerseKind.INTRODUCTION).withLabel("Intro");
    }

    /** All findings of the rule. */
    List<Finding> found() {
        return loft.found(rule, people, verses.toArray(Verse[]::new));
    }

    @Override
    public String toString() {
        return rule + " " + sentence + " " + verses.size();
    }
}
