package versewind.agreement;

/** What must agree: the seven agreements, each in its parts, and how good the proposals are by themselves. */
enum Claim {
    PROPOSAL_KEEPS_TABLE_2(1, "proposal breaks what nobody does"),
    PROPOSAL_HAS_NO_CAUTION(1, "proposal is cautioned"),
    CHANGES_FIT(1, "too many changes"),
    PROMISE_KEPT(1, "promise broken"),
    STEP_KEEPS_TABLE_2(2, "step breaks what nobody does"),
    STEP_IN_ORDER(2, "step out of order"),
    STEP_HEARD(2, "step not heard as one"),
    MEND_WORKS(3, "mend"),
    PLAN_KEPT(4, "plan not kept"),
    FIVE_SOUNDS(5, "proposals alike"),
    PISTON_EARNED(5, "piston spent"),
    BAND(6, "off the band"),
    REASONS(7, "reason of no row"),
    ORDER(0, "proposal out of order"),
    MENTIONED(0, "proposal could be better");

    private final int agreement;
    private final String word;

    Claim(int agreement, String word) {
        this.agreement = agreement;
        this.word = word;
    }

    /** Number of the agreement it is part of; 0 for the quality of proposals. */
    int agreement() {
        return agreement;
    }

    String word() {
        return word;
    }
}
