package versewind.store;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The columns of a plan as a spreadsheet: those of the service, of the hymn, of the verse. */
enum CsvColumn {
    SERVICE("service"),
    DATE("date"),
    INSTRUMENT("instrument"),
    PEOPLE("people"),
    SECONDS_A_MOVE(PlanReader.SECONDS_A_MOVE),
    SERVICE_NOTES("service notes"),
    HYMN("hymn"),
    NUMBER("number"),
    TITLE("title"),
    TUNE("tune"),
    METRE("metre"),
    KEY("key"),
    TEMPO("tempo"),
    HYMN_NOTES("hymn notes"),
    KIND("kind"),
    LABEL("label"),
    MODE("mode"),
    SINGING("singing"),
    SINGERS("singers"),
    HANDS("hands"),
    RIGHT("right"),
    LEFT("left"),
    STOPS("stops"),
    COUPLERS("couplers"),
    BOXES("boxes"),
    TREMULANTS("tremulants"),
    PISTON("piston"),
    NOTE("note"),
    MOOD("mood"),
    ALWAYS("always"),
    NEVER("never"),
    SILENCED("silenced"),
    HEARD("heard"),
    PRESENT("present");

    /** The same in every row of a plan. */
    static final List<CsvColumn> OF_SERVICE = List.of(SERVICE, DATE, INSTRUMENT, PEOPLE, SECONDS_A_MOVE, SERVICE_NOTES);

    /** The same in every row of a hymn. */
    static final List<CsvColumn> OF_HYMN = List.of(NUMBER, TITLE, TUNE, METRE, KEY, TEMPO, HYMN_NOTES);

    /** Those without which nothing can be read. */
    static final List<CsvColumn> NEEDED = List.of(SERVICE, INSTRUMENT, PEOPLE, HYMN, TITLE, KIND, MODE, STOPS);

    private final String head;

    CsvColumn(String head) {
        this.head = head;
    }

    /** What stands over it. */
    String head() {
        return head;
    }

    static List<String> heads() {
        return Arrays.stream(values()).map(CsvColumn::head).toList();
    }

    static Optional<CsvColumn> of(String head) {
        return Arrays.stream(values())
                .filter(column -> column.head.equalsIgnoreCase(head.strip()))
                .findFirst();
    }
}
