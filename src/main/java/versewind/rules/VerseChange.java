package versewind.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Pressed;
import versewind.plan.Verse;

/**
 * The change from a verse before, where both have stops drawn, and the time that it needs. Only what is heard has to
 * be changed in the breath: other stops may stay, or were changed a verse before.
 */
final class VerseChange {

    private final InHymn hymn;
    private final int from;
    private final int index;
    private final Verse before;
    private final Verse verse;
    private final StopChanges changes;
    private final double breathS;

    VerseChange(InHymn hymn, int from, int index) {
        this.hymn = hymn;
        this.from = from;
        this.index = index;
        before = hymn.verse(from);
        verse = hymn.verse(index);
        changes = StopChanges.between(before.registration(), verse.registration())
                .heard(hymn.played(from), hymn.played(index));
        breathS = hymn.breathBeats() * hymn.beatS();
    }

    /** A change that needs longer than the breath. */
    Optional<Breach> breach() {
        Pressed pressed = hymn.pressed(verse);
        double neededS = neededS(pressed);
        if (neededS <= breathS) {
            return Optional.empty();
        }
        int count = changes.beyond(pressed.reach(hymn.organ())).count();
        return Optional.of(new Breach(
                List.of(
                        Figure.count("movements", count),
                        new Figure("needed", neededS, Figure.Unit.SECONDS),
                        new Figure("breath", breathS, Figure.Unit.SECONDS)),
                sentence(count, neededS),
                () -> pressed.sets() ? Stream.empty() : onPiston().stream()));
    }

    /** Time in s by hand and foot, where pistons are pressed: each more than the first is a movement of the hand. */
    private double neededS(Pressed pressed) {
        StopChanges byHand = changes.beyond(pressed.reach(hymn.organ()));
        int boxes = byHand.boxes().size();
        int presses = Math.max(0, pressed.pistons().size() - 1);
        return BetweenVerses.neededS(byHand.count() - boxes + presses, boxes, moveS());
    }

    private double moveS() {
        return hymn.plan().heading().moveS();
    }

    private String sentence(int count, double neededS) {
        return String.format(
                Locale.ROOT,
                "%s%d %s from %s %s %.1f s with both hands; the breath is %.1f s.",
                leftOut(),
                count,
                count == 1 ? "change" : "changes",
                before.label(),
                count == 1 ? "needs" : "need",
                neededS,
                breathS);
    }

    private String leftOut() {
        String labels = hymn.verses().subList(from + 1, index).stream()
                .map(Verse::label)
                .collect(Collectors.joining(", "));
        return labels.isEmpty() ? "" : "With " + labels + " left out: ";
    }

    private Optional<Mend> onPiston() {
        return PistonChoice.forVerse(hymn.pistons(), Optional.of(before), verse)
                .filter(piston -> neededS(Pressed.of(hymn.organ(), piston)) <= breathS)
                .map(piston -> hymn.onPiston(piston, index, verse));
    }
}
