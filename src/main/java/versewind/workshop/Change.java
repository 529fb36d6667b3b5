package versewind.workshop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.StopName;

/**
 * What a draft makes of the instrument that it began as.
 *
 * @param names what became of everything that has another name or is gone
 * @param problems what would have plans take one thing for another
 */
public record Change(FormerNames names, List<Problem> problems) {

    private static final String SAVE_FIRST =
            " was the name of another until now. Save once, then give the name, lest a plan takes one for the other.";

    public Change {
        problems = List.copyOf(problems);
    }

    /** Compares an instrument with its draft. */
    public static Change of(Instrument before, OrganDraft draft) {
        List<Problem> problems = new ArrayList<>();
        Map<String, Now<String>> divisions = new Names(draft, RowKind.DIVISION, problems).of(before.divisionNames());
        Map<String, Now<String>> couplers = new Names(draft, RowKind.COUPLER, problems).of(before.couplerNames());
        Map<String, Now<String>> tremulants = new Names(draft, RowKind.TREMULANT, problems).of(before.tremulantNames());
        Map<StopName, Now<StopName>> stops = new LinkedHashMap<>();
        new Names(draft, RowKind.STOP, problems)
                .of(before.stops().stream().map(knob -> knob.name().toString()).toList())
                .forEach((was, now) -> stops.put(name(was), new Now<>(now.name().map(Change::name))));
        return new Change(
                new FormerNames(divisions, stops, couplers, tremulants, boxes(before, draft, problems)), problems);
    }

    private static StopName name(String full) {
        int cut = full.indexOf(": ");
        return new StopName(full.substring(0, cut), full.substring(cut + 2));
    }

    /** The divisions that have no box any more; and no manual becomes a pedal, since hands play on it. */
    private static Set<String> boxes(Instrument before, OrganDraft draft, List<Problem> problems) {
        Set<String> boxes = new LinkedHashSet<>();
        for (int i = 0; i < before.divisions().size(); i++) {
            OptionalInt at = draft.lineOf(RowKind.DIVISION, i);
            if (at.isEmpty()) {
                continue;
            }
            DraftLine line = draft.lines().get(at.getAsInt());
            if (before.divisions().get(i).isEnclosed()
                    && !line.at(DraftField.BOX).strip().toLowerCase(Locale.ROOT).startsWith("y")) {
                boxes.add(line.at(DraftField.NAME));
            }
            boolean isPedal = line.isPedal();
            if (isPedal && !before.divisions().get(i).isPedal()) {
                problems.add(new Problem(
                        at.getAsInt(),
                        DraftField.MANUAL,
                        "Hands play on it in plans. Put in a pedal of its own, and take this out."));
            }
        }
        return boxes;
    }

    /** The names of one part, before and now. */
    private record Names(OrganDraft draft, RowKind part, List<Problem> problems) {

        Map<String, Now<String>> of(List<String> before) {
            Map<String, Now<String>> changed = new LinkedHashMap<>();
            Map<String, Integer> origins = new HashMap<>();
            for (int i = 0; i < before.size(); i++) {
                origins.put(before.get(i), i);
            }
            Set<String> today = new LinkedHashSet<>();
            for (int at = 0; at < draft.lines().size(); at++) {
                DraftLine line = draft.lines().get(at);
                if (line.part() == part) {
                    today.add(draft.fullName(at));
                    check(before, origins, at, line);
                }
            }
            for (int i = 0; i < before.size(); i++) {
                OptionalInt at = draft.lineOf(part, i);
                if (at.isEmpty() && !today.contains(before.get(i))) {
                    changed.put(before.get(i), Now.gone());
                } else if (at.isPresent() && !name(at.getAsInt()).equals(before.get(i))) {
                    changed.put(before.get(i), Now.called(name(at.getAsInt())));
                }
            }
            return changed;
        }

        private String name(int at) {
            return draft.fullName(at);
        }

        /** A name that something else had before: what is put in may have that of something taken out. */
        private void check(List<String> before, Map<String, Integer> origins, int at, DraftLine line) {
            Integer owner = origins.get(name(at));
            if (owner == null || line.origin().equals(OptionalInt.of(owner))) {
                return;
            }
            boolean ownerIsThere = draft.lineOf(part, owner).isPresent();
            if (line.origin().isPresent() || ownerIsThere) {
                boolean twice = ownerIsThere
                        && name(draft.lineOf(part, owner).getAsInt()).equals(before.get(owner));
                if (!twice) {
                    problems.add(new Problem(at, DraftField.NAME, line.label() + SAVE_FIRST));
                }
            }
        }
    }
}
