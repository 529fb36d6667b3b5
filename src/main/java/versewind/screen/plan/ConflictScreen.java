package versewind.screen.plan;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import versewind.plan.Plan;
import versewind.plan.PlanMerge;
import versewind.screen.state.Effect;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * What two people have changed differently in one plan, side by side: for each thing one version is chosen.
 *
 * @param merge the two versions
 * @param list what is in conflict
 * @param theirs the indices of the conflicts in which the other version is chosen
 * @param then what is to be done once the plan is written
 */
public record ConflictScreen(PlanMerge merge, ListBox<PlanMerge.Conflict> list, Set<Integer> theirs, List<Effect> then)
        implements Listing<PlanMerge.Conflict> {

    public static final KeyTable<ConflictScreen> KEYS = KeyTable.<ConflictScreen>under("Two versions of one plan")
            .list("change")
            .key("Left", "keep your version of it", (screen, state) -> state.show(screen.choosing(false)))
            .key("Right", "take the other version of it", (screen, state) -> state.show(screen.choosing(true)))
            .key("Enter", "take the versions chosen, and save", ConflictScreen::save)
            .key("Esc", "close, and save nothing", (screen, state) -> state.close()
                    .says("Not saved. s saves."));

    private static final String TITLE = "Changed here and elsewhere";
    private static final int WIDTH = 76;
    private static final int GAP = 2;

    public ConflictScreen {
        theirs = Set.copyOf(theirs);
        then = List.copyOf(then);
    }

    static ConflictScreen of(PlanMerge merge, List<Effect> then) {
        return new ConflictScreen(merge, ListBox.of(merge.conflicts()), Set.of(), then);
    }

    private ConflictScreen choosing(boolean isTheirs) {
        Set<Integer> chosen = new TreeSet<>(theirs);
        if (isTheirs) {
            chosen.add(list.marked());
        } else {
            chosen.remove(list.marked());
        }
        return new ConflictScreen(merge, list, chosen, then);
    }

    private State save(State state) {
        Plan plan = merge.plan();
        for (int index : theirs) {
            plan = merge.conflicts().get(index).taken(plan);
        }
        Plan chosen = plan;
        return state.close().wants(effects -> effects.saveMerged(chosen, then));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Screen marking(int row) {
        return new ConflictScreen(merge, list.mark(row), theirs, then);
    }

    /** What each version has, and which is chosen. */
    @Override
    public String words(PlanMerge.Conflict conflict, State state) {
        return words(conflict)
                + state.work()
                        .map(work -> ". Left, your version: " + changed(conflict.base(), conflict.mine(), work)
                                + " Right, the other version: " + changed(conflict.base(), conflict.theirs(), work))
                        .orElse("");
    }

    @Override
    public String name(State state) {
        return TITLE;
    }

    @Override
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, work));
    }

    private void paint(Frame frame, PlanEdit work) {
        int half = (Math.min(WIDTH, frame.width() - 4) - GAP) / 2;
        PlanMerge.Conflict here = list.current().orElseThrow();
        List<String> mine = Text.wrapped(changed(here.base(), here.mine(), work), half);
        List<String> other = Text.wrapped(changed(here.base(), here.theirs(), work), half);
        int lines = Math.max(mine.size(), other.size());
        Box box = Box.open(frame, TITLE, WIDTH, list.size() + lines + 4);
        int rows = Math.max(1, Math.min(list.size(), box.height() - lines - 4));
        list.paint(frame, box.rows(0, rows), this::words, (conflict, index, y) -> {
            String chosen = chosen(index);
            frame.write(box.x(), y, frame.fit(place(conflict), box.width() - chosen.length() - GAP), Style.TEXT);
            frame.write(box.end() - chosen.length(), y, chosen, Style.FAINT);
        });
        boolean isTheirs = theirs.contains(list.marked());
        int room = Math.max(0, box.height() - rows - 3);
        column(
                frame,
                box.x(),
                box.y() + rows + 1,
                "Left: your version",
                mine,
                room,
                isTheirs ? Style.FAINT : Style.TEXT);
        column(
                frame,
                box.x() + half + GAP,
                box.y() + rows + 1,
                "Right: the other version",
                other,
                room,
                isTheirs ? Style.TEXT : Style.FAINT);
        KEYS.hints(frame, box, "Left yours", "Right the other", "Enter take and save", "Esc");
    }

    private String chosen(int index) {
        return theirs.contains(index) ? "the other version" : "your version";
    }

    private String words(PlanMerge.Conflict conflict) {
        return place(conflict) + ": " + chosen(list.rows().indexOf(conflict));
    }

    private static void column(Frame frame, int x, int y, String head, List<String> lines, int room, Style style) {
        frame.write(x, y, head, Style.HEADING);
        Box.write(frame, x, y + 1, lines, room, style);
    }

    private String place(PlanMerge.Conflict conflict) {
        if (conflict.hymn().isEmpty()) {
            return "The details of the service";
        }
        String title = merge.plan().hymns().get(conflict.hymn().get()).title();
        return conflict.verse()
                .map(verse -> title + ", "
                        + merge.plan()
                                .hymns()
                                .get(conflict.hymn().get())
                                .verses()
                                .get(verse)
                                .label())
                .orElse(title + ", its details");
    }

    private static String changed(Plan base, Plan version, PlanEdit work) {
        return base.equals(version)
                ? "as it was"
                : PlanDifference.between(base, version, work.instrument()).words();
    }
}
