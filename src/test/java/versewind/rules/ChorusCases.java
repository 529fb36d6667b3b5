package versewind.rules;

import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
import static versewind.rules.Loft.VILLAGE;
import static versewind.rules.RuleCase.EIGHT;
import static versewind.rules.RuleCase.FEW;
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
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/** Cases of the rules on how stops are put together. */
final class ChorusCases {

    private ChorusCases() {}

    static Stream<RuleCase> broken() {
        return Stream.of(
                breaks(
                        ChorusRule.NO_EIGHT_FOOT,
                        "The hands have no 8 ft.",
                        "Draw Great: Diapason I 8.",
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
                        "Draw Great: Octave 4.",
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
                        "Draw Great: Octave 4.",
                        great(EIGHT, "Great: Mixture IV")),
                breaks(
                        ChorusRule.BARE_MIXTURE,
                        "Swell: Mixture IV wants 4 ft flues beneath in the hands.",
                        "Draw Swell: Principal 4.",
                        swell("Swell: Open Diapason 8", "Swell: Clarion 4", "Swell: Mixture IV")
                                .withKind(VerseKind.INTERLUDE)),
                breaks(
                        ChorusRule.BARE_DOUBLE,
                        "Great: Bourdon 16 only thickens the hands without 2 ft or a mixture above.",
                        "Push in Great: Bourdon 16.",
                        great("Great: Bourdon 16", EIGHT, FOUR)),
                breaks(
                        ChorusRule.BARE_MUTATION,
                        "Choir: Nazard 2 2/3 wants an 8 ft flue beneath in the right hand.",
                        "Draw Choir: Gedackt 8.",
                        CATHEDRAL.soloed(
                                "Choir", "Swell", "Choir: Clarinet 8", "Choir: Nazard 2 2/3", "Swell: Viole 8")),
                breaks(
                        ChorusRule.BARE_MUTATION,
                        CHAPEL,
                        FEW,
                        "Rückpositiv: Sesquialtera II wants an 8 ft flue beneath in the right hand.",
                        "Draw Rückpositiv: Gedackt 8.",
                        CHAPEL.soloed(
                                "Rückpositiv",
                                "Hauptwerk",
                                "Rückpositiv: Sesquialtera II",
                                "Hauptwerk: Rohrflöte 8",
                                "HW an Pedal")),
                breaks(
                        ChorusRule.CELESTE,
                        "Swell: Voix Celeste 8 wavers under a congregation.",
                        "Push in Swell: Voix Celeste 8.",
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8")),
                breaks(
                        ChorusRule.CELESTE,
                        "Swell: Voix Celeste 8 wavers in a chorus.",
                        "Push in Swell: Voix Celeste 8.",
                        swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Voix Celeste 8")
                                .withMode(Mode.SMALL_CHOIR)),
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
                        ChorusRule.SOLO_REED,
                        "Choir: Clarinet 8 is for solos and stands out of the chorus.",
                        "Push in Choir: Clarinet 8.",
                        great(EIGHT, FOUR, TWO, "Choir: Clarinet 8", "Choir to Great")),
                breaks(
                        ChorusRule.REED_OVER_LITTLE,
                        "Great: Trumpet 8 stands over too little flue in the hands.",
                        "Draw Great: Octave 4.",
                        great(EIGHT, "Great: Trumpet 8")),
                breaks(
                        ChorusRule.REED_OVER_LITTLE,
                        "Pedal: Trombone 16 and Pedal: Posaune 8 stand over too little flue in the pedal.",
                        "Push in Pedal: Trombone 16, Posaune 8.",
                        pedal(EIGHT, FOUR, TWO, "Pedal: Trombone 16", "Pedal: Posaune 8")),
                breaks(
                        ChorusRule.PEDAL_SILENT,
                        "The feet play, but nothing sounds on the pedal: the bass is missing.",
                        "Draw Great to Pedal.",
                        pedal(EIGHT, FOUR, TWO)),
                breaks(
                        ChorusRule.PEDAL_COUPLER,
                        VILLAGE,
                        FEW,
                        "The pedal has no 8 ft, and the coupler that would make its line clear is not drawn.",
                        "Draw Manual to Pedal.",
                        VILLAGE.withPedal("Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16")),
                breaks(
                        ChorusRule.PEDAL_WITHOUT_EIGHT,
                        VILLAGE,
                        FEW,
                        "The pedal has no 8 ft: its line is felt more than followed.",
                        NO_MEND,
                        VILLAGE.withPedal("Manual", "Manual: Flute 4", "Pedal: Bourdon 16", "Manual to Pedal")));
    }

    static Stream<RuleCase> kept() {
        Verse coupled = VILLAGE.withPedal(
                "Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16", "Manual to Pedal");
        return Stream.of(
                keeps(
                        ChorusRule.NO_EIGHT_FOOT,
                        great(FOUR, TWO, "Swell: Open Diapason 8", "Swell to Great"),
                        pedal("Great: Stopped Diap 8")),
                keeps(
                        ChorusRule.NO_EIGHT_FOOT,
                        CATHEDRAL.verse("Choir", "Choir: Gedackt 8", "Positive: Principal 4", "Positive: Octave 2")),
                keeps(
                        ChorusRule.GAP,
                        great(EIGHT, TWO, "Swell: Principal 4", "Swell to Great"),
                        swell("Swell: Stopped Diap 8").withMode(Mode.SOLO_VOICE)),
                keeps(ChorusRule.BARE_MIXTURE, great(EIGHT, FOUR, "Great: Mixture IV")),
                keeps(
                        ChorusRule.BARE_DOUBLE,
                        great(EIGHT, FOUR, TWO, "Great: Double Diapason 16"),
                        swell("Swell: Bourdon 16", "Swell: Stopped Diap 8").withKind(VerseKind.INTERLUDE)),
                keeps(
                        ChorusRule.BARE_MUTATION,
                        CATHEDRAL.soloed("Choir", "Swell", "Choir: Gedackt 8", "Choir: Nazard 2 2/3", "Swell: Viole 8"),
                        CATHEDRAL.soloed("Great", "Swell", "Great: Cornet V", "Swell: Viole 8", "Swell to Pedal")),
                keeps(
                        ChorusRule.CELESTE,
                        swell("Swell: Salicional 8", "Swell: Voix Celeste 8").withMode(Mode.SOLO_VOICE)),
                keeps(
                        ChorusRule.TREMULANT,
                        great(EIGHT, FOUR, TWO, "Swell: Stopped Diap 8", "Swell Tremulant"),
                        CATHEDRAL.soloed("Swell", "Choir", "Swell: Oboe 8", "Swell Tremulant", "Choir: Gedackt 8")),
                keeps(
                        ChorusRule.VOX_HUMANA,
                        swell("Swell: Stopped Diap 8", "Swell: Vox Humana 8").withKind(VerseKind.INTERLUDE)),
                keeps(
                        ChorusRule.SOLO_REED,
                        swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Oboe 8", "Swell closed"),
                        swell(
                                "Swell: Open Diapason 8",
                                "Swell: Principal 4",
                                "Swell: Mixture IV",
                                "Swell: Cornopean 8",
                                "Swell: Oboe 8"),
                        swell(SWELL_FLUTES[0], SWELL_FLUTES[1], "Swell: Oboe 8")),
                keeps(
                        ChorusRule.REED_OVER_LITTLE,
                        great(EIGHT, FOUR, TWO, "Great: Trumpet 8"),
                        introducing(great("Great: Trumpet 8", "Great: Clarion 4")),
                        pedal(EIGHT, FOUR, TWO, "Pedal: Trombone 16", "Great to Pedal")),
                keeps(
                        ChorusRule.PEDAL_SILENT,
                        CATHEDRAL.withPedal("Great"),
                        great(EIGHT, FOUR, TWO, "Great to Pedal")
                                .withHands(CATHEDRAL.hands(Layout.COUPLED_DOWN, "Great", "Great"))),
                breaks(ChorusRule.PEDAL_COUPLER, VILLAGE, FEW, "", NO_MEND, coupled),
                keeps(
                        ChorusRule.PEDAL_WITHOUT_EIGHT,
                        pedal(EIGHT, FOUR, TWO, "Pedal: Bourdon 16", "Pedal: Bass Flute 8")));
    }
}
