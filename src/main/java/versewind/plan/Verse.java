package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Registration;

/**
 * One verse of a hymn and what is drawn for it.
 *
 * @param kind what part of the hymn it is
 * @param label its label on the sheet: "V1", "Last"
 * @param mode whom the organ accompanies
 * @param singing how strongly they sing
 * @param people number of people for this verse, if not that of the service: those present for a congregation, the
 *     singers of a small choir
 * @param hands the layout of hands and feet
 * @param registration the stops, couplers, tremulants and box positions
 * @param piston the piston that sets it, "G3"; blank for none
 * @param note a note for the desk; may be blank
 * @param mood the character it should have
 * @param locks stops that are always or never drawn
 * @param silenced findings that are ignored here, at most one a rule
 * @param answer feedback after the service, if there is any
 */
public record Verse(
        VerseKind kind,
        String label,
        Mode mode,
        Singing singing,
        OptionalInt people,
        HandsAndFeet hands,
        Registration registration,
        String piston,
        String note,
        Mood mood,
        Locks locks,
        List<Silenced> silenced,
        Optional<Feedback> answer) {

    /** The most people in a service or a verse. */
    public static final int MOST_PEOPLE = 50_000;

    public Verse {
        silenced = List.copyOf(silenced);
        if (people.isPresent() && (people.getAsInt() < 1 || people.getAsInt() > MOST_PEOPLE)) {
            throw new IllegalArgumentException("the people of a verse are 1 to 50000");
        }
        if (silenced.stream().map(Silenced::rule).distinct().count() < silenced.size()) {
            throw new IllegalArgumentException("a rule is silenced once");
        }
    }

    /** A plain verse without locks, ignored findings or feedback. */
    public Verse(
            VerseKind kind,
            String label,
            Mode mode,
            Singing singing,
            OptionalInt people,
            HandsAndFeet hands,
            Registration registration,
            String piston,
            String note) {
        this(
                kind,
                label,
                mode,
                singing,
                people,
                hands,
                registration,
                piston,
                note,
                Mood.PLAIN,
                Locks.NONE,
                List.of(),
                Optional.empty());
    }

    public Verse withKind(VerseKind other) {
        return new Verse(
                other, label, mode, singing, people, hands, registration, piston, note, mood, locks, silenced, answer);
    }

    public Verse withLabel(String other) {
        return new Verse(
                kind, other, mode, singing, people, hands, registration, piston, note, mood, locks, silenced, answer);
    }

    public Verse withMode(Mode other) {
        return played(other, singing, people, hands, registration);
    }

    public Verse withSinging(Singing other) {
        return played(mode, other, people, hands, registration);
    }

    public Verse withPeople(OptionalInt other) {
        return played(mode, singing, other, hands, registration);
    }

    public Verse withHands(HandsAndFeet other) {
        return played(mode, singing, people, other, registration);
    }

    public Verse withRegistration(Registration other) {
        return played(mode, singing, people, hands, other);
    }

    public Verse withPiston(String other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, other, note, mood, locks, silenced, answer);
    }

    public Verse withNote(String other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, piston, other, mood, locks, silenced, answer);
    }

    public Verse withMood(Mood other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, piston, note, other, locks, silenced, answer);
    }

    public Verse withLocks(Locks other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, piston, note, mood, other, silenced, answer);
    }

    public Verse withAnswer(Optional<Feedback> other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, piston, note, mood, locks, silenced, other);
    }

    /** Feedback belongs to what was played and sung; when any of that changes, it is dropped. */
    private Verse played(
            Mode otherMode,
            Singing otherSinging,
            OptionalInt otherPeople,
            HandsAndFeet otherHands,
            Registration otherRegistration) {
        boolean isSame = otherMode == mode
                && otherSinging == singing
                && otherPeople.equals(people)
                && otherHands.equals(hands)
                && otherRegistration.equals(registration);
        return new Verse(
                kind,
                label,
                otherMode,
                otherSinging,
                otherPeople,
                otherHands,
                otherRegistration,
                piston,
                note,
                mood,
                locks,
                silenced,
                isSame ? answer : Optional.empty());
    }

    /** With a rule ignored; replaces an earlier note. */
    public Verse silencing(Silenced other) {
        List<Silenced> more = new ArrayList<>(hearing(other.rule()).silenced);
        more.add(other);
        return withSilenced(more);
    }

    /** With a rule no longer ignored. */
    public Verse hearing(String rule) {
        return withSilenced(
                silenced.stream().filter(each -> !each.rule().equals(rule)).toList());
    }

    private Verse withSilenced(List<Silenced> other) {
        return new Verse(
                kind, label, mode, singing, people, hands, registration, piston, note, mood, locks, other, answer);
    }

    /** The reason why a rule is ignored here; empty if it is not. */
    public Optional<String> silence(String rule) {
        return silenced.stream()
                .filter(each -> each.rule().equals(rule))
                .map(Silenced::note)
                .findFirst();
    }

    /** True if anybody sings: not in an introduction or interlude, nor with a soloed melody. */
    public boolean isSung() {
        return !kind.isOrganAlone() && mode != Mode.MELODY_SOLOED;
    }
}
