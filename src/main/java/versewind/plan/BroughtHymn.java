package versewind.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import versewind.organ.Counterparts;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;

/**
 * A hymn planned for one organ, transferred to another with its registrations.
 *
 * @param hymn the hymn for the other organ
 * @param replacements what is replaced or missing there in any verse, each once
 */
public record BroughtHymn(Hymn hymn, List<Counterparts.Replacement> replacements) {

    public BroughtHymn {
        replacements = List.copyOf(replacements);
    }

    /**
     * Transfers a hymn. On the same organ registrations stay as they are. On another organ pistons are left out, since
     * they are set differently there; without a pedal everything is played on the manuals.
     */
    public static BroughtHymn of(Hymn hymn, Instrument from, Instrument to) {
        if (from.equals(to)) {
            return new BroughtHymn(hymn.unanswered(), List.of());
        }
        Counterparts counterparts = new Counterparts(from, to);
        Set<Counterparts.Replacement> replacements = new LinkedHashSet<>();
        List<Verse> verses = new ArrayList<>();
        for (Verse verse : hymn.verses()) {
            Counterparts.Brought brought = counterparts.bring(verse.registration());
            replacements.addAll(brought.replacements());
            if (!verse.piston().isBlank()) {
                replacements.add(new Counterparts.Replacement("piston " + verse.piston(), Optional.empty()));
            }
            verses.add(verse.withRegistration(brought.registration())
                    .withHands(hands(verse.hands(), counterparts, to))
                    .withPiston("")
                    .withLocks(locks(verse.locks(), counterparts))
                    .withAnswer(Optional.empty()));
        }
        return new BroughtHymn(hymn.withVerses(verses), List.copyOf(replacements));
    }

    /** The locks on the equivalents of the locked stops; "always" takes precedence over "never". */
    private static Locks locks(Locks were, Counterparts counterparts) {
        IndexSet always = stops(were.always(), counterparts);
        return new Locks(always, stops(were.never(), counterparts).minus(always), were.kept());
    }

    private static IndexSet stops(IndexSet were, Counterparts counterparts) {
        return IndexSet.of(were.stream()
                .mapToObj(counterparts::stop)
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt));
    }

    private static HandsAndFeet hands(HandsAndFeet was, Counterparts counterparts, Instrument to) {
        int right = counterparts.division(was.right()).orElse(to.mainDivision());
        int left = counterparts.division(was.left()).orElse(to.mainDivision());
        OptionalInt pedal = to.pedalDivision();
        boolean isWithoutFeet = was.layout().usesPedal() && pedal.isEmpty();
        return new HandsAndFeet(isWithoutFeet ? was.layout().withoutPedal() : was.layout(), right, left);
    }
}
