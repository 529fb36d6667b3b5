package versewind.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import versewind.agreement.Fault.Remark;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;

/** A teacher who mentions what is no fault and could be better, as far as no level is needed to hear it. */
final class SoftTeacher {

    /** So many light stops of 8 ft together lead without a 4 ft. */
    private static final int FONDS = 4;

    private final Instrument organ;
    private final Plan plan;
    private final Verse verse;
    private final Speaking speaking;
    private final List<Remark> remarks = new ArrayList<>();

    private SoftTeacher(Instrument organ, Plan plan, Verse verse) {
        this.organ = organ;
        this.plan = plan;
        this.verse = verse;
        speaking = new Speaking(organ, verse.registration(), verse.hands());
    }

    /** What could be better in a verse with something drawn. */
    static List<Remark> mentions(Instrument organ, Plan plan, Verse verse) {
        SoftTeacher teacher = new SoftTeacher(organ, plan, verse);
        teacher.character();
        teacher.pedal();
        teacher.couplers();
        teacher.reeds();
        return List.copyOf(teacher.remarks);
    }

    private void say(boolean isBroken, Fault fault, String sentence) {
        if (isBroken) {
            remarks.add(fault.says(sentence));
        }
    }

    /** What the words, the singers and the solo want. */
    private void character() {
        List<SpeakingStop> hands = speaking.manuals();
        boolean isUpperwork = hands.stream()
                .anyMatch(stop ->
                        stop.stop().family().isCompound() || stop.isReed() || (stop.isFlue() && stop.feet() < 4));
        boolean isOfPeople = verse.mode() == Mode.CONGREGATION && verse.isSung();
        boolean isFonds = hands.stream().filter(stop -> stop.isFlue(8)).count() >= FONDS;
        say(
                isOfPeople && verse.mood() == Mood.GENTLE && isUpperwork,
                Fault.GENTLE_VERSE_TOO_BRIGHT,
                "A gentle verse has more than 8 and 4 ft.");
        say(
                isOfPeople
                        && !isGentle()
                        && !SpeakingStop.has(hands, 4)
                        && !isFonds
                        && hasOnManuals(SoftTeacher::isFourFlue),
                Fault.NO_FOUR_UNDER_PEOPLE,
                "The people have no 4 ft to follow.");
        say(
                isOfPeople
                        && verse.mood() == Mood.FESTAL
                        && SpeakingStop.has(hands, 4)
                        && hasOnManuals(stop -> stop.family() == Family.MIXTURE)
                        && hands.stream().noneMatch(stop -> stop.is(Family.MIXTURE)),
                Fault.FESTAL_VERSE_TOO_PLAIN,
                "A festal verse has no mixture.");
        say(
                verse.mode() == Mode.SOLO_VOICE && isUpperwork,
                Fault.SOLOIST_TOO_BRIGHT,
                "A soloist has more than 8 and 4 ft.");
        say(
                speaking.isSoloed() && SpeakingStop.isChorus(speaking.left()),
                Fault.ACCOMPANIMENT_TOO_BRIGHT,
                "A chorus accompanies the tune.");
    }

    private boolean isGentle() {
        return verse.mood() == Mood.GENTLE
                || verse.singing() == Singing.GENTLE
                || plan.heading().occasion().isHeldBack();
    }

    private static boolean isFourFlue(Stop stop) {
        return (stop.family() == Family.PRINCIPAL || stop.family() == Family.FLUTE)
                && stop.footage().filter(feet -> feet.feet() == 4).isPresent();
    }

    private boolean hasOnManuals(Predicate<Stop> kind) {
        return IntStream.range(0, organ.stops().size())
                .filter(stop -> !verse.locks().never().contains(stop))
                .mapToObj(organ.stops()::get)
                .anyMatch(knob -> !organ.divisions().get(knob.division()).isPedal() && kind.test(knob.stop()));
    }

    private List<SpeakingStop> ownPedal() {
        return speaking.feet().stream()
                .filter(voice -> organ.divisions().get(voice.division()).isPedal())
                .toList();
    }

    private void pedal() {
        if (!speaking.hasFeet() || speaking.feet().isEmpty()) {
            return;
        }
        List<SpeakingStop> own = ownPedal();
        boolean isLight = speaking.manuals().stream()
                .allMatch(voice -> voice.is(Family.FLUTE, Family.STRING, Family.CELESTE) && voice.feet() >= 4);
        Optional<SpeakingStop> heavy =
                own.stream().filter(voice -> voice.isHeavy()).findFirst();
        say(
                isLight && heavy.isPresent() && !speaking.manuals().isEmpty(),
                Fault.HEAVY_SIXTEEN_UNDER_FLUTES,
                heavy.map(SpeakingStop::label).orElse("") + " lies under flutes.");
        long reeds = speaking.manuals().stream()
                .filter(voice -> voice.is(Family.CHORUS_REED))
                .count();
        boolean isSoft =
                !own.isEmpty() && own.stream().allMatch(voice -> voice.stop().pipe() == Pipe.STOPPED);
        boolean hasMore = organ.divisions().get(organ.pedalDivision().orElseThrow()).stops().stream()
                .anyMatch(stop -> stop.pipe() != Pipe.STOPPED
                        && stop.footage()
                                .filter(feet -> feet.feet() >= 8 && feet.feet() <= 16)
                                .isPresent());
        say(reeds >= 2 && isSoft && hasMore, Fault.SOFT_BOURDON_UNDER_REEDS, "A soft pedal is alone under full reeds.");
        boolean hasSixteen = organ.divisions().get(organ.pedalDivision().orElseThrow()).stops().stream()
                .anyMatch(
                        stop -> stop.footage().filter(feet -> feet.feet() == 16).isPresent());
        say(
                verse.hands().layout() == Layout.FOUR_PARTS
                        && hasSixteen
                        && verse.mode() == Mode.CONGREGATION
                        && own.stream().noneMatch(stop -> stop.feet() == 16),
                Fault.NO_SIXTEEN_IN_PEDAL,
                "The pedal plays its own part without 16 ft.");
        boolean hasEight = speaking.feet().stream().anyMatch(voice -> voice.feet() == 8);
        boolean isUncoupled = organ.couplers().stream()
                .anyMatch(coupler -> organ.division(coupler.keyboard()).equals(organ.pedalDivision())
                        && coupler.kind() == Coupler.Kind.UNISON
                        && speaking.isPlayed(organ.division(coupler.source()).orElseThrow()));
        say(!hasEight && isUncoupled, Fault.PEDAL_NOT_COUPLED, "The pedal has no 8 ft and is not coupled.");
    }

    private void couplers() {
        for (Coupler coupler : speaking.actingCouplers()) {
            int source = organ.division(coupler.source()).orElseThrow();
            boolean isElsewhere = !coupler.source().equals(coupler.keyboard());
            boolean isToPedal = organ.division(coupler.keyboard()).equals(organ.pedalDivision());
            say(
                    isElsewhere && speaking.of(source).isEmpty() && coupler.kind() != Coupler.Kind.UNISON_OFF,
                    Fault.COUPLER_FROM_EMPTY_MANUAL,
                    coupler.name() + " couples an empty manual.");
            boolean isOfHands = speaking.manuals().stream().anyMatch(voice -> voice.division() == source);
            say(
                    isToPedal && !isOfHands && !speaking.of(source).isEmpty(),
                    Fault.PEDAL_COUPLER_UNPLAYED,
                    coupler.name() + " brings down a manual that no hand plays.");
            boolean isLeft = organ.divisions().get(source).stops().stream()
                    .anyMatch(stop -> isFlueOfChorus(stop)
                            && speaking.of(source).stream()
                                    .noneMatch(voice -> voice.stop().equals(stop)));
            say(
                    coupler.kind() == Coupler.Kind.OCTAVE
                            && !speaking.of(source).isEmpty()
                            && isLeft
                            && !Teacher.isFestal(plan, verse),
                    Fault.OCTAVE_COUPLER_WHILE_STOPS_ARE_LEFT,
                    coupler.name() + " is drawn for power while stops are left.");
        }
    }

    private static boolean isFlueOfChorus(Stop stop) {
        return stop.family() == Family.PRINCIPAL || stop.family() == Family.MIXTURE;
    }

    private void reeds() {
        if (verse.mode() != Mode.CONGREGATION || speaking.isSoloed()) {
            return;
        }
        boolean isChorus = SpeakingStop.isChorus(speaking.manuals());
        for (SpeakingStop voice : speaking.manuals()) {
            boolean isOboe = voice.isOboe() && speaking.boxOf(voice.index()).isPresent();
            say(
                    voice.is(Family.SOLO_REED) && !voice.isVoxHumana() && isChorus && !isOboe,
                    Fault.SOLO_REED_IN_CHORUS,
                    voice.label() + " is left in the chorus.");
            boolean isShut = speaking.boxOf(voice.index())
                    .filter(box -> verse.registration().boxes().get(box) == BoxPosition.CLOSED)
                    .isPresent();
            say(
                    voice.is(Family.CHORUS_REED) && isShut && verse.isSung(),
                    Fault.BOX_SHUT_ON_REEDS,
                    voice.label() + " is drawn behind closed shutters.");
        }
    }
}
