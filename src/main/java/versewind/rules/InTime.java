package versewind.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.Edit;
import versewind.plan.Verse;

/**
 * What has to be moved from verse to verse fits into the breath: each hand one movement after another, the boxes by foot
 * at the same time. A piston moves everything but the boxes. Common practice, no source.
 */
final class InTime implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        if (index == 0 || isUndrawn(hymn.verse(index - 1)) || isUndrawn(hymn.verse(index))) {
            return Optional.empty();
        }
        Verse verse = hymn.verse(index);
        boolean isSet = hymn.organ().pistons().set(verse.piston());
        StopChanges moves = StopChanges.between(hymn.verse(index - 1).registration(), verse.registration());
        double neededS = neededS(hymn, isSet ? 0 : byHand(moves), moves.boxes().size());
        double breathS = breathS(hymn);
        if (neededS <= breathS) {
            return Optional.empty();
        }
        return Optional.of(UnfixedFinding.caution(
                hymn,
                index,
                Rule.TOO_MANY_MOVES,
                List.of(
                        FindingNumbers.count("movements", isSet ? moves.boxes().size() : moves.count()),
                        new Figure("needed", neededS, Figure.Unit.SECONDS),
                        new Figure("breath", breathS, Figure.Unit.SECONDS)),
                sentence(hymn, index, isSet ? moves.boxes().size() : moves.count(), neededS, breathS),
                () -> mend(hymn, index)));
    }

    /** While the organ is silent there is time enough. */
    private static boolean isUndrawn(Verse verse) {
        return verse.registration().stops().isEmpty();
    }

    private static int byHand(StopChanges moves) {
        return moves.count() - moves.boxes().size();
    }

    private static double neededS(InHymn hymn, int byHand, int byFoot) {
        return BetweenVerses.neededS(byHand, byFoot, hymn.plan().heading().moveS());
    }

    private static double breathS(InHymn hymn) {
        return hymn.breathBeats() * hymn.beatS();
    }

    private static String sentence(InHymn hymn, int index, int movements, double neededS, double breathS) {
        String early = early(hymn, index);
        return String.format(
                Locale.ROOT,
                "%d movements from %s need %.1f s, and the breath is %.1f s%s.",
                movements,
                hymn.verse(index - 1).label(),
                neededS,
                breathS,
                early.isEmpty() ? "" : "; " + early);
    }

    /** What can be moved before the breath, since it is not heard there yet; empty where there is nothing. */
    private static String early(InHymn hymn, int index) {
        Verse before = hymn.verse(index - 1);
        List<StopChangesByDivision> moved = StopChangesByDivision.of(
                hymn.organ(), StopChanges.between(before.registration(), prepared(hymn, index)));
        return Stream.of(
                        early("draw", before, moved, StopChangesByDivision::drawn),
                        early("put in", before, moved, StopChangesByDivision::putIn))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String early(
            String verb,
            Verse before,
            List<StopChangesByDivision> moved,
            Function<StopChangesByDivision, List<String>> knobs) {
        int count = moved.stream().mapToInt(each -> knobs.apply(each).size()).sum();
        if (count == 0) {
            return "";
        }
        String names = moved.stream()
                .filter(each -> !knobs.apply(each).isEmpty())
                .map(each -> each.where() + " " + String.join(", ", knobs.apply(each)))
                .collect(Collectors.joining("; "));
        return verb + (count == 1 ? " this" : " these") + " already during " + before.label() + ", where nobody hears "
                + (count == 1 ? "it: " : "them: ") + names;
    }

    /** What can be drawn in the verse before without a difference there. */
    private static Registration prepared(InHymn hymn, int index) {
        Verse before = hymn.verse(index - 1);
        Registration after = hymn.verse(index).registration();
        Registration prepared = before.registration();
        IndexSet moved = after.stops()
                .minus(before.registration().stops())
                .plus(before.registration().stops().minus(after.stops()));
        for (int stop : moved.stream().toArray()) {
            Registration more = prepared.toggleStop(stop);
            if (!isHeard(hymn, before, prepared, stop) && !isHeard(hymn, before, more, stop)) {
                prepared = more;
            }
        }
        return prepared;
    }

    private static boolean isHeard(InHymn hymn, Verse verse, Registration drawn, int stop) {
        return hymn.faults().choruses(verse.withRegistration(drawn)).stream()
                .anyMatch(chorus -> chorus.sounding().contains(stop));
    }

    /** A piston, or what can be drawn a verse earlier, where that is enough. */
    private static Optional<Mend> mend(InHymn hymn, int index) {
        return piston(hymn, index).or(() -> earlier(hymn, index));
    }

    private static Optional<Mend> piston(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        StopChanges moves = StopChanges.between(hymn.verse(index - 1).registration(), verse.registration());
        boolean isHelped = !hymn.organ().pistons().set(verse.piston())
                && neededS(hymn, 0, moves.boxes().size()) <= breathS(hymn);
        return isHelped
                ? PistonsInUse.forVerse(hymn.plan(), hymn.organ(), verse)
                        .map(piston -> Mend.onPiston(piston, hymn.place(index), verse))
                : Optional.empty();
    }

    private static Optional<Mend> earlier(InHymn hymn, int index) {
        Verse before = hymn.verse(index - 1);
        Registration prepared = prepared(hymn, index);
        StopChanges rest = StopChanges.between(prepared, hymn.verse(index).registration());
        boolean isEnough = neededS(hymn, byHand(rest), rest.boxes().size()) <= breathS(hymn)
                && (index == 1 || fits(hymn, hymn.verse(index - 2).registration(), prepared));
        return isEnough
                ? Optional.of(new Mend(
                        "Already during " + before.label() + ", "
                                + Mend.words(hymn.organ(), before.registration(), prepared) + ".",
                        new Edit.SetVerse(hymn.index(), index - 1, before.withRegistration(prepared))))
                : Optional.empty();
    }

    private static boolean fits(InHymn hymn, Registration from, Registration to) {
        StopChanges moves = StopChanges.between(from, to);
        return neededS(hymn, byHand(moves), moves.boxes().size()) <= breathS(hymn);
    }
}
