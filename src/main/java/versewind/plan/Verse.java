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
 * @param sung who sings, and how
 * @param played how hands and feet are laid out, and what is drawn
 * @param piston the piston that sets it, "G3"; blank for none
 * @param note a note for the desk; may be blank
 * @param mood the character it should have
 * @param locks what proposals must keep
 * @param silenced findings that are ignored here, at most one a rule
 * @param answer feedback after the service, if there is any
 */
public record Verse(
        VerseKind kind,
        String label,
        Sung sung,
        Played played,
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
                new Sung(mode, singing, people),
                new Played(hands, registration),
                piston,
                note,
                Mood.PLAIN,
                Locks.NONE,
                List.of(),
                Optional.empty());
    }

    /** Whom the organ accompanies. */
    public Mode mode() {
        return sung.mode();
    }

    /** How strongly they sing. */
    public Singing singing() {
        return sung.singing();
    }

    /** Number of people for this verse, if not that of the service. */
    public OptionalInt people() {
        return sung.people();
    }

    /** The layout of hands and feet. */
    public HandsAndFeet hands() {
        return played.hands();
    }

    /** The stops, couplers, tremulants and box positions. */
    public Registration registration() {
        return played.registration();
    }

    public Verse withKind(VerseKind other) {
        return new Verse(other, label, sung, played, piston, note, mood, locks, silenced, answer);
    }

    public Verse withLabel(String other) {
        return new Verse(kind, other, sung, played, piston, note, mood, locks, silenced, answer);
    }

    public Verse withMode(Mode other) {
        return with(sung.with(other), played);
    }

    public Verse withSinging(Singing other) {
        return with(sung.with(other), played);
    }

    public Verse withPeople(OptionalInt other) {
        return with(sung.with(other), played);
    }

    public Verse withHands(HandsAndFeet other) {
        return with(sung, played.with(other));
    }

    public Verse withRegistration(Registration other) {
        return with(sung, played.with(other));
    }

    /** Feedback belongs to what was played and sung; when any of that changes, it is dropped. */
    private Verse with(Sung otherSung, Played otherPlayed) {
        boolean isSame = otherSung.equals(sung) && otherPlayed.equals(played);
        return new Verse(
                kind,
                label,
                otherSung,
                otherPlayed,
                piston,
                note,
                mood,
                locks,
                silenced,
                isSame ? answer : Optional.empty());
    }

    public Verse withPiston(String other) {
        return new Verse(kind, label, sung, played, other, note, mood, locks, silenced, answer);
    }

    public Verse withNote(String other) {
        return new Verse(kind, label, sung, played, piston, other, mood, locks, silenced, answer);
    }

    public Verse withMood(Mood other) {
        return new Verse(kind, label, sung, played, piston, note, other, locks, silenced, answer);
    }

    public Verse withLocks(Locks other) {
        return new Verse(kind, label, sung, played, piston, note, mood, other, silenced, answer);
    }

    public Verse withAnswer(Optional<Feedback> other) {
        return new Verse(kind, label, sung, played, piston, note, mood, locks, silenced, other);
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
        return new Verse(kind, label, sung, played, piston, note, mood, locks, other, answer);
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
        return !kind.isOrganAlone() && mode() != Mode.MELODY_SOLOED;
    }
}
