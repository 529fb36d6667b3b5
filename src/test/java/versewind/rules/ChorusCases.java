package versewind.rules;

import static versewind.rules.Loft.ABBEY;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.PIEVE;
import static versewind.rules.RuleCase.EIGHT;
import static versewind.rules.RuleCase.FOUR;
import static versewind.rules.RuleCase.NO_MEND;
import static versewind.rules.RuleCase.SWELL_FLUTES;
import static versewind.rules.RuleCase.TWO;
import static versewind.rules.RuleCase.breaks;
import static versewind.rules.RuleCase.great;
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

    static final Verse CHORUS = great(EIGHT, FOUR, TWO);
    static final Verse FULL_SWELL = swell(
            "Swell: Open Diapason 8",
            "Swell: Principal 4",
            "Swell: Fifteenth 2",
            "Swell: Mixture IV",
            "Swell: Cornopean 8");
    static final Verse TUTTI = pedal(
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

    static Verse with(Verse verse, Loft loft, String... knobs) {
        return verse.withRegistration(loft.drawMore(verse.registration(), knobs));
    }

    static Verse festal(Verse verse) {
        return verse.withMood(Mood.FESTAL).withSinging(Singing.FULL_VOICE);
    }

    static Stream<RuleCase> broken() {
        return Stream.of(brokenByHands(), brokenSoft(), ReedAndPedalCases.broken())
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
                        "Draw Great: Diapason II 8.",
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
                        "Draw Great: Diapason II 8, Principal 4.",
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
                        "Put in Great: Bourdon 16.",
                        great("Great: Bourdon 16", EIGHT)),
                breaks(
                        ChorusRule.CELESTE,
                        "Swell: Voix Celeste 8 wavers under a congregation.",
                        "Put in Swell: Voix Celeste 8.",
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8")),
                breaks(
                        ChorusRule.CELESTE_ALONE,
                        "Swell: Voix Celeste 8 wants its partner: the 8 ft with which it beats.",
                        "Draw Swell: Salicional 8.",
                        swell("Swell: Voix Celeste 8").withMode(Mode.SOLO_VOICE)),
                breaks(
                        ChorusRule.TREMULANT,
                        "The tremulant shakes the Swell under a congregation.",
                        "Put in Swell: Swell Tremulant.",
                        swell(SWELL_FLUTES[0], SWELL_FLUTES[1], "Swell Tremulant")),
                breaks(
                        ChorusRule.VOX_HUMANA,
                        "Swell: Vox Humana 8 has no place under a congregation.",
                        "Put in Swell: Vox Humana 8.",
                        swell("Swell: Stopped Diap 8", "Swell: Vox Humana 8")),
                breaks(
                        ChorusRule.MELODY_UNDER_CONGREGATION,
                        "A melody soloed out gives a congregation little support.",
                        "Play it in four parts on the Great.",
                        with(CHORUS, CATHEDRAL, SWELL_FLUTES)
                                .withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Great", "Swell"))));
    }

    private static Stream<RuleCase> brokenSoft() {
        return Stream.of(
                breaks(
                        ChorusRule.THICK_DOUBLE,
                        "Great: Bourdon 16 only thickens the hands without 2 ft or a mixture above.",
                        "Put in Great: Bourdon 16.",
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
                        "Put in Great: Diapason I 8.",
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
        return Stream.of(keptByHands(), ReedAndPedalCases.kept()).flatMap(each -> each);
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
}
