package versewind.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.Verse;

/** The change from the verse before, where both have stops drawn, and the time that it needs. */
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
        changes = StopChanges.between(before.registration(), verse.registration());
        breathS = hymn.breathBeats() * hymn.beatS();
    }

    /** A change that needs longer than the breath. */
    Optional<Breach> breach() {
        double neededS = isSet() ? neededByPistonS() : neededS(changes);
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
                () -> onPiston().or(this::earlier)));
    }

    private boolean isSet() {
        return hymn.organ().pistons().set(verse.piston());
    }

    /** Time in s by hand and foot. */
    private double neededS(StopChanges moved) {
        int boxes = moved.boxes().size();
        return BetweenVerses.neededS(moved.count() - boxes, boxes, moveS());
    }

    private double neededByPistonS() {
        return BetweenVerses.neededS(0, changes.boxes().size(), moveS());
    }

    private double moveS() {
        return hymn.plan().heading().moveS();
    }

    private String sentence(int count, double neededS) {
        String early = early();
        return String.format(
                Locale.ROOT,
                "%d changes from %s need %.1f s; the breath is %.1f s%s.",
                count,
                before.label(),
                neededS,
                breathS,
                early.isEmpty() ? "" : "; " + early);
    }

    /**
     * The changes that can be made before the breath, since they are not heard there yet; empty where there are none.
     */
    private String early() {
        List<StopChangesByDivision> moved =
                StopChangesByDivision.of(hymn.organ(), StopChanges.between(before.registration(), prepared()));
        return Stream.of(
                        early("draw", moved, StopChangesByDivision::drawn),
                        early("push in", moved, StopChangesByDivision::putIn))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private String early(
            String verb, List<StopChangesByDivision> moved, Function<StopChangesByDivision, List<String>> knobs) {
        int count = moved.stream().mapToInt(each -> knobs.apply(each).size()).sum();
        if (count == 0) {
            return "";
        }
        String names = moved.stream()
                .filter(each -> !knobs.apply(each).isEmpty())
                .map(each -> each.where() + " " + String.join(", ", knobs.apply(each)))
                .collect(Collectors.joining("; "));
        return verb + (count == 1 ? " this" : " these") + " during " + before.label() + ", where "
                + (count == 1 ? "it" : "they") + " will not sound: " + names;
    }

    /** The registration of the verse before with all that can be changed without a difference there. */
    private Registration prepared() {
        Registration prepared = before.registration();
        IndexSet moved = changes.stopsDrawn().plus(changes.stopsPutIn());
        for (int stop : moved.stream().toArray()) {
            Registration more = prepared.toggleStop(stop);
            if (!isHeard(prepared, stop) && !isHeard(more, stop)) {
                prepared = more;
            }
        }
        return prepared;
    }

    /** True where a stop sounds in the verse before, drawn so. */
    private boolean isHeard(Registration drawn, int stop) {
        return hymn.faults().played(before.withRegistration(drawn)).sounding().contains(stop);
    }

    private Optional<Mend> onPiston() {
        return !isSet() && neededByPistonS() <= breathS
                ? PistonChoice.forVerse(hymn.plan(), hymn.organ(), verse)
                        .map(piston -> hymn.onPiston(piston, index, verse))
                : Optional.empty();
    }

    /** Changes made a verse earlier, where that is enough. */
    private Optional<Mend> earlier() {
        Registration prepared = prepared();
        boolean isEnough = neededS(StopChanges.between(prepared, verse.registration())) <= breathS
                && (index == 1
                        || neededS(StopChanges.between(hymn.verse(index - 2).registration(), prepared)) <= breathS);
        return isEnough
                ? Optional.of(new Mend(
                        "Already during " + before.label() + ", "
                                + Mend.words(hymn.organ(), before.registration(), prepared) + ".",
                        hymn.place(index - 1),
                        before.withRegistration(prepared)))
                : Optional.empty();
    }
}
