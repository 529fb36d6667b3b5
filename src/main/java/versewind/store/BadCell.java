package versewind.store;

/** A cell of a spreadsheet that cannot be read; the message says why. */
final class BadCell extends Exception {
    private static final long serialVersionUID = 1L;

    private final CsvColumn column;

    BadCell(CsvColumn column, String problem) {
        super(problem, null, false, false);
        this.column = column;
    }

    CsvColumn column() {
        return column;
    }
}
