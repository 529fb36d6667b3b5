package versewind.rules;

import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.sound.KeyRouting;
import versewind.sound.VoicePart;

/** Everything that sounds from one keyboard: the stops of its divisions and of what is coupled to them. */
final class Chorus {

    private static final int OCTAVE_SEMITONES = 12;
    private static final int OCTAVES = 3;
    private static final int EVERY_OCTAVE = (1 << OCTAVES) - 1;

    private final PlayedRegistration drawn;
    private final Hand hand;
    private final int division;

    /** For every division, which octaves of the part reach it; bit 1 is the unison. */
    private final int[] octavesOf;

    private boolean silent = true;
    private int families;
    private int octaves;
    private int flueOctaves;
    private int flues;
    private int chorusReeds;
    private boolean upperwork;
    private boolean principalsAbove;

    /**
     * What sounds.
     *
     * @param drawn what is drawn, and how it is played
     * @param hand who plays it
     * @param part a part that is played so
     * @param division index of the division under the hand or the feet
     * @param received what reaches every division, in the bits of {@link KeyRouting}
     */
    Chorus(PlayedRegistration drawn, Hand hand, VoicePart part, int division, int[] received) {
        this.drawn = drawn;
        this.hand = hand;
        this.division = division;
        octavesOf = new int[received.length];
        for (int home = 0; home < received.length; home++) {
            octavesOf[home] = received[home] >> KeyRouting.bit(part, -1) & EVERY_OCTAVE;
        }
        IndexSet stops = drawn.registration().stops();
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            add(stop);
        }
    }

    private void add(int stop) {
        int heard = octavesOf[specification().divisionOf(stop)];
        if (heard == 0) {
            return;
        }
        silent = false;
        count(specification().stop(stop).family());
        for (int octave = 0; octave < OCTAVES; octave++) {
            if ((heard & 1 << octave) != 0) {
                addPitch(stop, octave - 1);
            }
        }
    }

    private void addPitch(int stop, int octave) {
        int semitones = specification().semitones(stop);
        if (semitones == StopFacts.NO_PITCH) {
            return;
        }
        int pitch = semitones + octave * OCTAVE_SEMITONES;
        Family family = specification().stop(stop).family();
        octaves |= Pitch.bitOf(pitch);
        if (family != Family.MUTATION && !family.isReed()) {
            flueOctaves |= Pitch.bitOf(pitch);
        }
        upperwork |= pitch >= 2 * OCTAVE_SEMITONES && !family.isReed() && family != Family.MUTATION;
        principalsAbove |= family == Family.PRINCIPAL && pitch >= OCTAVE_SEMITONES;
    }

    private void count(Family family) {
        families |= 1 << family.ordinal();
        switch (family) {
            case PRINCIPAL, FLUTE, STRING -> flues++;
            case CHORUS_REED -> chorusReeds++;
            case MIXTURE -> {
                flues++;
                upperwork = true;
                principalsAbove = true;
            }
            case CELESTE, MUTATION, CORNET, SOLO_REED -> {}
        }
    }

    Hand hand() {
        return hand;
    }

    Company company() {
        return drawn.company();
    }

    Registration registration() {
        return drawn.registration();
    }

    HandsAndFeet hands() {
        return drawn.hands();
    }

    StopFacts specification() {
        return drawn.specification();
    }

    Instrument organ() {
        return specification().organ();
    }

    /** Index of the division under the hand or the feet. */
    int division() {
        return division;
    }

    /** Whether it is a melody alone, played on stops of its own. */
    boolean isSoloLine() {
        return hand == Hand.RIGHT_HAND && drawn.hands().layout() == HandsAndFeet.Layout.MELODY_SOLOED;
    }

    /** Whether hands play chords on it, or the one that has not the melody. */
    boolean isAccompaniment() {
        return hand != Hand.FEET && !isSoloLine();
    }

    boolean isSilent() {
        return silent;
    }

    /** Indices of the stops that sound. */
    IndexSet sounding() {
        return sounding(stop -> true);
    }

    /** Indices of the stops that sound and are such. */
    IndexSet sounding(IntPredicate such) {
        return IndexSet.of(registration().stops().stream()
                .filter(stop -> octavesOf[specification().divisionOf(stop)] != 0)
                .filter(such));
    }

    /** Indices of the stops of its own division that sound. */
    IndexSet own() {
        return sounding(stop -> specification().divisionOf(stop) == division);
    }

    /** Indices of the stops of a family that sound. */
    IndexSet sounding(Family family) {
        return !has(family)
                ? IndexSet.EMPTY
                : sounding(stop -> specification().stop(stop).family() == family);
    }

    /** Whether a stop of a family sounds. */
    boolean has(Family family) {
        return (families & 1 << family.ordinal()) != 0;
    }

    /** Whether any stop sounds at a pitch. */
    boolean has(Pitch pitch) {
        return (octaves & pitch.bit()) != 0;
    }

    /** Whether a flue stop of one rank, or a cornet that begins there, sounds at a pitch. */
    boolean hasFlue(Pitch pitch) {
        return (flueOctaves & pitch.bit()) != 0;
    }

    /** Number of flue stops and mixtures that sound. */
    int flues() {
        return flues;
    }

    int chorusReeds() {
        return chorusReeds;
    }

    /** Whether 2 ft or higher, or a mixture, sounds. */
    boolean hasUpperwork() {
        return upperwork;
    }

    /** Whether principals above 8 ft, or a mixture, sound: the sound of a chorus, not of single colours. */
    boolean isPrincipalChorus() {
        return principalsAbove;
    }

    /** Whether stops of colour have no place in it: it leads a congregation, or it is a chorus for whoever sings. */
    boolean isNoPlaceForColour() {
        return isAccompaniment() && (company().isCongregation() || isPrincipalChorus());
    }

    /** What it stands in the way of: "under a congregation". */
    String place() {
        return company().isCongregation() ? "under a congregation" : "in a chorus";
    }

    /** What some stops do: "Great: Trumpet 8 stands", "Great: Trumpet 8 and Great: Clarion 4 stand". */
    String say(IndexSet stops, String oneDoes, String moreDo) {
        String names = stops.stream()
                .mapToObj(stop -> organ().stops().get(stop).name().toString())
                .collect(Collectors.joining(" and "));
        return names + " " + (stops.size() == 1 ? oneDoes : moreDo);
    }

    /** What is drawn without some stops. */
    Registration without(IndexSet stops) {
        return registration().withStops(registration().stops().minus(stops));
    }

    /**
     * What is drawn with one stop more: of the division under the hand, one that is not drawn and is such; a principal
     * where there are principals, else a flute.
     */
    Optional<Registration> withOne(IntPredicate such) {
        Family first = sounding(Family.PRINCIPAL).isEmpty() ? Family.FLUTE : Family.PRINCIPAL;
        Family second = first == Family.FLUTE ? Family.PRINCIPAL : Family.FLUTE;
        return withOne(first, such).or(() -> withOne(second, such));
    }

    private Optional<Registration> withOne(Family family, IntPredicate such) {
        return IntStream.range(0, specification().stops())
                .filter(stop -> specification().divisionOf(stop) == division)
                .filter(stop -> specification().stop(stop).family() == family)
                .filter(stop -> !registration().stops().contains(stop))
                .filter(such)
                .mapToObj(
                        stop -> registration().withStops(registration().stops().with(stop)))
                .findFirst();
    }

    /** What is drawn with one stop of a pitch more. */
    Optional<Registration> withOne(Pitch pitch) {
        return withOne(stop -> {
            int semitones = specification().semitones(stop);
            return semitones != StopFacts.NO_PITCH && Pitch.bitOf(semitones) == pitch.bit();
        });
    }

    /**
     * For the feet: what is drawn with one coupler more that brings them what the hands play, from a division with an 8
     * ft drawn, the left hand's before the right hand's.
     */
    Optional<Registration> withPedalCoupler() {
        boolean isSoloed = hands().layout() == HandsAndFeet.Layout.MELODY_SOLOED;
        return withCouplerFrom(hands().left()).or(() -> isSoloed ? Optional.empty() : withCouplerFrom(hands().right()));
    }

    private Optional<Registration> withCouplerFrom(int home) {
        boolean hasEight = registration().stops().stream()
                .anyMatch(stop -> specification().divisionOf(stop) == home
                        && Pitch.bitOf(specification().semitones(stop)) == Pitch.FEET_8.bit());
        if (!hasEight) {
            return Optional.empty();
        }
        String source = organ().divisions().get(home).name();
        String keyboard = organ().divisions().get(division).name();
        return IntStream.range(0, organ().couplers().size())
                .filter(i -> {
                    Coupler coupler = organ().couplers().get(i);
                    return coupler.kind() == Coupler.Kind.UNISON
                            && coupler.source().equals(source)
                            && coupler.keyboard().equals(keyboard)
                            && !registration().couplers().contains(i);
                })
                .mapToObj(registration()::toggleCoupler)
                .findFirst();
    }
}
