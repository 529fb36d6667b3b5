package versewind.rules;

import static versewind.rules.Loft.ABBEY;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.Loft.PIEVE;
import static versewind.rules.Loft.VILLAGE;
import static versewind.rules.RuleCase.EIGHT;
import static versewind.rules.RuleCase.FOUR;
import static versewind.rules.RuleCase.NO_MEND;
import static versewind.rules.RuleCase.SWELL_FLUTES;
import static versewind.rules.RuleCase.TWO;
import static versewind.rules.RuleCase.breaks;
import static versewind.rules.RuleCase.great;
import static versewind.rules.RuleCase.introducing;
import static versewind.rules.RuleCase.keeps;
import static versewind.rules.RuleCase.pedal;
import static versewind.rules.RuleCase.swell;

import java.util.stream.Stream;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** Cases of the rules on how stops are put together. */
final class ChorusCases {

    private static final Verse CHORUS = great(EIGHT, FOUR, TWO);
    private static final Verse FULL_SWELL = swell(
            "Swell: Open Diapason 8",
            "Swell: Principal 4",
            "Swell: Fifteenth 2",
            "Swell: Mixture IV",
            "Swell: Cornopean 8");
    private static final Verse TUTTI = pedal(
            EIGHT,
            FOUR,
            TWO,
            "Great: Mixture IV",
            "Great: Trumpet 8",
            "Great: Posaune 8",
            "Pedal: Bourdon 16",
            "Pedal: Octave 8",
            "Great to Pedal");

    private ChorusCases() {}

    private static Verse with(Verse verse, Loft loft, String... knobs) {
        return verse.withRegistration(loft.drawMore(verse.registration(), knobs));
    }

    private static Verse festal(Verse verse) {
        return verse.withMood(Mood.FESTAL).withSinging(Singing.FULL_VOICE);
    }

    static Stream<RuleCase> broken() {
        return Stream.of(brokenByHands(), brokenByReedsAndCouplers(), brokenByFeet(), brokenSoft())
                .flatMap(each -> each);
    }

    private static Stream<RuleCase> brokenByHands() {
        return Stream.of(
                breaks(
                        ChorusRule.EMPTY_HAND,
                        "The left hand plays the Choir, where nothing speaks.",
                        "Play it on the Great.",
                        CHORUS.withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Choir"))),
                breaks(
                        ChorusRule.EMPTY_HAND,
                        "The right hand plays the Swell, where nothing speaks.",
                        "Play it on the Choir.",
                        with(CHORUS, CATHEDRAL, "Choir: Gedackt 8", "Choir: Gemshorn 4")
                                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Swell", "Choir"))),
                breaks(
                        ChorusRule.NO_EIGHT_FOOT,
                        "The hands have no 8 ft.",
                        "Draw Great: Diapason III 8.",
                        great(FOUR, TWO)),
                breaks(
                        ChorusRule.NO_EIGHT_FOOT,
                        "The left hand has no 8 ft.",
                        "Draw Swell: Open Diapason 8.",
                        great(EIGHT, FOUR, TWO, "Swell: Principal 4")
                                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Swell"))),
                breaks(
                        ChorusRule.GAP,
                        "The hands have 2 ft over 8 ft without 4 ft between them.",
                        "Draw Great: Principal 4.",
                        great(EIGHT, TWO)),
                breaks(
                        ChorusRule.GAP,
                        "The hands have 1 ft over 4 ft without 2 ft between them.",
                        "Draw Positive: Octave 2.",
                        CATHEDRAL.verse(
                                "Positive", "Positive: Gedackt 8", "Positive: Principal 4", "Positive: Sifflet 1")),
                breaks(
                        ChorusRule.BARE_MIXTURE,
                        "Great: Mixture IV wants 4 ft flues beneath in the hands.",
                        "Draw Great: Principal 4.",
                        great(EIGHT, TWO, "Great: Mixture IV")),
                breaks(
                        ChorusRule.BARE_MIXTURE,
                        "Great: Mixture IV wants 8 and 4 ft flues beneath in the hands.",
                        "Draw Great: Diapason III 8, Principal 4.",
                        great(TWO, "Great: Mixture IV")),
                breaks(
                        ChorusRule.BARE_TWELFTH,
                        "Great: Twelfth 2 2/3 joins a chorus only over 4 and 2 ft.",
                        "Draw Great: Principal 4, Fifteenth 2.",
                        great(EIGHT, "Great: Twelfth 2 2/3")),
                breaks(
                        ChorusRule.BARE_MUTATION,
                        "Choir: Nazard 2 2/3 wants an 8 ft flue beneath in the right hand.",
                        "Draw Choir: Gedackt 8.",
                        CATHEDRAL.soloed(
                                "Choir", "Swell", "Choir: Clarinet 8", "Choir: Nazard 2 2/3", "Swell: Viole 8")),
                breaks(
                        ChorusRule.BARE_DOUBLE,
                        "Great: Bourdon 16 wants 8 and 4 ft above in the hands.",
                        "Push in Great: Bourdon 16.",
                        great("Great: Bourdon 16", EIGHT)),
                breaks(
                        ChorusRule.CELESTE,
                        "Swell: Voix Celeste 8 wavers under a congregation.",
                        "Push in Swell: Voix Celeste 8.",
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8")),
                breaks(
                        ChorusRule.CELESTE_ALONE,
                        "Swell: Voix Celeste 8 wants its partner: the 8 ft with which it beats.",
                        "Draw Swell: Salicional 8.",
                        swell("Swell: Voix Celeste 8").withMode(Mode.SOLO_VOICE)),
                breaks(
                        ChorusRule.TREMULANT,
                        "The tremulant shakes the Swell under a congregation.",
                        "Push in Swell: Swell Tremulant.",
                        swell(SWELL_FLUTES[0], SWELL_FLUTES[1], "Swell Tremulant")),
                breaks(
                        ChorusRule.VOX_HUMANA,
                        "Swell: Vox Humana 8 has no place under a congregation.",
                        "Push in Swell: Vox Humana 8.",
                        swell("Swell: Stopped Diap 8", "Swell: Vox Humana 8")),
                breaks(
                        ChorusRule.MELODY_UNDER_CONGREGATION,
                        "A melody soloed out gives a congregation little support.",
                        "Play it in four parts on the Great.",
                        with(CHORUS, CATHEDRAL, SWELL_FLUTES)
                                .withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Great", "Swell"))));
    }

    private static Stream<RuleCase> brokenByReedsAndCouplers() {
        return Stream.of(
                breaks(
                        ChorusRule.LONE_REED,
                        "Great: Clarion 4 wants an 8 ft reed.",
                        "Push in Great: Clarion 4.",
                        with(CHORUS, CATHEDRAL, "Great: Clarion 4")),
                breaks(
                        ChorusRule.REED_OVER_LITTLE,
                        "Great: Trumpet 8 stands over too little flue in the hands.",
                        "Draw Great: Principal 4.",
                        great(EIGHT, "Great: Trumpet 8")),
                breaks(
                        ChorusRule.TUBA,
                        "Solo: Tuba 8 is for solos, and in a chorus only for the climax of a festal verse.",
                        "Push in Solo: Tuba 8; push in Solo to Great.",
                        with(TUTTI, CATHEDRAL, "Solo: Tuba 8", "Solo to Great")),
                breaks(
                        ChorusRule.OCTAVE_COUPLER,
                        "Swell Octave is for 8 ft stops that are drawn: not for mixtures, nor for reeds of 16 or 4 ft.",
                        "Push in Swell Octave.",
                        with(FULL_SWELL, CATHEDRAL, "Swell Octave")),
                breaks(
                        ChorusRule.SUB_OCTAVE_COUPLER,
                        "Swell Sub Oct only thickens: a sub-octave coupler is for festal verses.",
                        "Push in Swell Sub Oct.",
                        with(FULL_SWELL, CATHEDRAL, "Swell Sub Oct")),
                breaks(
                        ChorusRule.SUB_OCTAVE_COUPLER,
                        "Swell Sub Oct acts on reeds of 16 or 4 ft.",
                        "Push in Swell Sub Oct.",
                        festal(with(FULL_SWELL, CATHEDRAL, "Swell: Clarion 4", "Swell Sub Oct"))),
                breaks(
                        ChorusRule.OCTAVE_FOR_POWER,
                        "Swell Oct to Gt adds power while stops of the Great are left.",
                        "Push in Swell Oct to Gt.",
                        with(CHORUS, CATHEDRAL, "Swell: Open Diapason 8", "Swell: Principal 4", "Swell Oct to Gt")),
                breaks(
                        ChorusRule.IDLE_COUPLER,
                        "Swell to Great brings nothing here.",
                        "Push in Swell to Great.",
                        with(CHORUS, CATHEDRAL, "Swell to Great")),
                breaks(
                        ChorusRule.SOLO_REED,
                        "Choir: Clarinet 8 is for solos and stands out of the chorus.",
                        "Push in Choir: Clarinet 8; push in Choir to Great.",
                        with(CHORUS, CATHEDRAL, "Choir: Clarinet 8", "Choir to Great")),
                breaks(
                        ChorusRule.REEDS_SHUT_IN,
                        "Swell: Cornopean 8 is shut in: the swell box is closed.",
                        "Open the box of the Swell to half.",
                        with(FULL_SWELL, CATHEDRAL, "Swell closed")));
    }

    private static Stream<RuleCase> brokenByFeet() {
        return Stream.of(
                breaks(
                        ChorusRule.PEDAL_SILENT,
                        "The feet play, but nothing sounds on the pedal: the bass is missing.",
                        "Draw Great to Pedal.",
                        pedal(EIGHT, FOUR, TWO)),
                breaks(
                        ChorusRule.PEDAL_TOO_HIGH,
                        "The pedal has neither 16 nor 8 ft.",
                        "Draw Pedal: Violone 16, Flute 8.",
                        pedal(EIGHT, FOUR, "Pedal: Super Octave 4")),
                breaks(
                        ChorusRule.DEEP_UNDER_FEW,
                        "Pedal: Sub Bourdon 32 is too deep under a soloist or a choir.",
                        "Push in Pedal: Sub Bourdon 32.",
                        pedal("Great: Stopped Diap 8", "Pedal: Sub Bourdon 32", "Pedal: Bourdon 16", "Great to Pedal")
                                .withMode(Mode.SMALL_CHOIR)),
                breaks(
                        ChorusRule.PEDAL_REED_FIRST,
                        "Pedal: Trombone 16 comes before any 8 ft reed of the manuals.",
                        "Push in Pedal: Trombone 16.",
                        pedal(EIGHT, FOUR, TWO, "Pedal: Bourdon 16", "Pedal: Trombone 16", "Great to Pedal")),
                breaks(
                        ChorusRule.DEEP_FIRST,
                        "Pedal: Contra Trombone 32 comes before a 16 ft of its kind.",
                        "Push in Pedal: Contra Trombone 32.",
                        with(TUTTI, CATHEDRAL, "Pedal: Contra Trombone 32")),
                breaks(
                        ChorusRule.BOX_ON_BORROWED,
                        "Pedal: Echo Bourdon 16 speaks through a swell box that is shut.",
                        "Open the box of the Swell to half.",
                        pedal("Great: Stopped Diap 8", "Pedal: Echo Bourdon 16", "Great to Pedal", "Swell closed")),
                breaks(
                        ChorusRule.STRANGE_TO_FEET,
                        "Choir to Pedal brings the feet a manual that nobody plays.",
                        "Draw Great to Pedal; push in Choir to Pedal.",
                        pedal(EIGHT, FOUR, "Pedal: Bourdon 16", "Choir: Gedackt 8", "Choir to Pedal")),
                breaks(
                        ChorusRule.PEDAL_COUPLER,
                        "The pedal has no 8 ft: its line is felt more than followed.",
                        "Draw Manual to Pedal.",
                        VILLAGE,
                        VILLAGE.withPedal("Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16")),
                breaks(
                        ChorusRule.HEAVY_SIXTEEN,
                        "Pedal: Open Wood 16 is too heavy for the light stops of the hands.",
                        "Draw Pedal: Bourdon 16; push in Pedal: Open Wood 16.",
                        pedal("Great: Stopped Diap 8", "Great: Open Flute 4", "Pedal: Open Wood 16", "Great to Pedal")),
                breaks(
                        ChorusRule.SOFT_BOURDON,
                        "Pedal: Bourdon 16 alone is too little pedal under reeds.",
                        "Draw Pedal: Violone 16, Flute 8.",
                        pedal(
                                EIGHT,
                                FOUR,
                                TWO,
                                "Great: Trumpet 8",
                                "Great: Posaune 8",
                                "Pedal: Bourdon 16",
                                "Great to Pedal")));
    }

    private static Stream<RuleCase> brokenSoft() {
        return Stream.of(
                breaks(
                        ChorusRule.THICK_DOUBLE,
                        "Great: Bourdon 16 only thickens the hands without 2 ft or a mixture above.",
                        "Push in Great: Bourdon 16.",
                        great("Great: Bourdon 16", EIGHT, FOUR)),
                breaks(
                        ChorusRule.PASSED_OVER,
                        "Great: Fifteenth 2 is passed over for Great: Mixture IV.",
                        "Draw Great: Fifteenth 2.",
                        great(EIGHT, FOUR, "Great: Mixture IV")),
                breaks(
                        ChorusRule.PASSED_OVER,
                        "Manuale: XIX 1 1/3 is passed over for Manuale: XXII 1.",
                        "Draw Manuale: XIX 1 1/3.",
                        PIEVE,
                        PIEVE.verse(
                                "Manuale",
                                "Manuale: Principale 8",
                                "Manuale: Ottava 4",
                                "Manuale: XV 2",
                                "Manuale: XXII 1")),
                breaks(
                        ChorusRule.DOUBLING,
                        "Great: Diapason I 8 and Diapason II 8 double one pitch before the 2 ft is in.",
                        "Push in Great: Diapason I 8.",
                        great("Great: Diapason I 8", EIGHT, FOUR)),
                breaks(
                        ChorusRule.FONDS,
                        "The Grand-Orgue draws its 8 ft foundations together: Grand-Orgue: Flûte harm. 8 and"
                                + " Gambe 8 are left out.",
                        "Draw Grand-Orgue: Flûte harm. 8, Gambe 8.",
                        ABBEY,
                        ABBEY.verse(
                                "Grand-Orgue",
                                "Grand-Orgue: Montre 8",
                                "Grand-Orgue: Bourdon 8",
                                "Grand-Orgue: Prestant 4")));
    }

    static Stream<RuleCase> kept() {
        return Stream.of(keptByHands(), keptByReedsAndCouplers(), keptByFeet()).flatMap(each -> each);
    }

    private static Stream<RuleCase> keptByHands() {
        return Stream.of(
                keeps(
                        ChorusRule.EMPTY_HAND,
                        with(CHORUS, CATHEDRAL, "Choir: Gedackt 8", "Choir: Gemshorn 4")
                                .withHands(CATHEDRAL.hands(Layout.MANUALS_ONLY, "Great", "Choir")),
                        great()),
                keeps(
                        ChorusRule.NO_EIGHT_FOOT,
                        great(FOUR, TWO, "Swell: Open Diapason 8", "Swell to Great"),
                        pedal("Great: Stopped Diap 8")),
                keeps(
                        ChorusRule.NO_EIGHT_FOOT,
                        CATHEDRAL.verse("Choir", "Choir: Gedackt 8", "Positive: Principal 4", "Positive: Octave 2")),
                keeps(ChorusRule.GAP, great(EIGHT, TWO, "Swell: Principal 4", "Swell to Great")),
                keeps(ChorusRule.BARE_MIXTURE, great(EIGHT, FOUR, "Great: Mixture IV")),
                keeps(ChorusRule.BARE_TWELFTH, with(CHORUS, CATHEDRAL, "Great: Twelfth 2 2/3")),
                keeps(
                        ChorusRule.BARE_MUTATION,
                        CATHEDRAL.soloed("Choir", "Swell", "Choir: Gedackt 8", "Choir: Nazard 2 2/3", "Swell: Viole 8"),
                        CATHEDRAL.soloed("Great", "Swell", "Great: Cornet V", "Swell: Viole 8", "Swell to Pedal")),
                keeps(ChorusRule.BARE_DOUBLE, great("Great: Bourdon 16", EIGHT, FOUR)),
                keeps(
                        ChorusRule.CELESTE,
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8").withMode(Mode.SOLO_VOICE)),
                keeps(
                        ChorusRule.CELESTE_ALONE,
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8").withMode(Mode.SOLO_VOICE)),
                keeps(
                        ChorusRule.TREMULANT,
                        great(EIGHT, FOUR, TWO, "Swell: Stopped Diap 8", "Swell Tremulant"),
                        CATHEDRAL.soloed("Swell", "Choir", "Swell: Oboe 8", "Swell Tremulant", "Choir: Gedackt 8")),
                keeps(
                        ChorusRule.VOX_HUMANA,
                        swell("Swell: Stopped Diap 8", "Swell: Vox Humana 8").withKind(VerseKind.INTERLUDE)),
                keeps(
                        ChorusRule.MELODY_UNDER_CONGREGATION,
                        CHORUS.withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Great", "Swell"))
                                .withMode(Mode.SMALL_CHOIR)),
                keeps(ChorusRule.THICK_DOUBLE, great(EIGHT, FOUR, TWO, "Great: Double Diapason 16")),
                keeps(ChorusRule.PASSED_OVER, with(CHORUS, CATHEDRAL, "Great: Mixture IV")),
                keeps(ChorusRule.DOUBLING, with(CHORUS, CATHEDRAL, "Great: Diapason I 8")),
                breaks(
                        ChorusRule.FONDS,
                        "",
                        NO_MEND,
                        ABBEY,
                        ABBEY.verse(
                                "Grand-Orgue",
                                "Grand-Orgue: Montre 8",
                                "Grand-Orgue: Bourdon 8",
                                "Grand-Orgue: Flûte harm. 8",
                                "Grand-Orgue: Gambe 8",
                                "Grand-Orgue: Prestant 4")));
    }

    private static Stream<RuleCase> keptByReedsAndCouplers() {
        return Stream.of(
                keeps(ChorusRule.LONE_REED, with(CHORUS, CATHEDRAL, "Great: Trumpet 8", "Great: Clarion 4")),
                keeps(
                        ChorusRule.REED_OVER_LITTLE,
                        great(EIGHT, FOUR, TWO, "Great: Trumpet 8"),
                        introducing(great("Great: Trumpet 8", "Great: Clarion 4")),
                        pedal(EIGHT, FOUR, TWO, "Pedal: Trombone 16", "Great to Pedal")),
                keeps(ChorusRule.TUBA, festal(with(TUTTI, CATHEDRAL, "Solo: Tuba 8", "Solo to Great"))),
                keeps(ChorusRule.OCTAVE_COUPLER, swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell Octave")),
                keeps(ChorusRule.SUB_OCTAVE_COUPLER, festal(with(FULL_SWELL, CATHEDRAL, "Swell Sub Oct"))),
                keeps(
                        ChorusRule.OCTAVE_FOR_POWER,
                        with(
                                CHORUS,
                                CATHEDRAL,
                                "Great: Mixture IV",
                                "Great: Trumpet 8",
                                "Swell: Open Diapason 8",
                                "Swell Oct to Gt")),
                keeps(
                        ChorusRule.IDLE_COUPLER,
                        with(CHORUS, CATHEDRAL, "Swell: Oboe 8", "Swell to Great"),
                        with(CHORUS, CATHEDRAL, "Solo to Choir")),
                keeps(
                        ChorusRule.SOLO_REED,
                        swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Oboe 8", "Swell closed"),
                        with(FULL_SWELL, CATHEDRAL, "Swell: Oboe 8"),
                        swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Fifteenth 2", "Swell: Oboe 8"),
                        swell(SWELL_FLUTES[0], SWELL_FLUTES[1], "Swell: Oboe 8")),
                keeps(ChorusRule.REEDS_SHUT_IN, with(FULL_SWELL, CATHEDRAL, "Swell quarter")));
    }

    private static Stream<RuleCase> keptByFeet() {
        return Stream.of(
                keeps(
                        ChorusRule.PEDAL_SILENT,
                        CATHEDRAL.withPedal("Great"),
                        great(EIGHT, FOUR, TWO, "Great to Pedal")
                                .withHands(CATHEDRAL.hands(Layout.COUPLED_DOWN, "Great", "Great"))),
                keeps(ChorusRule.PEDAL_TOO_HIGH, pedal(EIGHT, FOUR, "Pedal: Super Octave 4", "Great to Pedal")),
                keeps(
                        ChorusRule.DEEP_UNDER_FEW,
                        pedal("Great: Stopped Diap 8", "Pedal: Bourdon 16", "Great to Pedal")
                                .withMode(Mode.SMALL_CHOIR)),
                keeps(ChorusRule.PEDAL_REED_FIRST, with(TUTTI, CATHEDRAL, "Pedal: Trombone 16")),
                breaks(
                        ChorusRule.PEDAL_REED_FIRST,
                        "",
                        NO_MEND,
                        CHAPEL,
                        CHAPEL.withPedal(
                                "Hauptwerk",
                                "Hauptwerk: Prinzipal 8",
                                "Hauptwerk: Oktave 4",
                                "Hauptwerk: Oktave 2",
                                "Hauptwerk: Trompete 8",
                                "Pedal: Subbass 16",
                                "Pedal: Posaune 16")),
                keeps(
                        ChorusRule.DEEP_FIRST,
                        with(
                                TUTTI,
                                CATHEDRAL,
                                "Pedal: Trombone 16",
                                "Pedal: Double Open 32",
                                "Pedal: Contra Trombone 32")),
                keeps(
                        ChorusRule.BOX_ON_BORROWED,
                        pedal("Great: Stopped Diap 8", "Pedal: Echo Bourdon 16", "Great to Pedal", "Swell quarter"),
                        pedal("Great: Stopped Diap 8", "Pedal: Bourdon 16", "Great to Pedal", "Swell closed")),
                keeps(
                        ChorusRule.STRANGE_TO_FEET,
                        pedal(
                                EIGHT,
                                FOUR,
                                "Pedal: Bourdon 16",
                                "Choir: Gedackt 8",
                                "Choir to Pedal",
                                "Choir to Great")),
                breaks(
                        ChorusRule.PEDAL_COUPLER,
                        "",
                        NO_MEND,
                        VILLAGE,
                        VILLAGE.withPedal("Manual", "Manual: Stopped Diap 8", "Pedal: Bourdon 16"),
                        VILLAGE.withPedal(
                                "Manual",
                                "Manual: Stopped Diap 8",
                                "Manual: Flute 4",
                                "Pedal: Bourdon 16",
                                "Manual to Pedal")),
                keeps(
                        ChorusRule.HEAVY_SIXTEEN,
                        pedal(EIGHT, FOUR, "Pedal: Open Wood 16", "Great to Pedal"),
                        pedal("Great: Stopped Diap 8", "Pedal: Bourdon 16", "Great to Pedal")),
                keeps(
                        ChorusRule.SOFT_BOURDON,
                        TUTTI,
                        pedal(EIGHT, FOUR, TWO, "Great: Trumpet 8", "Pedal: Bourdon 16", "Great to Pedal")));
    }
}
