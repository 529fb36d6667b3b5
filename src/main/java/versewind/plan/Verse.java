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
 * @param label what stands before it on the sheet: "V1", "Last"
 * @param mode whom the organ accompanies
 * @param singing how strongly they sing
 * @param people number of people expected for this verse, where it is not the service's number: the number present for
 *     the congregation, the number of voices for a small choir
 * @param hands how hands and feet are laid out
 * @param registration what is drawn
 * @param piston the piston that sets it, "G3"; blank for none
 * @param note a note for the desk; may be blank
 * @param silenced findings that are not to be shown again, one a rule at most
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
        List<Silenced> silenced) {

    /** The most people that a service or a verse can have. */
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

    /** A verse of which nothing is silenced. */
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
        this(kind, label, mode, singing, people, hands, registration, piston, note, List.of());
    }

    public Verse withKind(VerseKind other) {
        return new Verse(other, label, mode, singing, people, hands, registration, piston, note, silenced);
    }

    public Verse withLabel(String other) {
        return new Verse(kind, other, mode, singing, people, hands, registration, piston, note, silenced);
    }

    public Verse withMode(Mode other) {
        return new Verse(kind, label, other, singing, people, hands, registration, piston, note, silenced);
    }

    public Verse withSinging(Singing other) {
        return new Verse(kind, label, mode, other, people, hands, registration, piston, note, silenced);
    }

    public Verse withPeople(OptionalInt other) {
        return new Verse(kind, label, mode, singing, other, hands, registration, piston, note, silenced);
    }

    public Verse withHands(HandsAndFeet other) {
        return new Verse(kind, label, mode, singing, people, other, registration, piston, note, silenced);
    }

    public Verse withRegistration(Registration other) {
        return new Verse(kind, label, mode, singing, people, hands, other, piston, note, silenced);
    }

    public Verse withPiston(String other) {
        return new Verse(kind, label, mode, singing, people, hands, registration, other, note, silenced);
    }

    public Verse withNote(String other) {
        return new Verse(kind, label, mode, singing, people, hands, registration, piston, other, silenced);
    }

    /** With a rule silenced; its note replaces one that it had. */
    public Verse silencing(Silenced other) {
        List<Silenced> more = new ArrayList<>(hearing(other.rule()).silenced);
        more.add(other);
        return withSilenced(more);
    }

    /** With a rule heard again. */
    public Verse hearing(String rule) {
        return withSilenced(
                silenced.stream().filter(each -> !each.rule().equals(rule)).toList());
    }

    private Verse withSilenced(List<Silenced> other) {
        return new Verse(kind, label, mode, singing, people, hands, registration, piston, note, other);
    }

    /** Why a rule is silenced here; empty where it is not. */
    public Optional<String> silence(String rule) {
        return silenced.stream()
                .filter(each -> each.rule().equals(rule))
                .map(Silenced::note)
                .findFirst();
    }

    /** Whether anybody sings: neither in an introduction or an interlude, nor over a soloed melody. */
    public boolean isSung() {
        return !kind.isOrganAlone() && mode != Mode.MELODY_SOLOED;
    }
}
