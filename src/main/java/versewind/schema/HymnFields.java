package versewind.schema;

import static versewind.schema.VerseFields.boxed;
import static versewind.schema.VerseFields.unboxed;

import java.util.List;
import java.util.Optional;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.schema.Field.Layout;

/** The fields of a hymn. */
public final class HymnFields {
    /** Without its verses, as in a form and in a row of a spreadsheet. */
    public static final Table<Hymn> HEAD = Table.block("A hymn.", "tempo", HymnFields::hymn, HymnFields::of);

    public static final Field<Hymn, String> NUMBER = HEAD.text("number", "its number in the book");

    public static final Field<Hymn, String> TITLE = HEAD.add("title", Kinds.TEXT, "its title or first line");

    public static final Field<Hymn, String> TUNE = HEAD.text("tune", "name of the tune");
    public static final Field<Hymn, String> METRE = HEAD.text("metre", "as 8 7 8 7 D");
    public static final Field<Hymn, String> KEY = HEAD.text("key", "as G or e minor");

    public static final Field<Hymn, Optional<Integer>> TEMPO =
            HEAD.ifAny("tempo", Kinds.whole(Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO), "beats a minute");

    public static final Field<Hymn, String> NOTES =
            HEAD.text("notes", "notes for the desk").column("hymn notes");

    /** With its verses, as in a file. */
    public static final Table<Hymn> TABLE = Table.block(
            "A hymn.", "tempo", values -> hymn(values).withVerses(values.get(HymnFields.VERSES)), HymnFields::of);

    private static final Field<Hymn, List<Verse>> VERSES;

    static {
        TABLE.addAll(HEAD);
        VERSES = TABLE.add("verses", Kinds.Items.of(VerseFields.TABLE), "the verses, in the order they are played")
                .laid(Layout.BLOCK);
    }

    private HymnFields() {}

    private static Object of(Hymn hymn, String field) {
        return switch (field) {
            case "number" -> hymn.number();
            case "title" -> hymn.title();
            case "tune" -> hymn.tune();
            case "metre" -> hymn.metre();
            case "key" -> hymn.key();
            case "tempo" -> boxed(hymn.tempo());
            case "notes" -> hymn.notes();
            case "verses" -> hymn.verses();
            default -> throw Table.without(field);
        };
    }

    private static Hymn hymn(Values values) throws Refused {
        return new Hymn(
                values.get(NUMBER),
                values.get(TITLE),
                values.get(TUNE),
                values.get(METRE),
                values.get(KEY),
                unboxed(values.get(TEMPO)),
                values.get(NOTES),
                List.of());
    }
}
