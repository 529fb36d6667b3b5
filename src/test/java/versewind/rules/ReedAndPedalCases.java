package versewind.rules;

import static versewind.rules.ChorusCases.CHORUS;
import static versewind.rules.ChorusCases.FULL_SWELL;
import static versewind.rules.ChorusCases.TUTTI;
import static versewind.rules.ChorusCases.festal;
import static versewind.rules.ChorusCases.with;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.Loft.CHAPEL;
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

/** Cases of the rules on reeds, couplers and the pedal. */
final class ReedAndPedalCases {

    private ReedAndPedalCases() {}

    static Stream<RuleCase> broken() {
        return Stream.concat(brokenByReedsAndCouplers(), brokenByFeet());
    }

    static Stream<RuleCase> kept() {
        return Stream.concat(keptByReedsAndCouplers(), keptByFeet());
    }

    private static Stream<RuleCase> brokenByReedsAndCouplers() {
        return Stream.of(
                breaks(
                        ChorusRule.LONE_REED,
                        "Great: Clarion 4 wants an 8 ft reed.",
                        "Put in Great: Clarion 4.",
                        with(CHORUS, CATHEDRAL, "Great: Clarion 4")),
                breaks(
                        ChorusRule.REED_OVER_LITTLE,
                        "Great: Trumpet 8 stands over too little flue in the hands.",
                        "Draw Great: Principal 4.",
                        great(EIGHT, "Great: Trumpet 8")),
                breaks(
                        ChorusRule.TUBA,
                        "Solo: Tuba 8 is for solos, and in a chorus only for the climax of a festal verse.",
                        "Put in Solo: Tuba 8; put in Solo to Great.",
                        with(TUTTI, CATHEDRAL, "Solo: Tuba 8", "Solo to Great")),
                breaks(
                        ChorusRule.OCTAVE_COUPLER,
                        "Swell Octave is for 8 ft stops that are drawn: not for mixtures, nor for reeds of 16 or 4 ft.",
                        "Put in Swell Octave.",
                        with(FULL_SWELL, CATHEDRAL, "Swell Octave")),
                breaks(
                        ChorusRule.SUB_OCTAVE_COUPLER,
                        "Swell Sub Oct only thickens: a sub-octave coupler is for festal verses.",
                        "Put in Swell Sub Oct.",
                        with(FULL_SWELL, CATHEDRAL, "Swell Sub Oct")),
                breaks(
                        ChorusRule.SUB_OCTAVE_COUPLER,
                        "Swell Sub Oct acts on reeds of 16 or 4 ft.",
                        "Put in Swell Sub Oct.",
                        festal(with(FULL_SWELL, CATHEDRAL, "Swell: Clarion 4", "Swell Sub Oct"))),
                breaks(
                        ChorusRule.OCTAVE_FOR_POWER,
                        "Swell Oct to Gt adds power while stops of the Great are left.",
                        "Put in Swell Oct to Gt.",
                        with(CHORUS, CATHEDRAL, "Swell: Open Diapason 8", "Swell: Principal 4", "Swell Oct to Gt")),
                breaks(
                        ChorusRule.IDLE_COUPLER,
                        "Swell to Great brings nothing here.",
                        "Put in Swell to Great.",
                        with(CHORUS, CATHEDRAL, "Swell to Great")),
                breaks(
                        ChorusRule.SOLO_REED,
                        "Choir: Clarinet 8 is for solos and stands out from the chorus.",
                        "Put in Choir: Clarinet 8; put in Choir to Great.",
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
                        "Put in Pedal: Sub Bourdon 32.",
                        pedal("Great: Stopped Diap 8", "Pedal: Sub Bourdon 32", "Pedal: Bourdon 16", "Great to Pedal")
                                .withMode(Mode.SMALL_CHOIR)),
                breaks(
                        ChorusRule.PEDAL_REED_FIRST,
                        "Pedal: Trombone 16 comes before any 8 ft reed of the manuals.",
                        "Put in Pedal: Trombone 16.",
                        pedal(EIGHT, FOUR, TWO, "Pedal: Bourdon 16", "Pedal: Trombone 16", "Great to Pedal")),
                breaks(
                        ChorusRule.DEEP_FIRST,
                        "Pedal: Contra Trombone 32 comes before a 16 ft of its kind.",
                        "Put in Pedal: Contra Trombone 32.",
                        with(TUTTI, CATHEDRAL, "Pedal: Contra Trombone 32")),
                breaks(
                        ChorusRule.BOX_ON_BORROWED,
                        "Pedal: Echo Bourdon 16 speaks through a swell box that is shut.",
                        "Open the box of the Swell to half.",
                        pedal("Great: Stopped Diap 8", "Pedal: Echo Bourdon 16", "Great to Pedal", "Swell closed")),
                breaks(
                        ChorusRule.STRANGE_TO_FEET,
                        "Choir to Pedal brings the feet a manual that nobody plays.",
                        "Draw Great to Pedal; put in Choir to Pedal.",
                        pedal(EIGHT, FOUR, "Pedal: Bourdon 16", "Choir: Gedackt 8", "Choir to Pedal")),
                breaks(
                        ChorusRule.STRANGE_TO_FEET,
                        "Great to Pedal brings the feet a manual that the left hand does not play.",
                        "Put in Great to Pedal.",
                        pedal(EIGHT, FOUR, "Pedal: Bourdon 16", "Choir: Gedackt 8", "Great to Pedal")
                                .withMode(Mode.MELODY_SOLOED)
                                .withHands(CATHEDRAL.hands(Layout.MELODY_SOLOED, "Great", "Choir"))),
                breaks(
                        ChorusRule.PEDAL_COUPLER,
                        "The pedal has no 8 ft: its line is felt more than followed.",
                        "Draw Manual to Pedal.",
                        VILLAGE,
                        VILLAGE.withPedal("Manual", "Manual: Stopped Diap 8", "Manual: Flute 4", "Pedal: Bourdon 16")),
                breaks(
                        ChorusRule.HEAVY_SIXTEEN,
                        "Pedal: Open Wood 16 is too heavy for the light stops of the hands.",
                        "Draw Pedal: Bourdon 16; put in Pedal: Open Wood 16.",
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
                        swell("Swell: Open Diapason 8", "Swell: Principal 4", "Swell: Oboe 8"),
                        swell(SWELL_FLUTES[0], SWELL_FLUTES[1], "Swell: Oboe 8")),
                keeps(ChorusRule.REEDS_SHUT_IN, with(FULL_SWELL, CATHEDRAL, "Swell quarter")));
    }

    private static Stream<RuleCase> keptByFeet() {
        return Stream.of(
                keeps(
                        ChorusRule.PEDAL_SILENT,
                        CATHEDRAL.withPedal("Great"),
                        great(EIGHT, FOUR, TWO, "Great to Pedal")
                                .withHands(CATHEDRAL.hands(Layout.PEDAL_BY_COUPLER, "Great", "Great"))),
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
