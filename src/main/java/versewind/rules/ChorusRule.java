package versewind.rules;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.organ.IndexSet;

/**
 * The rules on a registration as it is played. They look at what is drawn and never at levels, so that a search can ask
 * them for every candidate. A row has its word and its points; who breaks it; its sentence, with blanks for
 * {@link Chorus#say}; and what may fix it.
 *
 * <p>Source: common practice, no source.
 */
@SuppressWarnings("ImmutableEnumChecker") // values and pure functions
public enum ChorusRule implements Rule {
    EMPTY_HAND(
            "hand on an empty manual",
            10,
            Offenders::emptyHand,
            "{Hand} <plays|play> the {where}, where nothing speaks.",
            Fixes::findAVoice),
    PEDAL_SILENT(
            "pedal missing",
            8,
            PedalOffenders::silentPedal,
            "The feet play, but nothing sounds on the pedal: the bass is missing.",
            ways(Fixes::coupleFeet).or(Fixes.draw(StopClass.PEDAL_16)).or(Fixes::drawAny)),
    NO_EIGHT_FOOT("no 8 ft", 8, Offenders::noEight, "{Hand} <has|have> no 8 ft.", Fixes::drawEight),
    PEDAL_TOO_HIGH(
            "pedal too high",
            6,
            PedalOffenders::noBass,
            "The pedal has neither 16 nor 8 ft.",
            ways(Fixes::strengthen).or(Fixes::coupleFeet).or(Fixes.draw(StopClass.PEDAL_16, StopClass.PEDAL_8))),

    /** A chorus has no gap: 2 ft over 8 ft wants 4 ft between them. */
    GAP("gap", 5, Offenders::gap, ChorusRule::gapInWords, ways(Fixes::fillGap)),
    BARE_MIXTURE(
            "bare mixture",
            6,
            Offenders::bareMixture,
            (chorus, stops) -> chorus.say(
                    "{stops} [wants|want] "
                            + (chorus.hasFlue(Pitch.FEET_8)
                                    ? "4 ft"
                                    : chorus.hasFlue(Pitch.FEET_4) ? "8 ft" : "8 and 4 ft")
                            + " flues beneath in {hand}.",
                    stops),
            ways(Fixes::drawEightAndFour).or(Fixes::pushIn)),
    BARE_TWELFTH(
            "bare twelfth",
            5,
            Offenders::bareTwelfth,
            "{stops} [joins|join] a chorus only over 4 and 2 ft.",
            ways(Fixes::drawFourAndTwo).or(Fixes::pushIn)),
    BARE_MUTATION(
            "bare mutation",
            6,
            Offenders::bareMutation,
            "{stops} [wants|want] an 8 ft flue beneath in {hand}.",
            ways(Fixes::drawEight).or(Fixes::pushIn)),
    BARE_DOUBLE(
            "bare 16 ft",
            5,
            Offenders::bareDouble,
            "{stops} [wants|want] 8 and 4 ft above in {hand}.",
            ways(Fixes::pushIn).or(Fixes::drawEightAndFour)),
    LONE_REED(
            "reed without its 8 ft",
            6,
            ReedOffenders::loneReed,
            "{stops} [wants|want] an 8 ft reed.",
            ways(Fixes::pushIn).or(Fixes.draw(StopClass.REED_8))),

    /** Reeds come last, over a flue chorus: 8 and 4 ft, and no fewer flues than reeds. */
    REED_OVER_LITTLE(
            "reed over little flue",
            5,
            ReedOffenders::reedOverLittle,
            "{stops} [stands|stand] over too little flue in {hand}.",
            ways(Fixes::drawEightAndFour).or(Fixes::pushIn)),
    TUBA(
            "solo reed before its time",
            6,
            ReedOffenders::tuba,
            "{stops} [is|are] for solos, and in a chorus only for the climax of a festal verse.",
            ways(Fixes::pushIn)),
    CELESTE("celeste in chorus", 6, Offenders::celeste, "{stops} [wavers|waver] {place}.", ways(Fixes::pushIn)),
    CELESTE_ALONE(
            "celeste alone",
            5,
            Offenders::loneCeleste,
            "{stops} [wants its|want their] partner: the 8 ft with which [it beats|they beat].",
            ways(Fixes::drawPartner).or(Fixes::pushIn)),
    TREMULANT(
            "tremulant in chorus",
            6,
            Offenders::tremulant,
            (chorus, tremulants) -> chorus.say(
                    "The tremulant shakes the {tremulants} "
                            + (chorus.isNoPlaceForColour() ? "{place}." : "with its mixtures or reeds."),
                    tremulants),
            ways(Fixes::pushInTremulants)),
    VOX_HUMANA(
            "vox humana in chorus",
            6,
            Offenders::voxHumana,
            "{stops} [has|have] no place {place}.",
            ways(Fixes::pushIn)),
    OCTAVE_COUPLER(
            "octave coupler misplaced",
            5,
            CouplerOffenders::octaveCoupler,
            "{couplers} [is|are] for 8 ft stops that are drawn: not for mixtures, nor for reeds of 16 or 4 ft.",
            ways(Fixes::pushInCouplers)),
    SUB_OCTAVE_COUPLER(
            "sub-octave coupler",
            5,
            CouplerOffenders::subOctaveCoupler,
            (chorus, couplers) -> chorus.say(
                    chorus.company().isFestal()
                            ? "{couplers} [acts|act] on reeds of 16 or 4 ft."
                            : "{couplers} only [thickens|thicken]: a sub-octave coupler is for festal verses.",
                    couplers),
            ways(Fixes::pushInCouplers)),
    DEEP_UNDER_FEW(
            "32 ft under few singers",
            5,
            PedalOffenders::deepUnderFew,
            "{stops} [is|are] too deep under a soloist or a choir.",
            ways(Fixes::pushIn)),
    PEDAL_REED_FIRST(
            "pedal reed first",
            5,
            ReedOffenders::pedalReedFirst,
            "{stops} [comes|come] before any 8 ft reed of the manuals.",
            ways(Fixes::pushIn)),
    DEEP_FIRST(
            "32 ft first",
            5,
            PedalOffenders::deepFirst,
            (chorus, stops) -> chorus.say(
                    ReedOffenders.isBeforeReeds(chorus)
                            ? "{stops} [comes|come] before the reeds of the manuals."
                            : "{stops} [comes|come] before a 16 ft of its kind.",
                    stops),
            ways(Fixes::pushIn)),
    BOX_ON_BORROWED(
            "box shut on borrowed stops",
            5,
            PedalOffenders::shutIn,
            "{stops} [speaks|speak] through a swell box that is shut.",
            ways(Fixes::openBox)),
    MELODY_UNDER_CONGREGATION(
            "melody soloed under a congregation",
            5,
            Offenders::melodySoloed,
            "A melody soloed out gives a congregation little support.",
            ways(Fixes::inFourParts)),

    SOLO_REED(
            "solo reed in chorus",
            2,
            ReedOffenders::soloReed,
            "{stops} [is|are] for solos and [stands|stand] out from the chorus.",
            ways(Fixes::pushIn)),
    REEDS_SHUT_IN(
            "box shut on reeds",
            2,
            ReedOffenders::shutReeds,
            "{stops} [is|are] shut in: the swell box is closed.",
            ways(Fixes::openBox)),
    THICK_DOUBLE(
            "thick 16 ft",
            2,
            Offenders::thickDouble,
            "{stops} only [thickens|thicken] {hand} without 2 ft or a mixture above.",
            ways(Fixes::pushIn)),
    PASSED_OVER(
            "rank passed over",
            3,
            Offenders::passedOver,
            (chorus, mixtures) -> chorus.say("{stops} [is|are] passed over", Offenders.missingBelow(chorus, mixtures))
                    + chorus.say(" for {stops}.", mixtures),
            ways(Fixes::drawMissing).or(Fixes::pushIn)),
    DOUBLING(
            "doubling before the 2 ft",
            2,
            Offenders::doubling,
            "{stops} double one pitch before the 2 ft is in.",
            ways(Fixes::pushInSeconds)),
    FONDS(
            "fonds divided",
            1,
            Offenders::fonds,
            "The {where} draws its 8 ft foundations together: {stops} [is|are] left out.",
            ways(Fixes::drawThem)),
    OCTAVE_FOR_POWER(
            "octave coupler for power",
            2,
            CouplerOffenders::octaveForPower,
            "{couplers} [adds|add] power while stops of the {where} are left.",
            ways(Fixes::pushInCouplers)),
    IDLE_COUPLER(
            "coupler from an empty manual",
            2,
            CouplerOffenders::idleCoupler,
            "{couplers} [brings|bring] nothing here.",
            ways(Fixes::pushInCouplers)),
    STRANGE_TO_FEET(
            "pedal coupled to another manual",
            2,
            PedalOffenders::strangeToFeet,
            (feet, couplers) -> feet.say(
                    "{couplers} [brings|bring] the feet "
                            + (feet.played().isSoloed()
                                    ? "a manual that the left hand does not play."
                                    : "a manual that nobody plays."),
                    couplers),
            ways(Fixes::coupleOtherwise)),
    PEDAL_COUPLER(
            "pedal coupler missing",
            3,
            PedalOffenders::unclearPedal,
            "The pedal has no 8 ft: its line is felt more than followed.",
            ways(Fixes::coupleFeet).or(Fixes.draw(StopClass.PEDAL_8))),
    HEAVY_SIXTEEN(
            "heavy 16 ft",
            3,
            PedalOffenders::heavySixteen,
            "{stops} [is|are] too heavy for the light stops of the hands.",
            ways(Fixes::lighten)),
    SOFT_BOURDON(
            "soft bourdon alone",
            2,
            PedalOffenders::softBourdon,
            "{stops} alone [is|are] too little pedal under reeds.",
            ways(Fixes::strengthen));

    private final RuleHead head;
    private final Function<Chorus, Optional<IndexSet>> offenders;
    private final BiFunction<Chorus, IndexSet, String> sentence;
    private final Fixes.Ways fixes;

    ChorusRule(
            String word,
            int points,
            Function<Chorus, Optional<IndexSet>> offenders,
            BiFunction<Chorus, IndexSet, String> sentence,
            Fixes.Ways fixes) {
        head = new RuleHead(word, points);
        this.offenders = offenders;
        this.sentence = sentence;
        this.fixes = fixes;
    }

    ChorusRule(
            String word,
            int points,
            Function<Chorus, Optional<IndexSet>> offenders,
            String sentence,
            Fixes.Ways fixes) {
        this(word, points, offenders, (chorus, stops) -> chorus.say(sentence, stops), fixes);
    }

    private static Fixes.Ways ways(Fixes.Ways first) {
        return first;
    }

    @Override
    public RuleHead head() {
        return head;
    }

    /** The stops or couplers that break the rule: none where something is missing; empty where the rule is kept. */
    Optional<IndexSet> offenders(Chorus chorus) {
        return offenders.apply(chorus);
    }

    /** The fault in one sentence. */
    String sentence(Chorus chorus, IndexSet offending) {
        return sentence.apply(chorus, offending);
    }

    /** What may fix the fault, the likeliest first. */
    Stream<Fix> fixes(Chorus chorus, IndexSet offending) {
        return fixes.apply(chorus, offending);
    }

    private static String gapInWords(Chorus chorus, IndexSet offending) {
        Pitch missing = Offenders.missing(chorus).orElseThrow();
        Pitch above = missing == Pitch.FEET_4 && chorus.has(Pitch.FEET_2) ? Pitch.FEET_2 : Pitch.FEET_1;
        Pitch below = missing == Pitch.FEET_4 ? Pitch.FEET_8 : Pitch.FEET_4;
        return chorus.say("{Hand} <has|have> ", offending) + above.feet() + " ft over " + below.feet() + " ft without "
                + missing.feet() + " ft between them.";
    }
}
