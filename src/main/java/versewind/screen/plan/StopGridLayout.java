package versewind.screen.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Text;
import versewind.sound.OrganSound;

/**
 * How an instrument's knobs stand on the screen: blocks (a division with its tremulants, then the couplers) set one
 * under the other in columns, as many beside each other as fit.
 *
 * @param columns from left to right, all of them, also those that do not fit on the screen at once
 * @param pages which columns are shown together: each page's first column
 * @param items every knob in the order in which the arrows go through them
 */
public record StopGridLayout(List<Column> columns, List<Integer> pages, List<Item> items) {

    /** Between two columns. */
    static final int GAP = 1;

    /** The mark before a name and the blank after it. */
    private static final int MARK = 2;

    private static final int NARROWEST = 13;
    private static final int COMFORTABLE = 16;

    /** One column: its lines from top to bottom and how wide it is. */
    record Column(int width, List<Line> lines) {}

    /** One line of a column. */
    sealed interface Line {}

    /** The name of a division. */
    record DivisionLine(int division) implements Line {}

    /** The heading of the couplers. */
    record CouplersLine() implements Line {}

    /** A knob, by its place in the order of all knobs. */
    record KnobLine(int item) implements Line {}

    /** Nothing. */
    record BlankLine() implements Line {}

    /** Where a knob stands. */
    record Spot(int column, int line) {}

    /** The layouts of one organ, each worked out once: every frame needs one. */
    private record Known(Map<List<Integer>, StopGridLayout> bySize) {}

    /** The knobs of an organ in a space of so many columns and rows of cells. */
    static StopGridLayout of(OrganSound sound, int width, int height) {
        return sound.derived(Known.class, any -> new Known(new HashMap<>()))
                .bySize()
                .computeIfAbsent(List.of(width, height), size -> of(sound.organ(), width, height));
    }

    /** The knobs of an instrument in such a space. */
    static StopGridLayout of(Instrument instrument, int width, int height) {
        List<Item> items = new ArrayList<>();
        List<List<Line>> blocks = blocks(instrument, items);
        List<List<Line>> whole = packWhole(blocks, lowest(instrument, items, blocks, width, height));
        List<Column> columns = sized(instrument, items, whole);
        if (totalWidth(columns) > width) {
            List<List<Line>> split = packSplit(blocks, height);
            if (split.size() < whole.size()) {
                columns = sized(instrument, items, split);
            }
        }
        List<Column> narrow = squeezed(columns, width);
        List<Integer> pages = pages(narrow, width);
        return new StopGridLayout(widened(narrow, columns, pages, width), pages, List.copyOf(items));
    }

    /** The knobs of an instrument in the order in which the arrows go through them. */
    public static List<Item> items(Instrument instrument) {
        List<Item> items = new ArrayList<>();
        blocks(instrument, items);
        return items;
    }

    private static List<List<Line>> blocks(Instrument instrument, List<Item> items) {
        List<List<Line>> blocks = new ArrayList<>();
        for (int division = 0; division < instrument.divisions().size(); division++) {
            List<Line> block = new ArrayList<>();
            block.add(new DivisionLine(division));
            for (int stop = 0; stop < instrument.stops().size(); stop++) {
                if (instrument.stops().get(stop).division() == division) {
                    block.add(add(items, new Item.StopItem(stop)));
                }
            }
            for (int tremulant = 0; tremulant < instrument.tremulants().size(); tremulant++) {
                String home = instrument.tremulants().get(tremulant).division();
                if (instrument.divisions().get(division).name().equals(home)) {
                    block.add(add(items, new Item.TremulantItem(tremulant)));
                }
            }
            blocks.add(block);
        }
        if (!instrument.couplers().isEmpty()) {
            List<Line> block = new ArrayList<>();
            block.add(new CouplersLine());
            for (int coupler = 0; coupler < instrument.couplers().size(); coupler++) {
                block.add(add(items, new Item.CouplerItem(coupler)));
            }
            blocks.add(block);
        }
        return blocks;
    }

    private static Line add(List<Item> items, Item item) {
        items.add(item);
        return new KnobLine(items.size() - 1);
    }

    /** The least height at which whole blocks still fit beside each other, so that divisions stand side by side. */
    private static int lowest(Instrument instrument, List<Item> items, List<List<Line>> blocks, int width, int height) {
        int tallest = blocks.stream().mapToInt(List::size).max().orElse(1);
        for (int low = tallest; low < height; low++) {
            if (totalWidth(sized(instrument, items, packWhole(blocks, low))) <= width) {
                return low;
            }
        }
        return height;
    }

    /** A block starts a new column where it would not fit under the one before. */
    private static List<List<Line>> packWhole(List<List<Line>> blocks, int height) {
        List<List<Line>> columns = new ArrayList<>();
        List<Line> column = new ArrayList<>();
        for (List<Line> block : blocks) {
            if (!column.isEmpty() && column.size() + 1 + block.size() > height) {
                columns.add(column);
                column = new ArrayList<>();
            }
            if (!column.isEmpty()) {
                column.add(new BlankLine());
            }
            for (Line line : block) {
                if (column.size() == height) {
                    columns.add(column);
                    column = new ArrayList<>(List.of(block.get(0)));
                }
                column.add(line);
            }
        }
        columns.add(column);
        return columns;
    }

    /** Blocks run on from column to column; only a heading is kept with the knob below it. */
    private static List<List<Line>> packSplit(List<List<Line>> blocks, int height) {
        List<List<Line>> columns = new ArrayList<>();
        List<Line> column = new ArrayList<>();
        for (List<Line> block : blocks) {
            boolean room = column.size() + 3 <= height;
            if (!column.isEmpty() && room) {
                column.add(new BlankLine());
            }
            if (!column.isEmpty() && !room) {
                columns.add(column);
                column = new ArrayList<>();
            }
            for (Line line : block) {
                if (column.size() >= height) {
                    columns.add(column);
                    column = new ArrayList<>(List.of(block.get(0)));
                }
                column.add(line);
            }
        }
        columns.add(column);
        return columns;
    }

    private static List<Column> sized(Instrument instrument, List<Item> items, List<List<Line>> columns) {
        return columns.stream()
                .map(lines -> new Column(naturalWidth(instrument, items, lines), List.copyOf(lines)))
                .toList();
    }

    private static int naturalWidth(Instrument instrument, List<Item> items, List<Line> lines) {
        int width = NARROWEST;
        for (Line line : lines) {
            int needed = 0;
            if (line instanceof DivisionLine heading) {
                boolean enclosed =
                        instrument.divisions().get(heading.division()).isEnclosed();
                int name = Text.columns(
                        instrument.divisions().get(heading.division()).name());
                needed = name + (enclosed ? 1 + ShortWords.longestBox() : 0);
            } else if (line instanceof KnobLine knob) {
                needed = MARK + knobWidth(instrument, items.get(knob.item()));
            }
            width = Math.max(width, needed);
        }
        return width;
    }

    private static int knobWidth(Instrument instrument, Item item) {
        if (item instanceof Item.StopItem stopItem) {
            Stop stop = instrument.stops().get(stopItem.stop()).stop();
            return Text.columns(stop.name()) + 1 + Text.columns(stop.pitch());
        }
        return Text.columns(Item.name(instrument, item));
    }

    private static int totalWidth(List<Column> columns) {
        return columns.stream().mapToInt(Column::width).sum() + GAP * (columns.size() - 1);
    }

    /** Narrows the widest columns, but no further than is comfortable, where that saves a page. */
    private static List<Column> squeezed(List<Column> columns, int width) {
        int widest =
                Math.min(width, columns.stream().mapToInt(Column::width).max().orElse(NARROWEST));
        List<Column> best = capped(columns, widest);
        for (int cap = widest - 1; cap >= NARROWEST; cap--) {
            List<Column> narrower = capped(columns, cap);
            boolean worthwhile = cap >= COMFORTABLE || pages(narrower, width).size() == 1;
            if (worthwhile && pages(narrower, width).size() < pages(best, width).size()) {
                best = narrower;
            }
        }
        return best;
    }

    /** Gives what is left of a page's width to its columns that are narrower than their names, the narrowest first. */
    private static List<Column> widened(List<Column> narrow, List<Column> natural, List<Integer> pages, int width) {
        List<Column> wide = new ArrayList<>(narrow);
        for (int page = 0; page < pages.size(); page++) {
            int first = pages.get(page);
            int end = page + 1 < pages.size() ? pages.get(page + 1) : wide.size();
            OptionalInt next = narrowest(wide, natural, first, end);
            while (next.isPresent() && totalWidth(wide.subList(first, end)) < width - GAP) {
                Column column = wide.get(next.getAsInt());
                wide.set(next.getAsInt(), new Column(column.width() + 1, column.lines()));
                next = narrowest(wide, natural, first, end);
            }
        }
        return List.copyOf(wide);
    }

    private static OptionalInt narrowest(List<Column> wide, List<Column> natural, int first, int end) {
        return IntStream.range(first, end)
                .filter(column -> wide.get(column).width() < natural.get(column).width())
                .reduce((one, other) -> wide.get(other).width() < wide.get(one).width() ? other : one);
    }

    private static List<Column> capped(List<Column> columns, int widest) {
        return columns.stream()
                .map(column -> new Column(Math.min(column.width(), widest), column.lines()))
                .toList();
    }

    private static List<Integer> pages(List<Column> columns, int width) {
        List<Integer> pages = new ArrayList<>();
        int used = 0;
        for (int column = 0; column < columns.size(); column++) {
            int wide = columns.get(column).width();
            if (pages.isEmpty() || used + GAP + wide > width) {
                pages.add(column);
                used = wide;
            } else {
                used += GAP + wide;
            }
        }
        return pages;
    }

    /** Where a knob stands. */
    Spot spot(int item) {
        for (int column = 0; column < columns.size(); column++) {
            List<Line> lines = columns.get(column).lines();
            for (int line = 0; line < lines.size(); line++) {
                if (lines.get(line) instanceof KnobLine knob && knob.item() == item) {
                    return new Spot(column, line);
                }
            }
        }
        return new Spot(0, 0);
    }

    /** The first column of the page that shows a column. */
    int pageOf(int column) {
        int first = 0;
        for (int page : pages) {
            if (page <= column) {
                first = page;
            }
        }
        return first;
    }

    /** The knob nearest to the height of one, in the column so many further to the right; the same if there is none. */
    int beside(int item, int step) {
        Spot from = spot(item);
        int column = from.column() + step;
        while (column >= 0 && column < columns.size()) {
            int nearest = nearest(columns.get(column).lines(), from.line());
            if (nearest >= 0) {
                return nearest;
            }
            column += step;
        }
        return item;
    }

    private static int nearest(List<Line> lines, int height) {
        int nearest = -1;
        int distance = Integer.MAX_VALUE;
        for (int line = 0; line < lines.size(); line++) {
            int away = Math.abs(line - height);
            if (lines.get(line) instanceof KnobLine knob && away < distance) {
                nearest = knob.item();
                distance = away;
            }
        }
        return nearest;
    }
}
