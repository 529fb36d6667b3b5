package versewind.plan;

import java.util.OptionalInt;
import versewind.organ.Registration;

/**
 * One verse of a hymn and what is drawn for it.
 *
 * @param kind what part of the hymn it is
 * @param label what stands before it on the sheet: "V1", "Last"
 * @param mode whom the organ accompanies
 * @param singing how strongly they sing
 * @param people number of people expected for this verse, where it is not the service's number: the number present for
 *     the congregation, the number of voices for a small choir
 * @param hands how hands and feet are laid out
 * @param registration what is drawn
 * @param piston the piston that sets it, "G3"; blank for none
 * @param note a note for the desk; may be blank
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
        String note) {

    /** The most people that a service or a verse can have. */
    public static final int MOST_PEOPLE = 50_000;

    public Verse {
        if (people.isPresent() && (people.getAsInt() < 1 || people.getAsInt() > MOST_PEOPLE)) {
            throw new IllegalArgumentException("the people of a verse are 1 to 50000");
        }
    }

    public Verse withKind(VerseKind other) {
        return new Verse(other, label, mode, singing, people, hands, registration, piston, note);
    }

    public Verse withLabel(String other) {
        return new Verse(kind, other, mode, singing, people, hands, registration, piston, note);
    }

    public Verse withMode(Mode other) {
        return new Verse(kind, label, other, singing, people, hands, registration, piston, note);
    }

    public Verse withSinging(Singing other) {
        return new Verse(kind, label, mode, other, people, hands, registration, piston, note);
    }

    public Verse withPeople(OptionalInt other) {
        return new Verse(kind, label, mode, singing, other, hands, registration, piston, note);
    }

    public Verse withHands(HandsAndFeet other) {
        return new Verse(kind, label, mode, singing, people, other, registration, piston, note);
    }

    public Verse withRegistration(Registration other) {
        return new Verse(kind, label, mode, singing, people, hands, other, piston, note);
    }

    public Verse withPiston(String other) {
        return new Verse(kind, label, mode, singing, people, hands, registration, other, note);
    }

    public Verse withNote(String other) {
        return new Verse(kind, label, mode, singing, people, hands, registration, piston, other);
    }

    /** Whether anybody sings: neither in an introduction or an interlude, nor over a soloed melody. */
    public boolean isSung() {
        return !kind.isOrganAlone() && mode != Mode.MELODY_SOLOED;
    }
}
