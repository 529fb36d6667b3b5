package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.Locks;
import versewind.plan.Verse;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Abbreviation;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/** The stops, couplers and tremulants, division by division, with what is drawn. */
final class StopGridView {
    private StopGridView() {}

    static void paint(Frame frame, State state, PlanEdit work, StopGridLayout jamb) {
        Layout layout = Layout.ofPanels(state);
        int first = jamb.pageOf(jamb.spot(work.item()).column());
        IndexSet sounding = sounding(work);
        int x = 0;
        for (int c = first; c < jamb.columns().size() && isOnPage(jamb, first, c); c++) {
            StopGridLayout.Column column = jamb.columns().get(c);
            for (int line = 0; line < column.lines().size() && line < layout.height(); line++) {
                paintLine(
                        frame,
                        state,
                        work,
                        jamb,
                        sounding,
                        column.lines().get(line),
                        new Cell(x, layout.top() + line, column.width()));
            }
            x += column.width() + StopGridLayout.GAP;
        }
    }

    /** The stops that are drawn and sound. */
    static IndexSet sounding(PlanEdit work) {
        return work.verse()
                .filter(Verse::isPlayed)
                .map(verse -> work.sound().sounding(verse.registration(), verse.hands()))
                .orElse(IndexSet.EMPTY);
    }

    private static boolean isOnPage(StopGridLayout jamb, int first, int column) {
        return jamb.pageOf(column) == first;
    }

    /** A place for one line of a column. */
    private record Cell(int x, int y, int width) {
        int end() {
            return x + width;
        }
    }

    private static void paintLine(
            Frame frame,
            State state,
            PlanEdit work,
            StopGridLayout jamb,
            IndexSet sounding,
            StopGridLayout.Line line,
            Cell cell) {
        if (line instanceof StopGridLayout.DivisionLine heading) {
            paintDivision(frame, state, work, heading.division(), cell);
        } else if (line instanceof StopGridLayout.CouplersLine) {
            frame.write(cell.x(), cell.y(), "Couplers", Style.HEADING, cell.end());
        } else if (line instanceof StopGridLayout.KnobLine knob) {
            paintKnob(frame, state, work, sounding, jamb.items().get(knob.item()), cell);
            if (knob.item() == work.item()) {
                boolean here = work.side() == PlanEdit.Side.STOPS;
                frame.paint(cell.x(), cell.y(), cell.width(), here ? Style.CURSOR : Style.RESTING_CURSOR);
            }
        }
    }

    private static void paintDivision(Frame frame, State state, PlanEdit work, int index, Cell cell) {
        Division division = work.instrument().divisions().get(index);
        String box = division.isEnclosed()
                ? work.verse()
                        .map(verse ->
                                ShortWords.box(verse.registration().boxes().get(index)))
                        .orElse("box")
                : "";
        int room = cell.width() - (box.isEmpty() ? 0 : Text.columns(box) + 1);
        frame.write(
                cell.x(),
                cell.y(),
                Abbreviation.of(division.name(), room, Mark.CUT.in(state.marks())),
                Style.HEADING,
                cell.end());
        frame.write(cell.end() - Text.columns(box), cell.y(), box, Style.TEXT, cell.end());
    }

    private static void paintKnob(Frame frame, State state, PlanEdit work, IndexSet sounding, Item item, Cell cell) {
        Mark mark = mark(work, sounding, item);
        Style style = mark == Mark.DRAWN ? Style.DRAWN : Style.TEXT;
        frame.write(
                cell.x(), cell.y(), mark.in(state.marks()), mark == Mark.IN ? Style.FAINT : Style.DRAWN, cell.end());
        String pitch = "";
        String name = Item.name(work.instrument(), item);
        if (item instanceof Item.StopItem stopItem) {
            frame.write(cell.x() + 1, cell.y(), lock(state, work, stopItem.stop()), Style.FAINT, cell.end());
            Stop stop = work.instrument().stops().get(stopItem.stop()).stop();
            name = stop.name();
            pitch = stop.pitch();
        }
        int room = cell.width() - 2 - (pitch.isEmpty() ? 0 : Text.columns(pitch) + 1);
        frame.write(cell.x() + 2, cell.y(), Abbreviation.of(name, room, Mark.CUT.in(state.marks())), style, cell.end());
        frame.write(cell.end() - Text.columns(pitch), cell.y(), pitch, style, cell.end());
    }

    private static String lock(State state, PlanEdit work, int stop) {
        Locks locks = locks(work);
        if (locks.always().contains(stop)) {
            return Mark.ALWAYS.in(state.marks());
        }
        return locks.never().contains(stop) ? Mark.NEVER.in(state.marks()) : " ";
    }

    private static Locks locks(PlanEdit work) {
        return work.verse().map(Verse::locks).orElse(Locks.NONE);
    }

    /** How a knob is locked for proposals, in words; empty for one that is free. */
    static Optional<String> lock(PlanEdit work, Item item) {
        if (!(item instanceof Item.StopItem stop)) {
            return Optional.empty();
        }
        boolean isAlways = locks(work).always().contains(stop.stop());
        boolean isLocked = isAlways || locks(work).never().contains(stop.stop());
        return isLocked ? Optional.of("proposals " + (isAlways ? "always" : "never") + " draw it") : Optional.empty();
    }

    /** Whether a knob is in, drawn, or drawn without sounding. */
    static Mark mark(PlanEdit work, IndexSet sounding, Item item) {
        if (!isDrawn(work.verse(), item)) {
            return Mark.IN;
        }
        return item instanceof Item.StopItem stop && !sounding.contains(stop.stop()) ? Mark.WAITS : Mark.DRAWN;
    }

    private static boolean isDrawn(Optional<Verse> verse, Item item) {
        if (verse.isEmpty()) {
            return false;
        }
        Registration registration = verse.get().registration();
        if (item instanceof Item.StopItem stop) {
            return registration.stops().contains(stop.stop());
        }
        if (item instanceof Item.CouplerItem coupler) {
            return registration.couplers().contains(coupler.coupler());
        }
        return registration.tremulants().contains(((Item.TremulantItem) item).tremulant());
    }

    /** Which part of the stops is shown, where they do not all fit: "stops 1/3"; blank where they do. */
    static String page(Frame frame, PlanEdit work, StopGridLayout jamb) {
        List<Integer> pages = jamb.pages();
        if (pages.size() == 1) {
            return "";
        }
        int page = pages.indexOf(jamb.pageOf(jamb.spot(work.item()).column()));
        String left = page > 0 ? frame.mark(Mark.MORE_LEFT) : " ";
        String right = page + 1 < pages.size() ? frame.mark(Mark.MORE_RIGHT) : " ";
        return left + " stops " + (page + 1) + "/" + pages.size() + " " + right;
    }
}
