package versewind.agreement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import versewind.agreement.Fault.Remark;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.organ.Tremulant;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.Singing;
import versewind.plan.Verse;

/**
 * A teacher of hymn playing who looks at one verse and says what nobody does. Knows the organ and the plan, and none of
 * the program's rules or searches. Common practice, no source.
 */
final class Teacher {

    private final Instrument organ;
    private final Plan plan;
    private final Verse verse;
    private final Speaking speaking;
    private final List<Remark> remarks = new ArrayList<>();

    Teacher(Instrument organ, Plan plan, Verse verse) {
        this.organ = organ;
        this.plan = plan;
        this.verse = verse;
        speaking = new Speaking(organ, verse.registration(), verse.hands());
    }

    /** What nobody does, of one verse with something drawn. */
    static List<Remark> hard(Instrument organ, Plan plan, Verse verse) {
        Teacher teacher = new Teacher(organ, plan, verse);
        teacher.hardRows();
        return List.copyOf(teacher.remarks);
    }

    /** What a plan fixed and a proposal changed. */
    static List<Remark> fixed(Plan plan, Verse asked, Verse proposed) {
        List<Remark> remarks = new ArrayList<>();
        boolean isKept = !asked.locks().keepsHands() || asked.hands().equals(proposed.hands());
        if (asked.locks().keepsBoxes()
                && !asked.registration().boxes().equals(proposed.registration().boxes())) {
            remarks.add(Fault.FIXED_PLAYING_CHANGED.says("The plan keeps the boxes, and the proposal moves one."));
        }
        if (!isKept) {
            remarks.add(Fault.FIXED_PLAYING_CHANGED.says("The plan says "
                    + asked.hands().layout().word() + ", and the proposal wants "
                    + proposed.hands().layout().word() + "."));
        }
        if (plan.heading().player() == Player.MANUALS_ONLY
                && proposed.hands().layout().usesPedal()) {
            remarks.add(
                    Fault.FIXED_PLAYING_CHANGED.says("The player has no use for pedals, and the feet are asked for."));
        }
        boolean isOtherVerse = proposed.kind() != asked.kind()
                || proposed.mood() != asked.mood()
                || !proposed.sung().equals(asked.sung())
                || !proposed.locks().equals(asked.locks());
        if (isOtherVerse) {
            remarks.add(Fault.FIXED_PLAYING_CHANGED.says("Another verse is proposed than the plan has."));
        }
        boolean isLocked = proposed.registration()
                        .stops()
                        .minus(asked.locks().never())
                        .equals(proposed.registration().stops())
                && asked.locks().always().minus(proposed.registration().stops()).isEmpty();
        if (!isLocked) {
            remarks.add(Fault.FIXED_PLAYING_CHANGED.says("A locked stop is not as the plan has it."));
        }
        return remarks;
    }

    private void say(boolean isBroken, Fault fault, String sentence) {
        if (isBroken) {
            remarks.add(fault.says(sentence));
        }
    }

    private void hardRows() {
        hand("the right hand", speaking.right(), speaking.isSoloed());
        if (!speaking.left().equals(speaking.right()) || speaking.isSoloed()) {
            hand("the left hand", speaking.left(), false);
        }
        if (speaking.hasFeet()) {
            feet();
        }
        celestes();
        tremulants();
        couplers();
        thirtyTwo();
        tuba();
        boxes();
        say(
                speaking.isSoloed() && isOfPeople(),
                Fault.MELODY_UNDER_PEOPLE,
                "The melody is soloed while the people sing.");
    }

    /** The people sing. */
    private boolean isOfPeople() {
        return verse.mode() == Mode.CONGREGATION && verse.isSung();
    }

    /** A festal verse: its mood, the people's full voice, or strong singing on a feast. */
    static boolean isFestal(Plan plan, Verse verse) {
        Occasion occasion = plan.heading().occasion();
        boolean isFeast = occasion == Occasion.FESTAL || occasion == Occasion.JOYFUL;
        return verse.mood() != Mood.GENTLE
                && (verse.mood() == Mood.FESTAL
                        || verse.singing() == Singing.FULL_VOICE
                        || (isFeast && verse.singing() == Singing.STRONG));
    }

    private void hand(String who, List<SpeakingStop> voices, boolean isMelody) {
        if (voices.isEmpty()) {
            remarks.add(Fault.EMPTY_KEYS.says("Nothing speaks under " + who + "."));
            return;
        }
        boolean hasEight = voices.stream().anyMatch(SpeakingStop::hasEight);
        say(!hasEight, Fault.NO_FOUNDATION, "Nothing of 8 ft speaks under " + who + ".");
        lone(who, voices);
        if (isMelody) {
            return;
        }
        boolean hasFour = SpeakingStop.has(voices, 4);
        boolean mayHaveFour = speaking.mayBeUnder(voices, Teacher::isFlueOfFour);
        for (SpeakingStop voice : voices) {
            say(
                    voice.isFlue() && voice.feet() <= 2 && !hasFour && mayHaveFour,
                    Fault.TWO_WITHOUT_FOUR,
                    voice.label() + " stands under " + who + " without a 4 ft.");
            say(
                    voice.isTwelfth() && !(hasFour && SpeakingStop.has(voices, 2)),
                    Fault.BARE_TWELFTH,
                    voice.label() + " stands under " + who + " without 4 and 2 ft.");
            say(
                    voice.isFlue()
                            && voice.feet() == 16
                            && voice.octave() == 0
                            && !(SpeakingStop.has(voices, 8) && hasFour),
                    Fault.BARE_SIXTEEN,
                    voice.label() + " stands under " + who + " without 8 and 4 ft.");
            say(
                    voice.isReed() && voice.feet() >= 16 && voice.octave() == 0 && !SpeakingStop.hasReedEight(voices),
                    Fault.LONE_SIXTEEN_REED,
                    voice.label() + " stands under " + who + " without a reed of 8 ft.");
            say(
                    voice.isReed() && voice.feet() == 4 && voice.octave() == 0 && !SpeakingStop.hasReedEight(voices),
                    Fault.LONE_CLARION,
                    voice.label() + " stands under " + who + " without a reed of 8 ft.");
        }
    }

    /** Ranks that want others beneath them under every hand. */
    private void lone(String who, List<SpeakingStop> voices) {
        for (SpeakingStop voice : voices) {
            say(
                    (voice.is(Family.MUTATION) || (voice.is(Family.CORNET) && !voice.isWholeCornet()))
                            && !SpeakingStop.has(voices, 8),
                    Fault.LONE_RANK,
                    voice.label() + " has no 8 ft flue beneath it under " + who + ".");
            say(
                    voice.is(Family.MIXTURE) && !(SpeakingStop.has(voices, 8) && SpeakingStop.has(voices, 4)),
                    Fault.BARE_MIXTURE,
                    voice.label() + " has not both 8 and 4 ft flues beneath it under " + who + ".");
        }
    }

    private void feet() {
        List<SpeakingStop> voices = speaking.feet();
        if (voices.isEmpty()) {
            remarks.add(Fault.EMPTY_KEYS.says("Nothing speaks under the feet."));
            return;
        }
        say(
                voices.stream().noneMatch(voice -> voice.hasEight() || voice.feet() == 16),
                Fault.NO_FOUNDATION,
                "Nothing of 16 or 8 ft speaks under the feet.");
        List<SpeakingStop> own = voices.stream()
                .filter(voice -> organ.divisions().get(voice.division()).isPedal())
                .toList();
        for (SpeakingStop voice : own) {
            say(
                    voice.is(Family.MIXTURE) && !(SpeakingStop.has(voices, 8) && SpeakingStop.has(voices, 4)),
                    Fault.BARE_MIXTURE,
                    voice.label() + " has not both 8 and 4 ft beneath it under the feet.");
            say(
                    voice.is(Family.CHORUS_REED)
                            && voice.feet() == 4
                            && voices.stream().noneMatch(other -> other.isReed() && other.feet() >= 8),
                    Fault.LONE_CLARION,
                    voice.label() + " stands under the feet without a reed of 8 ft.");
        }
        Optional<SpeakingStop> reed =
                own.stream().filter(voice -> voice.is(Family.CHORUS_REED)).findFirst();
        boolean organHasOne = organ.manualDivisions().stream()
                .flatMap(manual -> organ.divisions().get(manual).stops().stream())
                .anyMatch(stop -> stop.family() == Family.CHORUS_REED
                        && stop.footage().filter(feet -> feet.feet() == 8).isPresent());
        say(
                reed.isPresent() && organHasOne && !SpeakingStop.hasReedEight(speaking.manuals()),
                Fault.PEDAL_REED_FIRST,
                reed.map(SpeakingStop::label).orElse("") + " speaks in the pedal before a reed of the manuals.");
    }

    private void celestes() {
        for (SpeakingStop voice : speaking.manuals()) {
            boolean isCeleste = voice.is(Family.CELESTE);
            if (!isCeleste && !voice.isVoxHumana()) {
                continue;
            }
            Fault fault = isCeleste ? Fault.CELESTE : Fault.VOX_HUMANA;
            say(isOfPeople(), fault, voice.label() + " wavers while the people sing.");
            say(
                    !isOfPeople() && SpeakingStop.isChorus(speaking.of(voice.division())),
                    fault,
                    voice.label() + " is in a chorus.");
            say(
                    isCeleste
                            && voice.stop().ranks() == 1
                            && speaking.of(voice.division()).stream()
                                    .noneMatch(other -> other.isFlue(8) && !other.is(Family.CELESTE)),
                    Fault.CELESTE_WITHOUT_PARTNER,
                    voice.label() + " has no partner.");
        }
    }

    private void tremulants() {
        for (int index : verse.registration().tremulants().stream().toArray()) {
            Tremulant tremulant = organ.tremulants().get(index);
            List<SpeakingStop> shaken =
                    speaking.of(organ.division(tremulant.division()).orElseThrow());
            if (shaken.isEmpty()) {
                continue;
            }
            boolean isFull =
                    shaken.stream().anyMatch(voice -> voice.is(Family.MIXTURE) || voice.is(Family.CHORUS_REED));
            say(
                    isOfPeople() || isFull || SpeakingStop.isChorus(shaken),
                    Fault.TREMULANT,
                    tremulant.name()
                            + (isOfPeople()
                                    ? " shakes while the people sing."
                                    : " shakes a chorus, mixtures or reeds."));
        }
    }

    /** Octave couplers that somebody plays. */
    private void couplers() {
        Set<String> said = new HashSet<>();
        for (Coupler coupler : speaking.actingCouplers()) {
            boolean isOctave = coupler.kind() == Coupler.Kind.OCTAVE;
            boolean isSub = coupler.kind() == Coupler.Kind.SUB_OCTAVE;
            if ((!isOctave && !isSub) || !said.add(coupler.name())) {
                continue;
            }
            List<SpeakingStop> voices = drawnIn(organ.division(coupler.source()).orElseThrow());
            boolean hasEight = voices.stream().anyMatch(SpeakingStop::hasEight);
            boolean isThrough = voices.stream().anyMatch(voice -> voice.isReed(16) || voice.isReed(4));
            if (voices.isEmpty()) {
                continue;
            }
            Fault fault = isOctave ? Fault.OCTAVE_COUPLER : Fault.SUB_OCTAVE_COUPLER;
            say(!hasEight, fault, coupler.name() + " is drawn with no 8 ft.");
            say(isThrough, fault, coupler.name() + " goes through a reed of 16 or 4 ft.");
            say(
                    isOctave && voices.stream().anyMatch(voice -> voice.is(Family.MIXTURE)),
                    fault,
                    coupler.name() + " goes through a mixture.");
            say(isSub && !isFestal(plan, verse), fault, coupler.name() + " is drawn in a verse that is not festal.");
        }
    }

    private List<SpeakingStop> drawnIn(int division) {
        return verse.registration().stops().stream()
                .filter(stop -> organ.stops().get(stop).division() == division)
                .mapToObj(stop ->
                        new SpeakingStop(stop, division, organ.stops().get(stop).stop(), 0))
                .toList();
    }

    private void thirtyTwo() {
        for (SpeakingStop voice : speaking.feet()) {
            if (voice.feet() < 32 || voice.octave() != 0) {
                continue;
            }
            say(
                    verse.mode() == Mode.SOLO_VOICE || verse.mode() == Mode.SMALL_CHOIR,
                    Fault.THIRTY_TWO_WITH_FEW,
                    voice.label() + " lies under a " + verse.mode().word() + ".");
            say(
                    speaking.feet().stream().noneMatch(other -> other.feet() == 16 && other.isReed() == voice.isReed()),
                    Fault.THIRTY_TWO_BEFORE_SIXTEEN,
                    voice.label() + " speaks before a 16 ft of its kind.");
        }
    }

    private void tuba() {
        for (SpeakingStop voice : speaking.manuals()) {
            if (!voice.isTuba()) {
                continue;
            }
            boolean isAlone = speaking.isSoloed() && !verse.isSung();
            say(
                    verse.mood() == Mood.GENTLE || verse.singing() == Singing.GENTLE,
                    Fault.TUBA,
                    voice.label() + " speaks in a gentle verse.");
            say(
                    !isAlone && !isFestal(plan, verse),
                    Fault.TUBA,
                    voice.label() + " is in the chorus of a verse that is not festal.");
            say(
                    !isAlone
                            && speaking.manuals().stream()
                                    .noneMatch(other ->
                                            other.isReed(8) && !other.isTuba() && other.is(Family.CHORUS_REED)),
                    Fault.TUBA,
                    voice.label() + " speaks before the chorus reeds.");
        }
    }

    /**
     * A box that is shut on ranks drawn elsewhere. Nobody minds a soft pedal stop that is borrowed out of the very box
     * in which all of the hands' sound stands.
     */
    private void boxes() {
        for (SpeakingStop voice : speaking.all()) {
            Optional<Integer> box = speaking.boxOf(voice.index());
            if (box.isEmpty()
                    || box.get() == voice.division()
                    || verse.registration().boxes().get(box.get()) != BoxPosition.CLOSED) {
                continue;
            }
            boolean isOfOneBox = organ.divisions().get(voice.division()).isPedal()
                    && !voice.isReed()
                    && speaking.manuals().stream()
                            .allMatch(other -> speaking.boxOf(other.index()).equals(box));
            say(
                    !isOfOneBox,
                    Fault.BOX_SHUT_ON_BORROWED,
                    voice.label() + " of the "
                            + organ.divisions().get(voice.division()).name()
                            + " speaks through the closed box of the "
                            + organ.divisions().get(box.get()).name() + ".");
        }
    }

    private static boolean isFlueOfFour(Stop stop) {
        return switch (stop.family()) {
            case PRINCIPAL, FLUTE, STRING ->
                stop.footage().filter(feet -> feet.feet() == 4).isPresent();
            case CELESTE, MUTATION, MIXTURE, CORNET, CHORUS_REED, SOLO_REED -> false;
        };
    }
}
