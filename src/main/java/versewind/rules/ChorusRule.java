package versewind.rules;

import static versewind.rules.Pitch.FEET_1;
import static versewind.rules.Pitch.FEET_16;
import static versewind.rules.Pitch.FEET_2;
import static versewind.rules.Pitch.FEET_32;
import static versewind.rules.Pitch.FEET_4;
import static versewind.rules.Pitch.FEET_8;
import static versewind.rules.Severity.CAUTION;
import static versewind.rules.Severity.REMARK;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Registration;
import versewind.organ.Stop;

/**
 * The rules on how the stops that a hand or the feet play are put together. They look at what is drawn and never at
 * levels, so that a search can ask them for every candidate. A row has its word, weight and severity; the stops that
 * break it; its sentence; and the registration after the smallest change that mends it.
 *
 * <p>Source: common practice, no source.
 */
@SuppressWarnings("ImmutableEnumChecker") // values and pure functions
public enum ChorusRule implements Rule {

    /** Hands that play chords want 8 ft: everything is built on it. */
    NO_EIGHT_FOOT(
            "no 8 ft",
            8,
            CAUTION,
            chorus -> brokenIf(chorus.isAccompaniment() && !chorus.isSilent() && !chorus.has(FEET_8)),
            (chorus, stops) -> chorus.hand().has() + " no 8 ft.",
            drawing(FEET_8)) {
        @Override
        Severity severity(Chorus chorus) {
            return chorus.company().isSung() ? CAUTION : REMARK;
        }
    },

    /**
     * A chorus has no gap: 2 ft over 8 ft wants 4 ft between them. For a choir or a soloist, and where the organ plays
     * alone, the gap may be intended for its colour.
     */
    GAP(
            "gap",
            5,
            CAUTION,
            chorus -> brokenIf(chorus.isAccompaniment() && gap(chorus).isPresent()),
            ChorusRule::gapInWords,
            (chorus, stops) -> chorus.withOne(gap(chorus).orElseThrow())) {
        @Override
        Severity severity(Chorus chorus) {
            return chorus.company().isCongregation() ? CAUTION : REMARK;
        }
    },

    /** A mixture crowns a chorus and wants 8 and 4 ft flues beneath it. */
    BARE_MIXTURE(
            "bare mixture",
            6,
            CAUTION,
            chorus -> chorus.isAccompaniment() && !(chorus.hasFlue(FEET_8) && chorus.hasFlue(FEET_4))
                    ? brokenBy(chorus.sounding(Family.MIXTURE))
                    : Optional.empty(),
            (chorus, stops) -> chorus.say(stops, "wants ", "want ")
                    + (chorus.hasFlue(FEET_8) ? "4 ft" : chorus.hasFlue(FEET_4) ? "8 ft" : "8 and 4 ft")
                    + " flues beneath in " + chorus.hand().word() + ".",
            (chorus, stops) -> (chorus.hasFlue(FEET_8) || chorus.hasFlue(FEET_4)
                            ? chorus.withOne(chorus.hasFlue(FEET_8) ? FEET_4 : FEET_8)
                            : Optional.<Registration>empty())
                    .or(() -> pushedIn(chorus, stops))),

    /**
     * Manual 16 ft under singing thickens unless 4 ft and upperwork stand above it. What the organ plays alone may want
     * the gravity.
     */
    BARE_DOUBLE(
            "bare 16 ft",
            4,
            CAUTION,
            chorus -> isThick(chorus) ? Optional.of(doubles(chorus)) : Optional.empty(),
            (chorus, stops) -> (stops.isEmpty()
                            ? "16 ft by a coupler only thickens "
                            : chorus.say(stops, "only thickens ", "only thicken "))
                    + chorus.hand().word() + " without " + (chorus.has(FEET_4) ? "2 ft or a mixture" : "4 and 2 ft")
                    + " above.",
            (chorus, stops) -> stops.isEmpty() ? Optional.empty() : pushedIn(chorus, stops)),

    /** A mutation, or a compound stop of mutations, colours an 8 ft flue and wants one beneath it. */
    BARE_MUTATION(
            "bare mutation",
            6,
            CAUTION,
            chorus -> chorus.hand() == Hand.FEET || chorus.hasFlue(FEET_8)
                    ? Optional.empty()
                    : brokenBy(chorus.sounding(Family.MUTATION).plus(chorus.sounding(Family.CORNET))),
            (chorus, stops) -> chorus.say(stops, "wants", "want") + " an 8 ft flue beneath in "
                    + chorus.hand().word() + ".",
            drawing(FEET_8)),

    /** A celeste wavers: it has no place in a chorus or under a congregation. */
    CELESTE(
            "celeste in chorus",
            6,
            CAUTION,
            chorus -> chorus.isNoPlaceForColour() ? brokenBy(chorus.sounding(Family.CELESTE)) : Optional.empty(),
            (chorus, stops) -> chorus.say(stops, "wavers ", "waver ") + chorus.place() + ".",
            ChorusRule::pushedIn),

    /** A tremulant shakes what should be firm: not in a chorus, not under a congregation. */
    TREMULANT(
            "tremulant in chorus",
            6,
            CAUTION,
            chorus -> brokenIf(chorus.isNoPlaceForColour() && shaking(chorus).isPresent()),
            (chorus, stops) -> "The tremulant shakes the "
                    + chorus.instrument()
                            .tremulants()
                            .get(shaking(chorus).orElseThrow())
                            .division()
                    + " " + chorus.place() + ".",
            (chorus, stops) -> Optional.of(
                    chorus.registration().toggleTremulant(shaking(chorus).orElseThrow()))),

    /** A vox humana sings by itself: it has no place in a chorus or under a congregation. */
    VOX_HUMANA(
            "vox humana in chorus",
            6,
            CAUTION,
            chorus -> chorus.has(Family.SOLO_REED) && chorus.isNoPlaceForColour()
                    ? brokenBy(chorus.sounding(
                            stop -> StopClass.isVoxHumana(chorus.organ().stop(stop))))
                    : Optional.empty(),
            (chorus, stops) -> chorus.say(stops, "has", "have") + " no place " + chorus.place() + ".",
            ChorusRule::pushedIn),

    /**
     * Solo reeds are for solos, and stand out of a chorus. Nobody minds one behind closed shutters, nor an oboe that
     * supports a chorus reed of its own division.
     */
    SOLO_REED(
            "solo reed in chorus",
            3,
            REMARK,
            chorus -> chorus.has(Family.SOLO_REED) && chorus.isAccompaniment() && chorus.isPrincipalChorus()
                    ? brokenBy(chorus.sounding(stop -> standsOut(chorus, stop)))
                    : Optional.empty(),
            (chorus, stops) ->
                    chorus.say(stops, "is for solos and stands", "are for solos and stand") + " out of the chorus.",
            ChorusRule::pushedIn),

    /**
     * Chorus reeds come last, over a flue chorus: under singing the hands want 8 and 4 ft flues and no fewer flues than
     * reeds, the feet one flue at least. A fanfare or a solo is free.
     */
    REED_OVER_LITTLE(
            "reed over little flue",
            5,
            CAUTION,
            chorus -> chorus.isSoloLine() || !chorus.company().isSung() || isCarried(chorus)
                    ? Optional.empty()
                    : brokenBy(chorus.sounding(Family.CHORUS_REED)),
            (chorus, stops) -> chorus.say(stops, "stands", "stand") + " over too little flue in "
                    + chorus.hand().word() + ".",
            (chorus, stops) -> chorus.hand() != Hand.FEET && chorus.hasFlue(FEET_8) && !chorus.hasFlue(FEET_4)
                    ? chorus.withOne(FEET_4)
                    : pushedIn(chorus, stops)),

    /** Feet that play should be heard: a stop, or a manual coupled down. */
    PEDAL_SILENT(
            "pedal missing",
            8,
            CAUTION,
            chorus -> brokenIf(chorus.hand() == Hand.FEET
                    && chorus.isSilent()
                    && !chorus.registration().stops().isEmpty()),
            (chorus, stops) -> "The feet play, but nothing sounds on the pedal: the bass is missing.",
            (chorus, stops) ->
                    chorus.withPedalCoupler().or(() -> chorus.withOne(FEET_16)).or(() -> withAny(chorus))),

    /** A pedal of 16 ft alone wants the coupler that makes its line clear, where there is one. */
    PEDAL_COUPLER(
            "pedal coupler missing",
            3,
            CAUTION,
            chorus ->
                    brokenIf(isPedalUnclear(chorus) && chorus.withPedalCoupler().isPresent()),
            (chorus, stops) -> "The pedal has no 8 ft, and the coupler that would make its line clear is not drawn.",
            (chorus, stops) -> chorus.withPedalCoupler()),

    /** A bass wants 8 ft, of its own or coupled down, to be followed. */
    PEDAL_WITHOUT_EIGHT(
            "pedal without 8 ft",
            3,
            REMARK,
            chorus ->
                    brokenIf(isPedalUnclear(chorus) && chorus.withPedalCoupler().isEmpty()),
            (chorus, stops) -> "The pedal has no 8 ft: its line is felt more than followed.",
            drawing(FEET_8));

    private static final Optional<IndexSet> BROKEN = Optional.of(IndexSet.EMPTY);

    private final RuleHead head;
    private final Function<Chorus, Optional<IndexSet>> offenders;
    private final BiFunction<Chorus, IndexSet, String> sentence;
    private final BiFunction<Chorus, IndexSet, Optional<Registration>> mended;

    ChorusRule(
            String word,
            int weight,
            Severity severity,
            Function<Chorus, Optional<IndexSet>> offenders,
            BiFunction<Chorus, IndexSet, String> sentence,
            BiFunction<Chorus, IndexSet, Optional<Registration>> mended) {
        head = new RuleHead(word, weight, severity);
        this.offenders = offenders;
        this.sentence = sentence;
        this.mended = mended;
    }

    @Override
    public RuleHead head() {
        return head;
    }

    /** The stops that break the rule: none where something is missing; empty where the rule is kept. */
    Optional<IndexSet> offenders(Chorus chorus) {
        return offenders.apply(chorus);
    }

    /** How much a breach of the rule matters in a chorus. */
    Severity severity(Chorus chorus) {
        return head.severity();
    }

    /** The fault in one sentence. */
    String sentence(Chorus chorus, IndexSet stops) {
        return sentence.apply(chorus, stops);
    }

    /** The registration after the smallest change that mends the fault, if there is one. */
    Optional<Registration> mended(Chorus chorus, IndexSet stops) {
        return mended.apply(chorus, stops);
    }

    private static Optional<IndexSet> brokenIf(boolean isBroken) {
        return isBroken ? BROKEN : Optional.empty();
    }

    private static Optional<IndexSet> brokenBy(IndexSet stops) {
        return stops.isEmpty() ? Optional.empty() : Optional.of(stops);
    }

    private static BiFunction<Chorus, IndexSet, Optional<Registration>> drawing(Pitch pitch) {
        return (chorus, stops) -> chorus.withOne(pitch);
    }

    private static Optional<Registration> pushedIn(Chorus chorus, IndexSet stops) {
        return Optional.of(chorus.without(stops));
    }

    /** With the first stop of the division, of any pitch. */
    private static Optional<Registration> withAny(Chorus chorus) {
        return IntStream.range(0, chorus.organ().stops())
                .filter(stop -> chorus.organ().divisionOf(stop) == chorus.division())
                .mapToObj(chorus.registration()::toggleStop)
                .findFirst();
    }

    /** The lowest pitch above 8 ft that is missing below one that sounds. */
    private static Optional<Pitch> gap(Chorus chorus) {
        if (!chorus.has(FEET_8)) {
            return Optional.empty();
        }
        if (!chorus.has(FEET_4)) {
            return chorus.has(FEET_2) || chorus.has(FEET_1) ? Optional.of(FEET_4) : Optional.empty();
        }
        return chorus.has(FEET_1) && !chorus.has(FEET_2) ? Optional.of(FEET_2) : Optional.empty();
    }

    private static String gapInWords(Chorus chorus, IndexSet stops) {
        Pitch missing = gap(chorus).orElseThrow();
        Pitch above = missing == FEET_4 && chorus.has(FEET_2) ? FEET_2 : FEET_1;
        Pitch below = missing == FEET_4 ? FEET_8 : FEET_4;
        return chorus.hand().has() + " " + above.feet() + " ft over " + below.feet() + " ft without " + missing.feet()
                + " ft between them.";
    }

    private static boolean isThick(Chorus chorus) {
        return chorus.isAccompaniment()
                && chorus.company().isSung()
                && chorus.has(FEET_16)
                && chorus.has(FEET_8)
                && !(chorus.has(FEET_4) && chorus.hasUpperwork());
    }

    /** The stops of 16 ft; none where a sub-octave coupler makes the 16 ft. */
    private static IndexSet doubles(Chorus chorus) {
        return chorus.sounding(stop -> Pitch.bitOf(chorus.organ().semitones(stop)) == FEET_16.bit());
    }

    /** The first tremulant drawn that shakes a stop of the chorus. */
    private static OptionalInt shaking(Chorus chorus) {
        Instrument organ = chorus.instrument();
        return chorus.registration().tremulants().stream()
                .filter(tremulant -> {
                    String home = organ.tremulants().get(tremulant).division();
                    return chorus.sounding().stream()
                            .anyMatch(stop ->
                                    organ.stops().get(stop).name().division().equals(home));
                })
                .findFirst();
    }

    private static boolean standsOut(Chorus chorus, int index) {
        OrganFacts organ = chorus.organ();
        Stop stop = organ.stop(index);
        if (stop.family() != Family.SOLO_REED || StopClass.isVoxHumana(stop)) {
            return false;
        }
        int home = organ.divisionOf(index);
        boolean isBehindShutters = chorus.instrument().divisions().get(home).encloses(stop)
                && chorus.registration().boxes().get(home).compareTo(BoxPosition.QUARTER) <= 0;
        boolean isSupporting = stop.pipe() == Pipe.CONICAL_REED
                && chorus.sounding(Family.CHORUS_REED).stream().anyMatch(reed -> organ.divisionOf(reed) == home);
        return !isBehindShutters && !isSupporting;
    }

    private static boolean isCarried(Chorus chorus) {
        return chorus.hand() == Hand.FEET
                ? chorus.flues() > 0
                : chorus.hasFlue(FEET_8) && chorus.hasFlue(FEET_4) && chorus.flues() >= chorus.chorusReeds();
    }

    /** True for feet that sound 16 ft or lower and no 8 ft. */
    private static boolean isPedalUnclear(Chorus chorus) {
        return chorus.hand() == Hand.FEET && (chorus.has(FEET_16) || chorus.has(FEET_32)) && !chorus.has(FEET_8);
    }
}
