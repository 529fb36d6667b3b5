package versewind.proposal;

import java.util.Optional;
import versewind.organ.IndexSet;

/**
 * How a verse follows the one before it in its hymn: what has to be changed, and how its sound stands to the other's.
 * Common practice, no source; the points are estimates.
 *
 * @param kind of the two verses
 * @param growth where the hymn goes
 * @param breath the time between them; empty where there is all the time, or nothing before
 */
record Succession(Kind kind, Growth growth, Optional<ChangeTime> breath) {

    /** Nothing before, or nothing to be compared with. */
    static final Succession NONE = new Succession(Kind.APART, Growth.FREE, Optional.empty());

    /** Two verses that sound alike are borne, three are not. */
    private static final double SAME = 0.3;

    private static final double THIRD_ALIKE = 6;
    private static final double THIRD_BUT_FOR_A_BOX = 1.5;

    /** Stops are added behind shutters that close, or taken off behind some that open. */
    private static final double AGAINST_THE_BOX = 1.5;

    /** Nobody hears less, in dB. */
    private static final double UNHEARD_DB = 0.3;

    /** What is heard as another sound, and worth a piston, in dB. */
    private static final double HEARD_DB = 1;

    private static final double A_LEAP_DB = 7;
    private static final double A_LEAP = 12;
    private static final double POINTS_A_DB = 0.7;
    private static final double WRONG_WAY = 1;

    /** A step of the order, or a box alone, back, where the words do not ask for it. */
    private static final double STEP_BACK = 1.5;

    /** An introduction within this of its verse leaves nothing to come, in dB. */
    private static final double AS_LOUD_DB = 0.5;

    private static final double AS_LOUD = 0.1;

    private static final double FAR_SOFTER_DB = 5;
    private static final double SOLOED_FAR_SOFTER_DB = 12;
    private static final double NEAR_DB = 3;

    /** How two verses belong together. */
    enum Kind {
        /** Different people sing them: they are not compared. */
        APART,
        /** Two verses of the text, sung by the same people. */
        VERSES,
        /** The organ alone, and what it introduces. */
        INTRODUCED,
        /** The last verse, and its Amen. */
        AMEN
    }

    /** Where a hymn goes from one verse to the next. */
    enum Growth {
        RISES,
        STAYS,
        SINKS,
        /** Other singers: it goes as they do. */
        FREE
    }

    /** A way from one candidate to another: the two costs of the change, and that of how they stand together. */
    record Cost(double byHand, double byPiston, double standing) {}

    Cost cost(Candidate from, Candidate to) {
        Rows.Sum sum = new Rows.Sum();
        addStanding(from, to, sum);
        if (breath.isEmpty()) {
            return new Cost(0, 0, sum.points());
        }
        ChangeTime.Moves moves = breath.get().moves(from, to);
        double byHand = breath.get().byHand(moves);
        boolean isWorthAPiston = Math.abs(to.levelDba() - from.levelDba()) >= HEARD_DB;
        return new Cost(byHand, isWorthAPiston ? Math.min(byHand, breath.get().byPiston(moves)) : byHand, sum.points());
    }

    /** Adds what speaks against one after the other, the change set by hand or by a piston. */
    void add(Candidate from, Candidate to, boolean hasPiston, Rows rows) {
        addStanding(from, to, rows);
        Cost cost = cost(from, to);
        double change = hasPiston ? cost.byPiston() : cost.byHand();
        boolean isLate = change >= ChangeTime.TOO_LATE;
        rows.add(
                isLate ? PartKind.CHANGES : PartKind.ECONOMY,
                change,
                () -> isLate
                        ? "The change from the verse before does not fit in the breath."
                        : "Each move from the verse before costs a little.");
    }

    private void addStanding(Candidate from, Candidate to, Rows rows) {
        double risesDb = to.levelDba() - from.levelDba();
        switch (kind) {
            case APART -> {}
            case VERSES -> {
                addLeap(risesDb, rows);
                addGrowth(from, to, rows);
                rows.add(
                        PartKind.HYMN,
                        thirdAlike(from, to) > 0 ? SAME : 0,
                        () -> "The verse before sounds much the same.");
                rows.add(
                        PartKind.HYMN,
                        isAgainstTheBox(from, to) ? AGAINST_THE_BOX : 0,
                        () -> "The box works against the stops: first the box, then the stops.");
            }
            case INTRODUCED -> {
                rows.add(
                        PartKind.HYMN,
                        risesDb < AS_LOUD_DB ? AS_LOUD + POINTS_A_DB * (AS_LOUD_DB - risesDb) : 0,
                        () -> "The introduction is as loud as this verse.");
                rows.add(
                        PartKind.HYMN,
                        POINTS_A_DB / 2 * Math.max(0, risesDb - farSofterDb(from)),
                        () -> "The introduction is far softer than the verse.");
            }
            case AMEN ->
                rows.add(
                        PartKind.HYMN,
                        POINTS_A_DB * Math.max(0, Math.abs(risesDb) - NEAR_DB),
                        () -> "The Amen is far from the last verse.");
        }
    }

    /** A tune on a voice of its own may be softer than a playover. */
    private static double farSofterDb(Candidate introduction) {
        return introduction.sketch().sound().voice() == Voice.NONE ? FAR_SOFTER_DB : SOLOED_FAR_SOFTER_DB;
    }

    private static void addLeap(double risesDb, Rows rows) {
        double beyondDb = Math.abs(risesDb) - A_LEAP_DB;
        if (beyondDb > 0) {
            rows.add(PartKind.HYMN, A_LEAP + POINTS_A_DB * beyondDb, () -> "It leaps from the verse before.");
        }
    }

    private void addGrowth(Candidate from, Candidate to, Rows rows) {
        double risesDb = to.levelDba() - from.levelDba();
        boolean isOneSound = from.draft().knobsFrom(to.draft()) == 0;
        boolean fallsBack = isOneSound
                ? risesDb < 0
                : to.sketch().sound().isBelow(from.sketch().sound());
        double missedDb =
                switch (growth) {
                    case RISES -> (fallsBack ? 3 : 2) * UNHEARD_DB - risesDb;
                    case STAYS -> fallsBack ? Math.max(0, -risesDb) : -UNHEARD_DB - risesDb;
                    case SINKS -> risesDb + 2 * UNHEARD_DB;
                    case FREE -> -1;
                };
        if (missedDb >= 0) {
            String words = growth == Growth.SINKS ? "softer" : "stronger";
            rows.add(
                    PartKind.HYMN,
                    WRONG_WAY + (fallsBack ? STEP_BACK : 0) + POINTS_A_DB * missedDb,
                    () -> "It should be " + words + " than the verse before.");
        }
    }

    /** More is drawn and a box that is heard closes, or less and it opens. */
    private static boolean isAgainstTheBox(Candidate from, Candidate to) {
        IndexSet before = from.draft().stops().and(from.heard().stops());
        IndexSet after = to.draft().stops().and(to.heard().stops());
        boolean grows = after.minus(before).isEmpty() != before.minus(after).isEmpty();
        return grows
                && to.heard().boxes().stream()
                        .filter(from.heard().boxes()::contains)
                        .anyMatch(box -> {
                            double opens = opening(to, box) - opening(from, box);
                            return before.minus(after).isEmpty() ? opens < 0 : opens > 0;
                        });
    }

    private static double opening(Candidate candidate, int division) {
        return candidate.draft().registration().boxes().get(division).opening();
    }

    /**
     * What a verse costs that sounds as the one before and another before that, much less where a box moves, though
     * hardly heard; 0 if it sounds otherwise. A lead that is lost is no less lost for a change.
     */
    double thirdAlike(Candidate from, Candidate to) {
        boolean isAlike = kind == Kind.VERSES
                && to.isAtEase()
                && from.draft().knobsFrom(to.draft()) == 0
                && Math.abs(to.levelDba() - from.levelDba()) < HEARD_DB;
        return isAlike ? from.draft().equals(to.draft()) ? THIRD_ALIKE : THIRD_BUT_FOR_A_BOX : 0;
    }
}
