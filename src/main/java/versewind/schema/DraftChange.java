package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntFunction;
import versewind.organ.Division;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.Instrument.Knob;
import versewind.organ.StopName;

/**
 * What a draft makes of the instrument that it began as.
 *
 * @param names what became of everything that has another name or is gone
 * @param problems what would have plans take one thing for another
 */
public record DraftChange(FormerNames names, List<Problem> problems) {

    private static final String SAVE_FIRST =
            " was another part's name until now. Save first, then use it, so that plans do not confuse the two.";

    public DraftChange {
        problems = List.copyOf(problems);
    }

    /** Compares an instrument with its draft. */
    public static DraftChange of(Instrument before, OrganDraft draft) {
        List<Problem> problems = new ArrayList<>();
        List<StopName> stops = before.stops().stream().map(Knob::name).toList();
        FormerNames names = new FormerNames(
                changed(before.divisionNames(), draft, RowKind.DIVISION, draft::fullName, problems),
                changed(stops, draft, RowKind.STOP, draft::stopName, problems),
                changed(before.couplerNames(), draft, RowKind.COUPLER, draft::fullName, problems),
                changed(before.tremulantNames(), draft, RowKind.TREMULANT, draft::fullName, problems),
                boxes(before, draft, problems));
        return new DraftChange(names, problems);
    }

    /** The divisions that have no box any more; and no manual becomes a pedal, since hands play on it. */
    private static Set<String> boxes(Instrument before, OrganDraft draft, List<Problem> problems) {
        Set<String> boxes = new LinkedHashSet<>();
        for (int i = 0; i < before.divisions().size(); i++) {
            Division division = before.divisions().get(i);
            draft.lineOf(RowKind.DIVISION, i).ifPresent(at -> {
                DraftLine line = draft.lines().get(at);
                if (division.isEnclosed() && !line.read(DivisionFields.IS_BOXED).orElse(false)) {
                    boxes.add(line.name());
                }
                if (line.isPedal() && !division.isPedal()) {
                    problems.add(
                            new Problem(at, "In plans, hands play on it. Add a pedal division and delete this one."));
                }
            });
        }
        return boxes;
    }

    /** What became of the names of one kind of parts. */
    private static <N> Map<N, Now<N>> changed(
            List<N> before, OrganDraft draft, RowKind part, IntFunction<N> name, List<Problem> problems) {
        Set<N> today = new LinkedHashSet<>();
        draft.rows(part).forEach(at -> {
            N now = name.apply(at);
            today.add(now);
            OptionalInt origin = draft.lines().get(at).origin();
            int owner = before.indexOf(now);
            OptionalInt ownerAt = draft.lineOf(part, owner);
            // What is added may have the name of something that was deleted.
            boolean isTakenOver =
                    owner >= 0 && !origin.equals(OptionalInt.of(owner)) && (origin.isPresent() || ownerAt.isPresent());
            boolean isTwice =
                    ownerAt.isPresent() && name.apply(ownerAt.getAsInt()).equals(now);
            if (isTakenOver && !isTwice) {
                problems.add(new Problem(at, draft.lines().get(at).label() + SAVE_FIRST));
            }
        });
        Map<N, Now<N>> changed = new LinkedHashMap<>();
        for (int i = 0; i < before.size(); i++) {
            N was = before.get(i);
            OptionalInt at = draft.lineOf(part, i);
            if (at.isEmpty() && !today.contains(was)) {
                changed.put(was, Now.gone());
            } else if (at.isPresent() && !name.apply(at.getAsInt()).equals(was)) {
                changed.put(was, Now.called(name.apply(at.getAsInt())));
            }
        }
        return changed;
    }
}
