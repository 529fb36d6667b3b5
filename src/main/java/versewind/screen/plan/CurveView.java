package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.state.PlanEdit;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sound.ClearShare;
import versewind.sound.Estimate;

/**
 * How verses rise and fall: the level of the organ as a curve of half cells, that of the singers as a broken line, and
 * behind both the field in which the organ leads; below, verse by verse, the mark of the verdict and what it is called.
 */
final class CurveView {

    /** The least that a curve can be read in. */
    static final int LEAST_ROWS = 8;

    static final int LEAST_COLUMNS = 36;

    /** Rows besides the curve: the heading, verdicts, labels. */
    private static final int BESIDES = 3;

    /** Columns of the scale at the left. */
    private static final int SCALE = 4;

    private static final int WIDEST_VERSE = 9;
    private static final double ROOM_DB = 2;
    private static final double LEAST_RANGE_DB = 12;

    /** Half of a verse's width over which a curve goes to the next; between, it is level. */
    private static final double SLOPE = 0.2;

    private final Frame frame;
    private final Box plot;
    private final List<Point> points;
    private final double verseColumns;
    private final double lowDb;
    private final double highDb;

    /** A verse in the curve. */
    private record Point(VersePlace place, Verse verse, Estimate estimate, Optional<ClearShare.RightBand> band) {

        double organDba() {
            return estimate.organDba().orElse(Double.NaN);
        }

        double singersDba() {
            return estimate.singersDba().orElse(Double.NaN);
        }

        boolean leadsAt(double dba) {
            return band.filter(right -> dba >= organDba() + right.fromDb() && dba <= organDba() + right.toDb())
                    .isPresent();
        }

        DoubleStream levels() {
            return DoubleStream.of(organDba(), singersDba()).filter(level -> !Double.isNaN(level));
        }
    }

    private CurveView(Frame frame, Box box, List<Point> points) {
        this.frame = frame;
        this.points = points;
        plot = new Box(box.x() + SCALE, box.y() + 1, box.width() - SCALE, box.height() - BESIDES);
        verseColumns = Math.min(WIDEST_VERSE, plot.width() / (double) points.size());
        double low = points.stream().flatMapToDouble(Point::levels).min().orElse(0) - ROOM_DB;
        double high = points.stream().flatMapToDouble(Point::levels).max().orElse(0) + ROOM_DB;
        double more = Math.max(0, LEAST_RANGE_DB - (high - low)) / 2;
        lowDb = low - more;
        highDb = high + more;
    }

    /** Draws the verses at some places, as many around the current one as there are columns. */
    static void paint(Frame frame, Box box, PlanEdit work, List<VersePlace> places) {
        if (places.isEmpty()) {
            return;
        }
        int room = Math.min(places.size(), box.width() - SCALE);
        int first = Math.max(0, Math.min(places.indexOf(work.place()) - room / 2, places.size() - room));
        List<Point> points = new ArrayList<>();
        for (VersePlace place : places.subList(first, first + room)) {
            Hymn hymn = work.plan().hymn(place);
            Verse verse = work.plan().verse(place);
            int people = work.plan().heading().people();
            Optional<ClearShare.RightBand> band = verse.mode() == Mode.MELODY_SOLOED
                    ? Optional.empty()
                    : work.sound().rightBand(verse, people);
            points.add(new Point(place, verse, work.sound().estimate(verse, people, hymn.tempo()), band));
        }
        new CurveView(frame, box, List.copyOf(points)).paint(box, work);
    }

    private void paint(Box box, PlanEdit work) {
        paintHeading(box);
        for (int column = 0; column < columns(); column++) {
            double at = (column + 0.5) / verseColumns;
            Point point = points.get((int) at);
            for (int row = 0; row < plot.height(); row++) {
                if (point.leadsAt(dba(2 * row)) && point.leadsAt(dba(2 * row + 1))) {
                    write(column, row, Mark.SHADE, Style.FAINT);
                }
            }
            line(point.singersDba()).ifPresent(half -> write(columnOf(at), half / 2, Mark.DASH, Style.EDGE));
            level(at, Point::organDba).ifPresent(dba -> line(dba)
                    .ifPresent(
                            half -> write(columnOf(at), half / 2, half % 2 == 0 ? Mark.LOWER : Mark.UPPER, Style.BAR)));
        }
        for (int i = 0; i < points.size(); i++) {
            paintLabel(i, work);
        }
    }

    private int columns() {
        return (int) Math.floor(verseColumns * points.size());
    }

    private int columnOf(double at) {
        return (int) (at * verseColumns);
    }

    /** The heading, with the marks explained, and the scale. */
    private void paintHeading(Box box) {
        int x = frame.write(box.x(), box.y(), "dB(A)  ", Style.FAINT);
        x = frame.write(x, box.y(), frame.mark(Mark.LOWER) + frame.mark(Mark.UPPER), Style.BAR);
        x = frame.write(x, box.y(), " organ  ", Style.FAINT);
        x = frame.write(x, box.y(), frame.mark(Mark.DASH).repeat(2), Style.EDGE);
        x = frame.write(x, box.y(), " singers  ", Style.FAINT);
        frame.write(x, box.y(), frame.mark(Mark.SHADE).repeat(2) + " where it leads", Style.FAINT, box.end());
        for (int row = 0; row < plot.height(); row += Math.max(2, (plot.height() - 1) / 2)) {
            String level = Long.toString(Math.round((dba(2 * row) + dba(2 * row + 1)) / 2));
            frame.write(box.x(), y(row), level, Style.FAINT);
        }
    }

    /** The level in the middle of a half row, counted from below. */
    private double dba(int half) {
        return lowDb + (half + 0.5) * (highDb - lowDb) / (2 * plot.height());
    }

    /** The half row of a level, if it is one. */
    private Optional<Integer> line(double dba) {
        int half = (int) ((dba - lowDb) / (highDb - lowDb) * 2 * plot.height());
        return Double.isNaN(dba) ? Optional.empty() : Optional.of(Math.max(0, Math.min(half, 2 * plot.height() - 1)));
    }

    /** A level between the middles of the verses, level at each and sloping between. */
    private Optional<Double> level(double at, ToDoubleFunction<Point> levelOf) {
        int index = (int) at;
        double here = levelOf.applyAsDouble(points.get(index));
        double within = at - index;
        int beside = within < SLOPE ? index - 1 : within > 1 - SLOPE ? index + 1 : index;
        boolean isJoined = beside >= 0
                && beside < points.size()
                && points.get(beside).place().hymn()
                        == points.get(index).place().hymn();
        double other = isJoined ? levelOf.applyAsDouble(points.get(beside)) : here;
        double share = Math.max(0, SLOPE - Math.min(within, 1 - within)) / (2 * SLOPE);
        double level = Double.isNaN(other) ? here : here + (other - here) * share;
        return Double.isNaN(level) ? Optional.empty() : Optional.of(level);
    }

    private int y(int row) {
        return plot.y() + plot.height() - 1 - row;
    }

    private void write(int column, int row, Mark mark, Style style) {
        frame.put(plot.x() + column, y(row), mark, style);
    }

    /** The verdict and the label of a verse; of several hymns, the number of each under its first verse. */
    private void paintLabel(int index, PlanEdit work) {
        Point point = points.get(index);
        int left = plot.x() + (int) Math.ceil(index * verseColumns - 0.5);
        int right = plot.x() + (int) Math.ceil((index + 1) * verseColumns - 0.5);
        int marksY = plot.y() + plot.height();
        frame.write(
                (left + right - 1) / 2,
                marksY,
                ShortWords.mark(frame.marks(), point.estimate().balance()),
                ShortWords.style(point.estimate().balance().verdict()));
        boolean isOneHymn = points.get(0).place().hymn()
                == points.get(points.size() - 1).place().hymn();
        boolean here = point.place().equals(work.place());
        if (isOneHymn) {
            String label = Text.fit(point.verse().label(), right - left - 1, "");
            frame.write((left + right - Text.columns(label)) / 2, marksY + 1, label, here ? Style.STRONG : Style.TEXT);
        } else if (index == 0
                || points.get(index - 1).place().hymn() != point.place().hymn()) {
            Hymn hymn = work.plan().hymn(point.place());
            String name = hymn.number().isBlank() ? hymn.title() : hymn.number();
            int end = plot.x() + (int) (verseColumns * (index + hymn.verses().size())) - 1;
            boolean current = point.place().hymn() == work.place().hymn();
            String fitting = Text.fitWords(name, Math.min(end, plot.end()) - left, frame.mark(Mark.CUT));
            frame.write(left, marksY + 1, fitting, current ? Style.STRONG : Style.TEXT);
        }
        if (here) {
            frame.paint(left, marksY + (isOneHymn ? 1 : 0), right - left, Style.RESTING_CURSOR);
        }
    }
}
