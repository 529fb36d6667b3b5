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
 * @param isOptional whether it may be left out, as when a procession is short
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
        boolean isOptional,
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
        if (silenced.size() > 1
                && silenced.stream().map(Silenced::rule).distinct().count() < silenced.size()) {
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
                false,
                new Sung(SungBy.of(mode), singing, people, Share.USUAL),
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
        return sung.by().mode();
    }

    /** Who sings. */
    public SungBy sungBy() {
        return sung.by();
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
        return new Verse(other, label, isOptional, sung, played, piston, note, mood, locks, silenced, answer);
    }

    public Verse withLabel(String other) {
        return new Verse(kind, other, isOptional, sung, played, piston, note, mood, locks, silenced, answer);
    }

    /** With a verse that may be left out, or not. */
    public Verse withOptional(boolean other) {
        return new Verse(kind, label, other, sung, played, piston, note, mood, locks, silenced, answer);
    }

    public Verse withMode(Mode other) {
        return withSungBy(SungBy.of(other));
    }

    public Verse withSungBy(SungBy other) {
        return with(sung.with(other), played);
    }

    /** With how many in ten of those present sing, where that is not as in the service. */
    public Verse withShare(OptionalInt inTen) {
        return with(sung.with(new Share(inTen, sung.share().ofService())), played);
    }

    /** True if it is played and sung as a service has it. */
    boolean isIn(ServiceHeading service) {
        return sung.share().ofService() == service.inTen() && service.player().plays(hands().layout());
    }

    /** Played by the player of a service, and sung by as many as sing there; for other singers feedback is kept. */
    Verse in(ServiceHeading service) {
        Verse verse = withHands(service.player().playing(hands()));
        Sung there = sung.with(new Share(sung.share().ofVerse(), service.inTen()));
        return new Verse(
                kind, label, isOptional, there, verse.played, piston, note, mood, locks, silenced, verse.answer);
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
        boolean isKept = answer.isPresent() && otherSung.equals(sung) && otherPlayed.equals(played);
        return new Verse(
                kind,
                label,
                isOptional,
                otherSung,
                otherPlayed,
                piston,
                note,
                mood,
                locks,
                silenced,
                isKept ? answer : Optional.empty());
    }

    public Verse withPiston(String other) {
        return new Verse(kind, label, isOptional, sung, played, other, note, mood, locks, silenced, answer);
    }

    public Verse withNote(String other) {
        return new Verse(kind, label, isOptional, sung, played, piston, other, mood, locks, silenced, answer);
    }

    public Verse withMood(Mood other) {
        return new Verse(kind, label, isOptional, sung, played, piston, note, other, locks, silenced, answer);
    }

    public Verse withLocks(Locks other) {
        return new Verse(kind, label, isOptional, sung, played, piston, note, mood, other, silenced, answer);
    }

    public Verse withAnswer(Optional<Feedback> other) {
        return new Verse(kind, label, isOptional, sung, played, piston, note, mood, locks, silenced, other);
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
        return new Verse(kind, label, isOptional, sung, played, piston, note, mood, locks, other, answer);
    }

    /** The reason why a rule is ignored here; empty if it is not. */
    public Optional<String> silence(String rule) {
        return silenced.stream()
                .filter(each -> each.rule().equals(rule))
                .map(Silenced::note)
                .findFirst();
    }

    /** True if anybody sings to the organ: not in an introduction or interlude, nor with a soloed melody. */
    public boolean isSung() {
        return isPlayed() && !kind.isOrganAlone() && mode() != Mode.MELODY_SOLOED;
    }

    /** True if the organ plays. */
    public boolean isPlayed() {
        return sungBy().isPlayed();
    }
}
