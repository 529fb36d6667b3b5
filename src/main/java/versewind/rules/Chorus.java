package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.sound.KeyRouting;
import versewind.sound.VoicePart;

/** Everything that sounds from one keyboard: the stops of its divisions and of what is coupled to them. */
public final class Chorus {

    private static final int OCTAVE_SEMITONES = 12;
    private static final int OCTAVES = 3;
    private static final int EVERY_OCTAVE = (1 << OCTAVES) - 1;
    private static final int FLUES = StopClass.bits(
            StopClass.DOUBLE,
            StopClass.PRINCIPAL_8,
            StopClass.FLUTE_8,
            StopClass.STRING_8,
            StopClass.PRINCIPAL_4,
            StopClass.FLUTE_4,
            StopClass.PRINCIPAL_2,
            StopClass.FLUTE_2,
            StopClass.HIGH,
            StopClass.MIXTURE,
            StopClass.PEDAL_32,
            StopClass.PEDAL_16,
            StopClass.PEDAL_8,
            StopClass.PEDAL_4,
            StopClass.PEDAL_MIXTURE);
    private static final int MIXTURES = StopClass.bits(StopClass.MIXTURE, StopClass.PEDAL_MIXTURE);

    private final PlayedRegistration played;
    private final Hand hand;
    private final int division;

    /** For every division, which octaves of the part reach it; bit 1 is the unison. */
    private final int[] octavesOf;

    private final int[] count = new int[StopClass.COUNT];
    private final IndexSet sounding;
    private final int[] classesFrom;
    private int classes;
    private int octaves;
    private int flueOctaves;
    private int flues;
    private boolean upperwork;
    private boolean principalsAbove;

    /**
     * Looks at what sounds.
     *
     * @param played what is drawn, and how it is played
     * @param hand who plays it
     * @param part a part that is played so
     * @param division index of the division under the hand or the feet
     * @param received what reaches every division, in the bits of {@link KeyRouting}
     */
    Chorus(PlayedRegistration played, Hand hand, VoicePart part, int division, int[] received) {
        this.played = played;
        this.hand = hand;
        this.division = division;
        octavesOf = new int[received.length];
        classesFrom = new int[received.length];
        IndexSet stops = played.registration().stops();
        for (int home = 0; home < received.length; home++) {
            octavesOf[home] = received[home] >> KeyRouting.bit(part, -1) & EVERY_OCTAVE;
            stops = octavesOf[home] == 0 ? stops.minus(organ().allOf(home)) : stops;
        }
        sounding = stops;
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            add(stop);
        }
    }

    private void add(int stop) {
        int home = organ().divisionOf(stop);
        int heard = octavesOf[home];
        StopClass layer = organ().layer(stop);
        Family family = organ().stop(stop).family();
        count[layer.ordinal()]++;
        classes |= layer.bit();
        classesFrom[home] |= layer.bit();
        flues += (FLUES & layer.bit()) == 0 ? 0 : 1;
        boolean isMixture = (MIXTURES & layer.bit()) != 0;
        upperwork |= isMixture;
        principalsAbove |= isMixture;
        for (int octave = 0; octave < OCTAVES; octave++) {
            if ((heard & 1 << octave) != 0) {
                addPitch(stop, family, octave - 1);
            }
        }
    }

    private void addPitch(int stop, Family family, int octave) {
        int semitones = organ().semitones(stop);
        if (semitones == OrganFacts.NO_PITCH) {
            return;
        }
        int pitch = semitones + octave * OCTAVE_SEMITONES;
        octaves |= Pitch.bitOf(pitch);
        if (family != Family.MUTATION && !family.isReed()) {
            flueOctaves |= Pitch.bitOf(pitch);
        }
        upperwork |= pitch >= 2 * OCTAVE_SEMITONES && !family.isReed() && family != Family.MUTATION;
        principalsAbove |= family == Family.PRINCIPAL && pitch >= OCTAVE_SEMITONES;
    }

    /** What is drawn, and how it is played. */
    public PlayedRegistration played() {
        return played;
    }

    /** How many stops of a class sound. */
    public int count(StopClass wanted) {
        return count[wanted.ordinal()];
    }

    /** True where a stop of a class sounds. */
    public boolean has(StopClass wanted) {
        return count[wanted.ordinal()] > 0;
    }

    /** The stops of a set of classes that sound. */
    IndexSet of(int wanted) {
        IndexSet such = IndexSet.EMPTY;
        if (hasAny(wanted)) {
            for (int stop = sounding.next(0); stop != IndexSet.NONE; stop = sounding.next(stop + 1)) {
                such = (organ().layer(stop).bit() & wanted) == 0 ? such : such.with(stop);
            }
        }
        return such;
    }

    /** True where a stop of any class of a set sounds. */
    boolean hasAny(int wanted) {
        return (classes & wanted) != 0;
    }

    /** True where a stop of any class of a set sounds of a division. */
    boolean hasFrom(int home, int wanted) {
        return (classesFrom[home] & wanted) != 0;
    }

    /** Who plays it. */
    public Hand hand() {
        return hand;
    }

    Company company() {
        return played.company();
    }

    Registration registration() {
        return played.registration();
    }

    HandsAndFeet hands() {
        return played.hands();
    }

    OrganFacts organ() {
        return played.organ();
    }

    Instrument instrument() {
        return organ().organ();
    }

    /** Index of the division under the hand or the feet. */
    public int division() {
        return division;
    }

    /** Whether it is a melody alone, played on stops of its own. */
    boolean isSoloLine() {
        return hand == Hand.RIGHT_HAND && played.hands().layout().isSoloed();
    }

    /** True for hands that play chords, or all but the melody. */
    boolean isChords() {
        return isHand() && !isSoloLine();
    }

    /** True for a hand or both. */
    boolean isHand() {
        return hand != Hand.FEET;
    }

    /** True for the one of a registration’s choruses that is asked what concerns them all. */
    boolean isFirst() {
        return hand == Hand.BOTH_HANDS || hand == Hand.RIGHT_HAND;
    }

    /** True where any stop is drawn, whether it sounds from here or not. */
    boolean isAnythingDrawn() {
        return !registration().stops().isEmpty();
    }

    /** True where nothing sounds. */
    public boolean isSilent() {
        return sounding.isEmpty();
    }

    /** Indices of the stops that sound. */
    public IndexSet sounding() {
        return sounding;
    }

    /** Indices of the stops that sound and are such. */
    IndexSet sounding(IntPredicate such) {
        return IndexSet.of(sounding.stream().filter(such));
    }

    /** Indices of the stops of its own division that sound. */
    IndexSet own() {
        return sounding.and(organ().allOf(division));
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

    /** Number of chorus reeds of the manuals that sound. */
    int chorusReeds() {
        return count(StopClass.REED_16) + count(StopClass.REED_8) + count(StopClass.REED_4);
    }

    /** True where a coupler of a kind brings a division here, or none at its own pitch. */
    boolean sounds(int home, Coupler.Kind kind) {
        return (octavesOf[home] & (1 << (1 + kind.semitones() / OCTAVE_SEMITONES))) != 0;
    }

    /** True for a division that sounds from here. */
    public boolean sounds(int home) {
        return octavesOf[home] != 0;
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
        return isChords() && (company().isCongregation() || isPrincipalChorus());
    }

    /**
     * A sentence of the rule book with its blanks filled: {stops}, {couplers} and {tremulants} that break a rule,
     * {hand}, {Hand} and {where} it plays, {place} as in "under a congregation"; of [is|are] the first for one, the
     * other for more, of <has|have> the first but for both hands.
     */
    String say(String sentence, IndexSet offenders) {
        String filled = sentence.replace("{Hand}", hand.start())
                .replace("{hand}", hand.word())
                .replace("{where}", instrument().divisions().get(division).name())
                .replace("{place}", company().isCongregation() ? "under a congregation" : "in a chorus");
        filled = fill(
                filled,
                "{stops}",
                offenders,
                i -> instrument().stops().get(i).name().toString());
        filled = fill(filled, "{couplers}", offenders, i -> instrument()
                .couplers()
                .get(i)
                .name());
        filled = fill(filled, "{tremulants}", offenders, i -> instrument()
                .tremulants()
                .get(i)
                .division());
        return filled.replaceAll("\\[([^|]*)\\|([^]]*)]", offenders.size() > 1 ? "$2" : "$1")
                .replaceAll("<([^|]*)\\|([^>]*)>", hand == Hand.BOTH_HANDS ? "$2" : "$1");
    }

    private String fill(String sentence, String blank, IndexSet offenders, IntFunction<String> name) {
        return sentence.contains(blank)
                ? sentence.replace(
                        blank, listed(offenders.stream().mapToObj(name).toList()))
                : sentence;
    }

    /** Names of stops, a division named once: "Great: Trumpet 8 and Clarion 4". */
    private static String listed(List<String> names) {
        List<String> said = new ArrayList<>();
        String before = "";
        for (String name : names) {
            int colon = name.indexOf(": ") + 1;
            String where = name.substring(0, colon);
            said.add(where.equals(before) ? name.substring(colon).strip() : name);
            before = where;
        }
        int last = said.size() - 1;
        return last < 1 ? said.get(0) : String.join(", ", said.subList(0, last)) + " and " + said.get(last);
    }
}
