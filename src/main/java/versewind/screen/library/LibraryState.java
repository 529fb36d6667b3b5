package versewind.screen.library;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import versewind.plan.Sought;
import versewind.screen.state.Chooser;
import versewind.screen.state.State;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.TextLine;

/**
 * The plans and organs of the library as far as they are read, and what of them is looked at.
 *
 * @param plans the latest date first, those of no date last
 * @param files how many plans there are, read or not
 * @param organs in the order of their names
 * @param side what is looked at
 * @param filter what was typed to narrow it down
 * @param marked id of the row where we are; that of no row for the first
 * @param assessed what was found out about plans, by their ids
 * @param asked ids of the plans about which it was asked
 * @param aim what a plan is chosen for
 * @param found in which plans what was typed stands further within
 */
record LibraryState(
        List<LibraryEvent.ListedPlan> plans,
        int files,
        List<Chooser.Row> organs,
        Side side,
        TextLine filter,
        String marked,
        Map<String, LibraryEvent.PlanAssessed> assessed,
        Set<String> asked,
        Aim aim,
        Found found) {

    /** What a plan is chosen for. */
    enum Aim {
        /** To be opened. */
        OPEN,
        /** To bring a hymn over from it. */
        BRING,
        /** To move it to another organ. */
        MOVE
    }

    /**
     * What was looked for in the plans.
     *
     * @param typed the words
     * @param where a text that holds them, by the ids of the plans
     */
    record Found(String typed, Map<String, String> where) {

        static final Found NOTHING = new Found("", Map.of());

        Found {
            where = Map.copyOf(where);
        }
    }

    /** What is looked at. */
    enum Side {
        PLANS,
        ORGANS
    }

    private static final int NOT_COUNTED = -1;

    private static final Comparator<LibraryEvent.ListedPlan> LATEST_FIRST = Comparator.comparing(
                    (LibraryEvent.ListedPlan plan) ->
                            plan.date().map(Object::toString).orElse(""))
            .reversed()
            .thenComparing(LibraryEvent.ListedPlan::id);

    /** Nothing is read yet. */
    static final LibraryState UNREAD = new LibraryState(
            List.of(),
            NOT_COUNTED,
            List.of(),
            Side.PLANS,
            TextLine.EMPTY,
            "",
            Map.of(),
            Set.of(),
            Aim.OPEN,
            Found.NOTHING);

    public LibraryState {
        plans = List.copyOf(plans);
        organs = List.copyOf(organs);
        assessed = Map.copyOf(assessed);
        asked = Set.copyOf(asked);
    }

    /** Whether every plan there is has been read. */
    boolean isRead() {
        return plans.size() >= files && files != NOT_COUNTED;
    }

    /** The plans that have every word typed, those first that have them in their own row. */
    List<LibraryEvent.ListedPlan> fittingPlans() {
        Sought sought = Sought.of(filter.text());
        return sought.words().isEmpty()
                ? plans
                : plans.stream()
                        .filter(plan ->
                                sought.isInPlain(plan.plain()) || foundIn(plan).isPresent())
                        .sorted(Comparator.comparing(plan -> !sought.isInPlain(plan.plain())))
                        .toList();
    }

    /** A text within a plan that holds what is typed, if one was found. */
    Optional<String> foundIn(LibraryEvent.ListedPlan plan) {
        return found.typed().equals(filter.text())
                ? Optional.ofNullable(found.where().get(plan.id()))
                : Optional.empty();
    }

    /** Whether what is typed is still to be looked for within the plans. */
    boolean isToBeSought() {
        return side == Side.PLANS
                && isRead()
                && !filter.text().isBlank()
                && !found.typed().equals(filter.text());
    }

    LibraryState with(Found other) {
        return new LibraryState(plans, files, organs, side, filter, marked, assessed, asked, aim, other);
    }

    /** The library that lies under what is open; one that was not read where there is none. */
    static LibraryState under(State state) {
        return state.screens().stream()
                .filter(LibraryScreen.class::isInstance)
                .map(screen -> ((LibraryScreen) screen).library())
                .findFirst()
                .orElse(UNREAD);
    }

    /** Organs, those for which a service was edited last first. */
    List<Chooser.Row> lastUsedFirst(List<Chooser.Row> rows) {
        Map<String, LocalDateTime> edited = plans().stream()
                .collect(Collectors.toMap(
                        LibraryEvent.ListedPlan::organ,
                        LibraryEvent.ListedPlan::edited,
                        (one, other) -> one.isAfter(other) ? one : other));
        return rows.stream()
                .sorted(Comparator.comparing((Chooser.Row organ) -> edited.getOrDefault(organ.id(), LocalDateTime.MIN))
                        .reversed())
                .toList();
    }

    /** The days that have a service. */
    Set<LocalDate> days() {
        return plans().stream().flatMap(plan -> plan.date().stream()).collect(Collectors.toSet());
    }

    /** The organs that have every word typed. */
    List<Chooser.Row> fittingOrgans() {
        return Chooser.fitting(organs, filter.text());
    }

    /** Ids of the rows that are looked at and fit. */
    ListBox<String> list() {
        List<String> ids =
                switch (side) {
                    case PLANS ->
                        fittingPlans().stream().map(LibraryEvent.ListedPlan::id).toList();
                    case ORGANS -> fittingOrgans().stream().map(Chooser.Row::id).toList();
                };
        return new ListBox<>(ids, ids.indexOf(marked));
    }

    /** The plans that fit. */
    ListBox<LibraryEvent.ListedPlan> planList() {
        List<LibraryEvent.ListedPlan> fitting = fittingPlans();
        int at = 0;
        while (at < fitting.size() && !fitting.get(at).id().equals(marked)) {
            at++;
        }
        return new ListBox<>(fitting, at < fitting.size() ? at : 0);
    }

    /** Id of the marked row, if there are any. */
    Optional<String> current() {
        return list().current();
    }

    /** The marked plan, if plans are looked at and there are any. */
    Optional<LibraryEvent.ListedPlan> markedPlan() {
        return side == Side.PLANS ? planList().current() : Optional.empty();
    }

    Optional<Chooser.Row> markedOrgan() {
        return side == Side.ORGANS ? new ListBox<>(fittingOrgans(), list().marked()).current() : Optional.empty();
    }

    /** What was found out about a plan, if it was. */
    Optional<LibraryEvent.PlanAssessed> assessed(LibraryEvent.ListedPlan plan) {
        return Optional.ofNullable(assessed.get(plan.id()));
    }

    /** How many plans there are, and how many of them fit. */
    String count(int fitting) {
        if (files == NOT_COUNTED) {
            return "looking";
        }
        String all = files == 1 ? "1 plan" : files + " plans";
        if (!isRead()) {
            return plans.size() + " of " + all + " read";
        }
        return filter.text().isBlank() ? all : fitting + " of " + all;
    }

    /** Whether it is known that there is no plan. */
    boolean isEmpty() {
        return side == Side.PLANS && isRead() && plans.isEmpty();
    }

    /** Why there is no row. */
    String none() {
        boolean isEmpty = side == Side.PLANS ? plans.isEmpty() : organs.isEmpty();
        if (side == Side.PLANS && !isRead()) {
            return isEmpty ? "Reading the plans." : "Nothing read so far matches the filter.";
        }
        return isEmpty ? "None yet." : "Nothing matches the filter.";
    }

    /** With plans that were read, put to the others or, if they are the first of a new reading, in their place. */
    LibraryState with(LibraryEvent.PlansListed listed) {
        Map<String, LibraryEvent.ListedPlan> byId = new LinkedHashMap<>();
        boolean isFirst = listed.part() == LibraryEvent.PlansListed.Part.FIRST;
        if (!isFirst) {
            plans.forEach(plan -> byId.put(plan.id(), plan));
        }
        listed.plans().forEach(plan -> byId.put(plan.id(), plan));
        List<LibraryEvent.ListedPlan> all = new ArrayList<>(byId.values());
        all.sort(LATEST_FIRST);
        return new LibraryState(
                all,
                listed.files(),
                organs,
                side,
                filter,
                marked,
                isFirst ? Map.of() : assessed,
                isFirst ? Set.of() : asked,
                aim,
                isFirst ? Found.NOTHING : found);
    }

    LibraryState with(LibraryEvent.PlanAssessed outcome) {
        Map<String, LibraryEvent.PlanAssessed> more = new HashMap<>(assessed);
        more.put(outcome.id(), outcome);
        return new LibraryState(plans, files, organs, side, filter, marked, more, asked, aim, found);
    }

    /** After it was asked about some plans. */
    LibraryState asking(List<String> ids) {
        Set<String> more = new HashSet<>(asked);
        more.addAll(ids);
        return new LibraryState(plans, files, organs, side, filter, marked, assessed, more, aim, found);
    }

    LibraryState withOrgans(List<Chooser.Row> others) {
        return new LibraryState(plans, files, others, side, filter, marked, assessed, asked, aim, found);
    }

    /** To choose a plan for something else. */
    LibraryState aimedAt(Aim other) {
        return new LibraryState(plans, files, organs, side, filter, marked, assessed, asked, other, found);
    }

    /** With the other side looked at, all of it. */
    LibraryState on(Side other) {
        return new LibraryState(plans, files, organs, other, TextLine.EMPTY, "", assessed, asked, aim, found);
    }

    /** With something else typed; the first row that fits is marked then. */
    LibraryState filtered(TextLine line) {
        String mark = line.text().equals(filter.text()) ? marked : "";
        return new LibraryState(plans, files, organs, side, line, mark, assessed, asked, aim, found);
    }

    LibraryState marking(String id) {
        return new LibraryState(plans, files, organs, side, filter, id, assessed, asked, aim, found);
    }

    /** With the marked row of a list marked. */
    LibraryState marking(ListBox<String> list) {
        return list.current().map(this::marking).orElse(this);
    }

    /** The plans that are shown in a window of so many rows and about which it is still to be asked. */
    List<String> toBeAsked(int room) {
        if (side != Side.PLANS || !isRead()) {
            return List.of();
        }
        List<String> ids = new ArrayList<>();
        list().each(0, room, (id, index, y) -> ids.add(id));
        ids.removeAll(asked);
        return ids;
    }
}
