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
    public static final Table<Hymn> HEAD = Table.block("A hymn.", "tempo", HymnFields::hymn);

    public static final Field<Hymn, String> NUMBER = HEAD.text("number", Hymn::number, "its number in the book");

    public static final Field<Hymn, String> TITLE =
            HEAD.add("title", Kinds.TEXT, Hymn::title, "its title or first line");

    public static final Field<Hymn, String> TUNE = HEAD.text("tune", Hymn::tune, "name of the tune");
    public static final Field<Hymn, String> METRE = HEAD.text("metre", Hymn::metre, "as 8 7 8 7 D");
    public static final Field<Hymn, String> KEY = HEAD.text("key", Hymn::key, "as G or e minor");

    public static final Field<Hymn, Optional<Integer>> TEMPO = HEAD.ifAny(
            "tempo",
            Kinds.whole(Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO),
            hymn -> boxed(hymn.tempo()),
            "beats a minute");

    public static final Field<Hymn, String> NOTES =
            HEAD.text("notes", Hymn::notes, "notes for the desk").column("hymn notes");

    /** With its verses, as in a file. */
    public static final Table<Hymn> TABLE =
            Table.block("A hymn.", "tempo", values -> hymn(values).withVerses(values.get(HymnFields.VERSES)));

    private static final Field<Hymn, List<Verse>> VERSES;

    static {
        TABLE.addAll(HEAD, hymn -> hymn);
        VERSES = TABLE.add(
                        "verses",
                        Kinds.Items.of(VerseFields.TABLE),
                        Hymn::verses,
                        "the verses, in the order they are played")
                .laid(Layout.BLOCK);
    }

    private HymnFields() {}

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
