package versewind.sheet;

import versewind.sheet.SheetPage.Block;
import versewind.sheet.SheetPage.Look;

/**
 * The size of letters at which a page of the sheet fills one leaf of paper and no more, without a script: an estimate
 * from the number of letters, a little on the small side.
 *
 * <p>Checked against: {@code SheetInBrowserTest}, the shipped plans printed by a browser.
 *
 * @param paper the leaf
 */
record PageFit(Paper paper) {

    /** Widths and heights within the margins, in pt; A4 is as high as a US Letter, so that this fits too. */
    enum Paper {
        A4(527, 735, 7, 15),
        A5(363, 540, 5.5, 12);

        private final double widthPt;
        private final double heightPt;
        private final double leastPt;
        private final double mostPt;

        Paper(double widthPt, double heightPt, double leastPt, double mostPt) {
            this.widthPt = widthPt;
            this.heightPt = heightPt;
            this.leastPt = leastPt;
            this.mostPt = mostPt;
        }
    }

    /** Mean width of a letter in em: that of a wide face such as DejaVu Sans; an estimate. */
    private static final double LETTER_EM = 0.58;

    /** How much wider a bold letter is; an estimate. */
    private static final double BOLD = 1.18;

    /** Height of a line in em, as in the style. */
    private static final double LINE_EM = 1.2;

    static final double TITLE_EM = 1.6;
    static final double LABEL_EM = 1.5;
    static final double PISTON_EM = 2.6;
    private static final double LEAST_PISTON_EM = 0.8;
    /** Width of the column of labels and pistons. */
    static final double MARK_EM = 5.6;

    /** What the frame of a piston and the space after it take of that column. */
    private static final double MARK_GAP_EM = 0.7;

    private static final double GAP_EM = 0.3;
    private static final double HEAD_GAP_EM = 0.4;
    private static final double PADDING_EM = 0.7;
    private static final double STEP_PT = 0.25;

    /** Size of the letters of a piston: as large as its column takes on one line, in tenths. */
    static double pistonEm(String piston) {
        double fitting = (MARK_EM - MARK_GAP_EM) / widthEm(piston, SheetPage.Weight.STRONG);
        return Math.max(LEAST_PISTON_EM, Math.min(PISTON_EM, Math.floor(10 * fitting) / 10));
    }

    /** Size of the letters of a page in pt; the least for one that does not fit. */
    double sizePt(SheetPage page) {
        double size = paper.mostPt;
        while (size > paper.leastPt && heightPt(page, size) > paper.heightPt) {
            size -= STEP_PT;
        }
        return size;
    }

    private double heightPt(SheetPage page, double sizePt) {
        double widthEm = paper.widthPt / sizePt;
        double heightEm = lines(page.name(), widthEm, TITLE_EM);
        for (Block block : page.blocks()) {
            double blockEm = height(page, block, widthEm);
            heightEm += blockEm == 0 ? 0 : blockEm + GAP_EM;
        }
        return heightEm * sizePt;
    }

    private static double height(SheetPage page, Block block, double widthEm) {
        if (block instanceof SheetPage.Line line) {
            return line.text().isBlank()
                    ? 0
                    : lines(line.text(), widthEm, line.look().em());
        }
        if (block instanceof SheetPage.Rows rows) {
            return rows(rows, page.headEm(rows.look()), widthEm);
        }
        if (block instanceof SheetPage.Verse verse) {
            double mark = LINE_EM
                    * (LABEL_EM
                            + verse.pistons().stream()
                                    .mapToDouble(PageFit::pistonEm)
                                    .sum());
            double beside = verse.blocks().stream()
                    .mapToDouble(each -> height(page, each, widthEm - MARK_EM))
                    .sum();
            return Math.max(mark, beside) + PADDING_EM;
        }
        return widthEm * Chart.HEIGHT / Chart.WIDTH;
    }

    private static double rows(SheetPage.Rows rows, double headEm, double widthEm) {
        Look look = rows.look();
        double columnEm = look.isInColumns() ? widthEm / 2 - 1 : widthEm;
        double textEm = columnEm - (headEm + HEAD_GAP_EM) * look.em();
        double height = rows.rows().stream()
                .mapToDouble(row -> Math.max(
                        lines(row.head(), headEm * look.em(), look.em()),
                        lines(row.text(), textEm / width(row.weight()), look.em())))
                .sum();
        return look.isInColumns() ? height / 2 + LINE_EM : height;
    }

    /** Width of a text on one line, in em of its letters. */
    static double widthEm(String text, SheetPage.Weight weight) {
        return text.length() * LETTER_EM * width(weight);
    }

    /** Width of letters against plain ones. */
    private static double width(SheetPage.Weight weight) {
        return switch (weight) {
            case PLAIN -> 1;
            case STRONG, HEADING, ATTENTION -> BOLD;
        };
    }

    /** Height in em of a text that is broken into lines. */
    private static double lines(String text, double widthEm, double letterEm) {
        double letters = widthEm / (letterEm * LETTER_EM);
        return Math.max(1, Math.ceil(text.length() / letters)) * letterEm * LINE_EM;
    }
}
