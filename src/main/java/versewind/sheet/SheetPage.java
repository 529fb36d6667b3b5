package versewind.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * One page of a sheet in words, before it is set as HTML or as text.
 *
 * @param kind what it is about
 * @param number the hymn's number; blank where there is none
 * @param title its heading
 * @param blocks from top to bottom
 */
public record SheetPage(Kind kind, String number, String title, List<Block> blocks) {

    /** What a page is about. */
    public enum Kind {
        /** The organ, for a deputy. */
        ORGAN,
        /** The service with levels and verdicts. */
        OVERVIEW,
        HYMN,
        REGISTRANT
    }

    /** Heads that are wider are broken into lines. */
    private static final double MOST_HEAD_EM = 9;

    public SheetPage {
        blocks = List.copyOf(blocks);
    }

    /** Number and title, without what is missing. */
    public String name() {
        return (number + "  " + title).strip();
    }

    /** Width of the heads of rows that look alike, in em of the rows: as much as the longest on the page needs. */
    double headEm(Look look) {
        double longest = blocks.stream()
                .flatMap(block -> block instanceof Verse verse ? verse.blocks().stream() : Stream.of(block))
                .flatMap(
                        block -> block instanceof Rows rows && rows.look() == look ? rows.rows().stream() : Stream.of())
                .mapToDouble(row -> PageFit.widthEm(row.head(), row.weight()))
                .max()
                .orElse(0);
        return Math.max(look.headEm(), Math.min(MOST_HEAD_EM, longest));
    }

    /** A part of a page. */
    public sealed interface Block permits Line, Rows, Verse, Curve {}

    /** A paragraph; nothing is set for a blank one. */
    public record Line(Look look, String text) implements Block {}

    /**
     * Rows with a head each; nothing is set where there are none.
     *
     * @param look how they are set
     * @param rows from top to bottom
     */
    public record Rows(Look look, List<Row> rows) implements Block {

        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A head with a text beside it.
     *
     * @param head a word or a name
     * @param text names are never parted from their pitch: a blank before that is U+00A0
     * @param weight how it stands out
     */
    public record Row(String head, String text, Weight weight) {

        static Row of(String head, String text) {
            return new Row(head, text, Weight.PLAIN);
        }
    }

    /** How much a row stands out from the others. */
    public enum Weight {
        PLAIN,
        STRONG,
        /** Stands over those that follow. */
        HEADING,
        /** Needs attention. */
        ATTENTION;

        /** What it is called in the style of a page. */
        String css() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A verse, which is never parted by the end of a page.
     *
     * @param label what it is called
     * @param piston the piston that sets it; blank for none
     * @param blocks from top to bottom
     */
    public record Verse(String label, String piston, List<Block> blocks) implements Block {

        public Verse {
            blocks = List.copyOf(blocks);
        }

        /** Its pistons, one by one. */
        List<String> pistons() {
            return piston.isBlank() ? List.of() : List.of(piston.split(", *"));
        }
    }

    /** The picture of the service; left out of a text, in which the levels stand in figures. */
    public record Curve(Chart chart) implements Block {}

    /** How a part is set: the size of its letters and the width of the heads of its rows. */
    public enum Look {
        DAY(1.1, 0),
        SETTING(1, 0),
        FACTS(1.15, 0),
        WHO(1, 0),
        STILL(1.35, 0),
        TOUCH(1, 0),
        NOTE(1, 0),
        KEY(0.85, 0),
        CAUTION(0.8, 0),
        MOVES(1.5, 4.6),
        /** What changes, where that is more than can be read in a breath. */
        MANY(1.1, 4.6),
        STOPS(1.1, 4.6),
        STEPS(0.9, 5),
        LEVELS(0.95, 4.4),
        SETUP(1, 6.4),
        PISTONS(0.95, 3.6),
        TURNS(1.25, 5.2);

        private final double em;
        private final double headEm;

        Look(double em, double headEm) {
            this.em = em;
            this.headEm = headEm;
        }

        /** Size of the letters, in em of the page. */
        double em() {
            return em;
        }

        /** Width of the heads of rows, in em of the rows; 0 for a paragraph. */
        double headEm() {
            return headEm;
        }

        /** True for rows set in two columns. */
        boolean isInColumns() {
            return this == LEVELS;
        }

        /** What it is called in the style of a page. */
        String css() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
