package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Pipe;
import versewind.schema.DraftLine;
import versewind.schema.Field;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;
import versewind.schema.OrganNames;
import versewind.schema.RowKind;
import versewind.schema.StopFields;

/** What goes without saying when a row of a draft is typed: words in full, and what the name of a stop says of it. */
public final class Autofill {
    private static final String TREMULANT = "Tremulant";

    private Autofill() {}

    /**
     * A row with its blanks taken away, the beginnings of words made whole, and what was left blank filled in where it
     * is known.
     *
     * @param draft the draft
     * @param at where in it the row stands
     * @param values what was typed
     */
    public static List<String> of(OrganDraft draft, int at, List<String> values) {
        RowKind part = draft.lines().get(at).part();
        OrganNames names = OrganNames.ofDivisions(draft.divisions());
        List<String> whole = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            whole.add(part.fields().get(i).completed(values.get(i), names));
        }
        DraftLine line = draft.lines().get(at).with(whole);
        DraftLine filled =
                switch (part) {
                    case STOP -> stop(draft, at, line);
                    case COUPLER -> coupler(line);
                    case TREMULANT -> tremulant(line);
                    case ORGAN, DIVISION, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> line;
                };
        return filled.values();
    }

    static DraftLine stop(OrganDraft draft, int at, DraftLine line) {
        Optional<StopKind> kind = Lexicon.kindOf(line.name());
        if (line.name().isEmpty() || kind.isEmpty() || !isBlank(line, StopFields.FAMILY)) {
            return line;
        }
        Family family = kind.get().family();
        Pipe pipe = kind.get().pipe();
        boolean inPedal = draft.divisionOf(at).filter(DraftLine::isPedal).isPresent();
        DraftLine known = line.with(StopFields.FAMILY, family.word());
        if (isBlank(line, StopFields.PIPE) && pipe != family.usualPipe() && pipe.isReed() == family.isReed()) {
            known = known.with(StopFields.PIPE, pipe.word());
        }
        return isBlank(line, StopFields.FEET) && !family.isCompound()
                ? known.with(StopFields.FEET, kind.get().usualFootage(inPedal).toString())
                : known;
    }

    private static boolean isBlank(DraftLine line, Field<?, ?> field) {
        return line.at(field).isEmpty();
    }

    private static DraftLine coupler(DraftLine line) {
        boolean isKnown = !isBlank(line, InstrumentFields.SOURCE) && !isBlank(line, InstrumentFields.PLAYED_FROM);
        if (!line.name().isEmpty() || !isKnown) {
            return line;
        }
        String joined = Coupler.joined(line.at(InstrumentFields.SOURCE), line.at(InstrumentFields.PLAYED_FROM));
        Coupler.Kind kind = line.read(InstrumentFields.PITCH).orElse(Coupler.Kind.UNISON);
        return line.with(InstrumentFields.COUPLER_NAME, kind.of(joined));
    }

    private static DraftLine tremulant(DraftLine line) {
        boolean isKnown = !isBlank(line, InstrumentFields.AFFECTED);
        return line.name().isEmpty() && isKnown ? line.with(InstrumentFields.TREMULANT_NAME, TREMULANT) : line;
    }
}
