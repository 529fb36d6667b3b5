package versewind.screen.organ;

import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import versewind.schema.DivisionFields;
import versewind.schema.DraftLine;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;
import versewind.screen.state.Chooser;
import versewind.screen.state.State;

/** A line that is added to an organ. */
final class NewLine {

    /** Keys of a new manual. */
    private static final String USUAL_KEYS = "58";

    private NewLine() {}

    /** The kind of a line to follow another. */
    static RowKind alike(RowKind part) {
        return switch (part) {
            case ORGAN -> RowKind.DIVISION;
            case DIVISION, STOP -> RowKind.STOP;
            case COUPLER, TREMULANT -> part;
            case PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> RowKind.SURFACE;
        };
    }

    static DraftLine of(RowKind part, OrganDraft now) {
        DraftLine blank = DraftLine.blank(part);
        return part == RowKind.DIVISION
                ? blank.with(
                                DivisionFields.KEYBOARD,
                                Integer.toString(now.divisions().size()))
                        .with(InstrumentFields.KEYS, USUAL_KEYS)
                : blank;
    }

    /** The kinds to choose from. */
    static Chooser kinds(BiFunction<RowKind, State, State> chosen) {
        List<Chooser.Row> kinds = Stream.of(RowKind.DIVISION, RowKind.COUPLER, RowKind.TREMULANT, RowKind.SURFACE)
                .map(kind -> new Chooser.Row(kind.name(), kind.word(), ""))
                .toList();
        return Chooser.of("Add", kinds, (kind, choosing) -> chosen.apply(RowKind.valueOf(kind), choosing));
    }
}
