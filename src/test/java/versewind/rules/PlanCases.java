package versewind.rules;

import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.RuleCase.EIGHT;
import static versewind.rules.RuleCase.FEW;
import static versewind.rules.RuleCase.FOUR;
import static versewind.rules.RuleCase.MANY;
import static versewind.rules.RuleCase.NO_MEND;
import static versewind.rules.RuleCase.SWELL_FLUTES;
import static versewind.rules.RuleCase.TWO;
import static versewind.rules.RuleCase.breaks;
import static versewind.rules.RuleCase.great;
import static versewind.rules.RuleCase.introducing;
import static versewind.rules.RuleCase.keeps;
import static versewind.rules.RuleCase.pedal;
import static versewind.rules.RuleCase.strong;
import static versewind.rules.RuleCase.swell;

import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** Cases of the rules on verses as they sound, on changes and on hymns. */
final class PlanCases {

    private static final Verse FLUTE = great("Great: Stopped Diap 8");
    private static final Verse FLUTES = CATHEDRAL.verse("Swell", SWELL_FLUTES);
    private static final Verse CHORUS = great(EIGHT, FOUR, TWO);
    private static final Verse WITH_REEDS = great(
            "Great: Diapason I 8",
            EIGHT,
            "Great: Octave 4",
            TWO,
            "Great: Mixture IV",
            "Great: Trumpet 8",
            "Great: Posaune 8",
            "Great: Clarion 4");
    private static final Verse HEAVY = CATHEDRAL
            .withPedal("Great", EIGHT, FOUR, TWO, "Pedal: Open Metal 16", "Great to Pedal")
            .withSinging(Singing.GENTLE);

    private PlanCases() {}

    static Stream<RuleCase> broken() {
        return Stream.of(brokenBalance(), brokenVerses(), brokenHymns()).flatMap(each -> each);
    }

    static Stream<RuleCase> brokenBalance() {
        return Stream.of(
                breaks(
                        BalanceRule.LEAD_LOST,
                        CATHEDRAL,
                        MANY,
                        "The organ will not be heard above singing with full voice.",
                        "",
                        FLUTE.withSinging(Singing.FULL_VOICE)),
                breaks(
                        BalanceRule.LEAD_LOST,
                        "Nothing is drawn that sounds: the people sing without a lead.",
                        "Draw Great: Diapason II 8, Principal 4, Twelfth 2 2/3, Fifteenth 2; draw Swell: Open"
                                + " Diapason 8, Principal 4; draw Swell to Great.",
                        great()),
                breaks(
                        BalanceRule.LEAD_TOO_STRONG,
                        CATHEDRAL,
                        12,
                        "The organ overpowers gentle singing.",
                        "Put in Great: Trumpet 8, Posaune 8, Clarion 4.",
                        WITH_REEDS.withSinging(Singing.GENTLE)),
                breaks(
                        BalanceRule.LEAD_ONLY_JUST,
                        "The lead is near its edge, and the next step takes several changes.",
                        "",
                        strong(great(EIGHT, FOUR, TWO, "Great: Twelfth 2 2/3"))),
                breaks(
                        BalanceRule.WORDS_COVERED,
                        "The organ covers the soloist: the words are lost in the nave.",
                        "Draw Great: Stopped Diap 8; put in Great: Diapason II 8, Principal 4, Fifteenth 2.",
                        CHORUS.withMode(Mode.SOLO_VOICE)),
                breaks(
                        BalanceRule.MELODY_BURIED,
                        "The soloed melody is buried in its accompaniment.",
                        "Draw Great: Open Flute 4; put in Great: Octave 4, Fifteenth 2.",
                        CATHEDRAL.soloed(
                                "Choir",
                                "Great",
                                "Choir: Clarinet 8",
                                "Great: Diapason I 8",
                                "Great: Octave 4",
                                "Great: Fifteenth 2",
                                "Great to Pedal")));
    }

    static Stream<RuleCase> brokenVerses() {
        String[] soft = {
            "Swell: Open Diapason 8", "Swell to Pedal", "Swell closed", "Pedal: Open Wood 16", "Pedal: Open Metal 16"
        };
        return Stream.of(
                breaks(
                        VerseRule.INTRODUCTION_LOUDER,
                        CATHEDRAL,
                        12,
                        "The introduction is about N dB louder than the organ in V1, which it introduces.",
                        "Play it on what V1 has.",
                        introducing(WITH_REEDS),
                        FLUTES.withSinging(Singing.GENTLE)),
                breaks(
                        VerseRule.INTRODUCTION_ELSEWHERE,
                        "The introduction is about N dB softer than V1: the verse will come as a shock.",
                        "Play it on what V1 has.",
                        introducing(CATHEDRAL.verse("Choir", "Choir: Dulciana 8", "Choir closed")),
                        WITH_REEDS),
                breaks(
                        VerseRule.NOT_HEARD,
                        "Nobody hears what is drawn on the Swell: it is neither played nor coupled.",
                        "Draw Swell to Great.",
                        great(EIGHT, FOUR, TWO, "Swell: Open Diapason 8", "Swell: Principal 4")),
                breaks(
                        VerseRule.INTRODUCTION_LOUDEST,
                        "The introduction is louder than the organ in any verse.",
                        "Play it on what V1 has.",
                        introducing(great(EIGHT, FOUR, TWO, "Great: Mixture IV")),
                        CHORUS,
                        CHORUS),
                breaks(
                        VerseRule.HANDS_CROSSED,
                        "The tune is on the weaker of the two manuals.",
                        "Play the tune on the Great and the rest on the Choir.",
                        CATHEDRAL
                                .verse("Great", EIGHT, FOUR, "Choir: Gedackt 8", "Choir: Gemshorn 4")
                                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Choir", "Great"))),
                breaks(
                        VerseRule.HANDS_CROSSED,
                        "The soloed melody is on the weaker of the two manuals.",
                        "Play the tune on the Great and the rest on the Choir; draw Choir to Pedal; put in Great to"
                                + " Pedal.",
                        CATHEDRAL
                                .withPedal(
                                        "Great",
                                        EIGHT,
                                        FOUR,
                                        "Choir: Gedackt 8",
                                        "Choir: Gemshorn 4",
                                        "Pedal: Bourdon 16",
                                        "Great to Pedal")
                                .withMode(Mode.MELODY_SOLOED)
                                .withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Choir", "Great"))),
                breaks(
                        VerseRule.REED_NOT_NEEDED,
                        "Great: Trumpet 8 is not needed: flues lead here.",
                        "Put in Great: Trumpet 8.",
                        great(EIGHT, FOUR, TWO, "Great: Mixture IV", "Great: Trumpet 8")),
                breaks(
                        VerseRule.REED_NOT_NEEDED,
                        "The Great Fifteenth 2 is not drawn yet; add it before the Trumpet 8.",
                        "Draw Great: Twelfth 2 2/3, Fifteenth 2; put in Great: Trumpet 8; draw Swell: Open Diapason 8,"
                                + " Principal 4, Fifteenth 2; draw Swell to Great.",
                        great(EIGHT, FOUR, "Great: Trumpet 8").withPeople(OptionalInt.of(400))),
                breaks(
                        VerseRule.DESCANT_COVERED,
                        "Great: Trumpet 8 may cover the descant: flues lead without it.",
                        "Put in Great: Trumpet 8.",
                        great(EIGHT, FOUR, TWO, "Great: Mixture IV", "Great: Trumpet 8")
                                .withSungBy(SungBy.DESCANT)),
                breaks(
                        VerseRule.PEDAL_BOOMS,
                        "The pedal booms: its stops make N% of the loudness.",
                        "Put in Pedal: Open Metal 16.",
                        CATHEDRAL.withPedal("Swell", soft)),
                breaks(
                        ChangeRule.STEP,
                        "The organ leaps up by about N dB from V1.",
                        NO_MEND,
                        FLUTE,
                        WITH_REEDS.withLabel("V2")),
                breaks(
                        ChangeRule.PISTON_MISSING,
                        "The organ has no piston G17: its generals are G1 to G16.",
                        "Set it on piston G2.",
                        FLUTE.withPiston("G1"),
                        CHORUS.withPiston("G17")),
                breaks(
                        ChangeRule.PISTON_MISSING,
                        "The organ has no memory level 129 for piston 129/G1: it has 128.",
                        "Set it on piston G1.",
                        FLUTE.withPiston("129/G1")),
                breaks(
                        ChangeRule.PISTON_MISSING,
                        CHAPEL,
                        FEW,
                        "The organ has no general pistons, and so no G1: all is moved by hand.",
                        NO_MEND,
                        CHAPEL.verse("Hauptwerk", "Hauptwerk: Prinzipal 8").withPiston("G1")),
                breaks(
                        ChangeRule.PISTON_MISSING,
                        "\"Banana\" is not a piston of this organ, which has generals G1 to G16, Great 1 to 8,"
                                + " Swell 1 to 8, Choir 1 to 8, Positive 1 to 4, Solo 1 to 8, Pedal 1 to 8.",
                        "Set it on piston G1.",
                        FLUTE.withPiston("Banana")),
                breaks(
                        ChangeRule.PISTON_TWICE,
                        "Piston Great 1 holds something else since V1: it would have to be on another memory level"
                                + " here.",
                        "Set it on piston Great 2.",
                        FLUTE.withPiston("Great 1"),
                        CHORUS.withPiston("Great 1")),
                breaks(
                        ChangeRule.PISTON_TWICE,
                        "Piston G1 holds something else since V1: it would have to be on another memory level here.",
                        "Set it on piston G2.",
                        FLUTE.withPiston("G1"),
                        CHORUS.withPiston("G1")),
                breaks(
                        ChangeRule.PISTONS_ALIKE,
                        "Piston G4 sets the same as G1: one is enough.",
                        "Set it on piston G1.",
                        FLUTE.withPiston("G1"),
                        FLUTE.withPiston("G4")),
                breaks(
                        ChangeRule.TOO_MANY_MOVES,
                        "9 changes from V1 need 3.0 s with both hands; the breath is 2.0 s.",
                        "Set it on piston G1.",
                        FLUTE,
                        WITH_REEDS));
    }

    static Stream<RuleCase> brokenHymns() {
        Verse strong = strong(CHORUS);
        return Stream.of(
                breaks(
                        HymnRule.SAME_SOUND,
                        "This is the third verse with the same sound.",
                        NO_MEND,
                        CHORUS,
                        great(EIGHT, FOUR, TWO, "Choir: Gedackt 8"),
                        CHORUS),
                breaks(
                        HymnRule.SAME_SOUND,
                        "This is the third verse with the same sound.",
                        NO_MEND,
                        CHORUS,
                        CHORUS,
                        CHORUS,
                        CHORUS),
                breaks(
                        HymnRule.SIXTEEN_ALWAYS,
                        "All 5 verses have a heavy 16 ft in the pedal; this one could do without.",
                        "Draw Pedal: Bourdon 16; put in Pedal: Open Metal 16.",
                        HEAVY,
                        HEAVY,
                        HEAVY,
                        HEAVY,
                        HEAVY),
                breaks(
                        HymnRule.NO_GROWTH,
                        "The hymn is sung strongly, and does not grow: its last verse is about as loud as its softest.",
                        NO_MEND,
                        strong,
                        strong,
                        strong),
                breaks(
                        HymnRule.AMEN_FAR,
                        "The Amen is about N dB louder than V1.",
                        NO_MEND,
                        FLUTE,
                        WITH_REEDS.withKind(VerseKind.AMEN)),
                breaks(
                        HymnRule.BIGGEST_NOT_LAST,
                        "V1 is bigger than this last verse by about N dB.",
                        NO_MEND,
                        CHORUS,
                        great(EIGHT, FOUR)),
                breaks(
                        HymnRule.BIGGEST_NOT_LAST,
                        "V2 is bigger than this last verse by about N dB.",
                        NO_MEND,
                        strong,
                        strong(WITH_REEDS).withLabel("V2"),
                        strong));
    }

    static Stream<RuleCase> kept() {
        Verse strong = strong(CHORUS);
        Verse unpedalled = pedal("Great: Stopped Diap 8", "Pedal: Open Metal 16", "Great to Pedal");
        return Stream.of(
                keeps(BalanceRule.LEAD_LOST, CHORUS),
                keeps(BalanceRule.LEAD_TOO_STRONG, CHORUS),
                keeps(BalanceRule.LEAD_ONLY_JUST, WITH_REEDS),
                keeps(
                        BalanceRule.WORDS_COVERED,
                        swell("Swell: Stopped Diap 8", "Swell closed").withMode(Mode.SOLO_VOICE)),
                keeps(
                        BalanceRule.MELODY_BURIED,
                        CATHEDRAL.soloed(
                                "Great", "Choir", "Great: Diapason I 8", "Choir: Dulciana 8", "Choir to Pedal")),
                keeps(VerseRule.INTRODUCTION_LOUDER, introducing(WITH_REEDS), WITH_REEDS),
                keeps(VerseRule.INTRODUCTION_ELSEWHERE, introducing(CHORUS), WITH_REEDS),
                keeps(
                        VerseRule.NOT_HEARD,
                        great(EIGHT, FOUR, SWELL_FLUTES[0], SWELL_FLUTES[1]),
                        swell(EIGHT, FOUR, SWELL_FLUTES[0], SWELL_FLUTES[1])),
                keeps(VerseRule.INTRODUCTION_LOUDEST, introducing(CHORUS), CHORUS, WITH_REEDS),
                keeps(
                        VerseRule.HANDS_CROSSED,
                        CATHEDRAL
                                .verse("Great", EIGHT, FOUR, "Choir: Gedackt 8", "Choir: Gemshorn 4")
                                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Choir"))),
                keeps(
                        VerseRule.REED_NOT_NEEDED,
                        strong(great(EIGHT, FOUR, TWO, "Great: Mixture IV", "Great: Trumpet 8"))),
                keeps(
                        VerseRule.DESCANT_COVERED,
                        great(EIGHT, FOUR, TWO, "Great: Mixture IV").withSungBy(SungBy.DESCANT)),
                keeps(
                        VerseRule.PEDAL_BOOMS,
                        CATHEDRAL.withPedal(
                                "Swell",
                                SWELL_FLUTES[0],
                                SWELL_FLUTES[1],
                                "Swell to Pedal",
                                "Swell closed",
                                "Pedal: Bourdon 16")),
                keeps(ChangeRule.STEP, CHORUS, great(EIGHT, FOUR, TWO, "Great: Mixture IV")),
                keeps(ChangeRule.STEP, FLUTE.withMode(Mode.SMALL_CHOIR), WITH_REEDS),
                keeps(
                        ChangeRule.PISTON_MISSING,
                        FLUTE.withPiston("G16"),
                        FLUTE.withPiston("128/G16"),
                        FLUTE.withPiston("Sw 8, Gt 1")),
                keeps(ChangeRule.PISTON_TWICE, FLUTE.withPiston("G1"), CHORUS, FLUTE.withPiston("G1")),
                keeps(ChangeRule.PISTON_TWICE, FLUTE.withPiston("G1"), CHORUS.withPiston("2/G1")),
                keeps(ChangeRule.PISTON_TWICE, FLUTE.withPiston("Swell 1"), CHORUS.withPiston("Swell 1, Great 1")),
                keeps(ChangeRule.PISTONS_ALIKE, FLUTE.withPiston("Swell 1"), FLUTE.withPiston("G1")),
                keeps(ChangeRule.PISTONS_ALIKE, FLUTE.withPiston("G1"), FLUTE.withPiston("G1")),
                keeps(ChangeRule.TOO_MANY_MOVES, FLUTE, CHORUS),
                keeps(ChangeRule.TOO_MANY_MOVES, FLUTES, WITH_REEDS),
                keeps(ChangeRule.TOO_MANY_MOVES, FLUTE, WITH_REEDS.withPiston("G4")),
                keeps(HymnRule.SAME_SOUND, CHORUS, CHORUS, FLUTES, CHORUS),
                keeps(HymnRule.SIXTEEN_ALWAYS, HEAVY, HEAVY, CHORUS, HEAVY, HEAVY),
                keeps(HymnRule.SIXTEEN_ALWAYS, HEAVY, HEAVY, HEAVY, HEAVY),
                breaks(
                        HymnRule.SIXTEEN_ALWAYS,
                        CATHEDRAL,
                        MANY,
                        "",
                        NO_MEND,
                        unpedalled,
                        unpedalled,
                        unpedalled,
                        unpedalled,
                        unpedalled),
                keeps(HymnRule.NO_GROWTH, strong, strong, strong(WITH_REEDS)),
                keeps(HymnRule.NO_GROWTH, CHORUS, CHORUS, CHORUS),
                keeps(HymnRule.AMEN_FAR, FLUTE, FLUTES.withKind(VerseKind.AMEN)),
                keeps(HymnRule.BIGGEST_NOT_LAST, CHORUS, great(EIGHT, FOUR).withMood(Mood.GENTLE)),
                keeps(HymnRule.BIGGEST_NOT_LAST, strong, strong(WITH_REEDS), FLUTES.withSinging(Singing.GENTLE)));
    }
}
