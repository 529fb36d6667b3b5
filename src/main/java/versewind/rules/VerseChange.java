package versewind.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import versewind.plan.Verse;

/**
 * The change from the verse before, where both have stops drawn, and the time that it needs. Only what is heard has to
 * be changed in the breath: other stops may stay, or were changed a verse before.
 */
final class VerseChange {

    private final InHymn hymn;
    private final int index;
    private final Verse before;
    private final Verse verse;
    private final StopChanges changes;
    private final double breathS;

    VerseChange(InHymn hymn, int index) {
        this.hymn = hymn;
        this.index = index;
        before = hymn.verse(index - 1);
        verse = hymn.verse(index);
        changes = StopChanges.between(before.registration(), verse.registration())
                .heard(hymn.played(index - 1), hymn.played(index));
        breathS = hymn.breathBeats() * hymn.beatS();
    }

    /** A change that needs longer than the breath. */
    Optional<Breach> breach() {
        double neededS = isSet() ? neededByPistonS() : neededByHandS();
        if (neededS <= breathS) {
            return Optional.empty();
        }
        int count = isSet() ? changes.boxes().size() : changes.count();
        return Optional.of(new Breach(
                List.of(
                        Figure.count("movements", count),
                        new Figure("needed", neededS, Figure.Unit.SECONDS),
                        new Figure("breath", breathS, Figure.Unit.SECONDS)),
                sentence(count, neededS),
                this::onPiston));
    }

    private boolean isSet() {
        return hymn.organ().pistons().set(verse.piston());
    }

    /** Time in s by hand and foot. */
    private double neededByHandS() {
        int boxes = changes.boxes().size();
        return BetweenVerses.neededS(changes.count() - boxes, boxes, moveS());
    }

    private double neededByPistonS() {
        return BetweenVerses.neededS(0, changes.boxes().size(), moveS());
    }

    private double moveS() {
        return hymn.plan().heading().moveS();
    }

    private String sentence(int count, double neededS) {
        return String.format(
                Locale.ROOT,
                "%d changes from %s need %.1f s; the breath is %.1f s.",
                count,
                before.label(),
                neededS,
                breathS);
    }

    private Optional<Mend> onPiston() {
        return !isSet() && neededByPistonS() <= breathS
                ? PistonChoice.forVerse(hymn.plan(), hymn.organ(), verse)
                        .map(piston -> hymn.onPiston(piston, index, verse))
                : Optional.empty();
    }
}
