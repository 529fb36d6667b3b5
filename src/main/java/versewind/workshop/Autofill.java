package versewind.workshop;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Pipe;
import versewind.stoplist.Lexicon;
import versewind.stoplist.StopKind;

/** What goes without saying when a line is typed: words in full, and what the name of a stop says of it. */
public final class Autofill {
    private Autofill() {}

    /**
     * A line with its blanks taken away, the beginnings of words made whole, and what was left blank filled in where it is
     * known.
     *
     * @param draft the draft
     * @param at where in it the line stands
     * @param values what was typed
     */
    public static List<String> of(OrganDraft draft, int at, List<String> values) {
        DraftLine typed =
                draft.lines().get(at).with(values.stream().map(String::strip).toList());
        DraftLine line = typed;
        for (DraftField slot : typed.part().slots()) {
            line = line.with(slot, whole(draft, slot, line.at(slot)));
        }
        return switch (line.part()) {
            case STOP -> stop(draft, at, line).values();
            case COUPLER -> coupler(line).values();
            case TREMULANT ->
                (line.at(DraftField.NAME).isEmpty()
                                        && !line.at(DraftField.DIVISION).isEmpty()
                                ? line.with(DraftField.NAME, "Tremulant")
                                : line)
                        .values();
            case ORGAN, DIVISION, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> line.values();
        };
    }

    private static String whole(OrganDraft draft, DraftField slot, String text) {
        return switch (slot) {
            case ACTION -> whole(text, List.of(Action.values()), Action::word);
            case FAMILY -> whole(text, List.of(Family.values()), Family::word);
            case PIPE -> whole(text, List.of(Pipe.values()), Pipe::word);
            case KIND -> whole(text, List.of(Coupler.Kind.values()), Coupler.Kind::word);
            case BOX, STANDS -> whole(text, DraftLine.YES_NO, word -> word);
            case MANUAL -> whole(text, List.of(DraftLine.PEDAL), word -> word);
            case SOUNDS, KEYBOARD, DIVISION -> whole(text, draft.divisions(), word -> word);
            case NAME, PLACE, TRIM, KEYS, BOX_TRIM, DIVISIONALS, FEET, RANKS, BREAKS, FROM, GENERALS, LEVELS -> text;
            case VOLUME, SEATS, AT_125, AT_250, AT_500, AT_1000, AT_2000, AT_4000 -> text;
            case NAVE, FAR, CHOIR, CHOIR_TO_NAVE, CONSOLE, MATERIAL, AREA -> text;
        };
    }

    private static <T> String whole(String text, List<T> values, Function<T, String> word) {
        return Choice.of(text, values, word).map(word).orElse(text);
    }

    static DraftLine stop(OrganDraft draft, int at, DraftLine line) {
        Optional<StopKind> kind = Lexicon.kindOf(line.at(DraftField.NAME));
        if (line.at(DraftField.NAME).isEmpty()
                || kind.isEmpty()
                || !line.at(DraftField.FAMILY).isEmpty()) {
            return line;
        }
        Family family = kind.get().family();
        Pipe pipe = kind.get().pipe();
        boolean inPedal = draft.divisionOf(at).filter(DraftLine::isPedal).isPresent();
        DraftLine known = line.with(DraftField.FAMILY, family.word());
        if (line.at(DraftField.PIPE).isEmpty() && pipe != family.usualPipe() && pipe.isReed() == family.isReed()) {
            known = known.with(DraftField.PIPE, pipe.word());
        }
        return line.at(DraftField.FEET).isEmpty() && !family.isCompound()
                ? known.with(DraftField.FEET, kind.get().usualFootage(inPedal).toString())
                : known;
    }

    private static DraftLine coupler(DraftLine line) {
        String source = line.at(DraftField.SOUNDS);
        String keyboard = line.at(DraftField.KEYBOARD);
        if (!line.at(DraftField.NAME).isEmpty() || source.isEmpty() || keyboard.isEmpty()) {
            return line;
        }
        Coupler.Kind kind = Choice.of(line.at(DraftField.KIND), List.of(Coupler.Kind.values()), Coupler.Kind::word)
                .orElse(Coupler.Kind.UNISON);
        return line.with(DraftField.NAME, kind.of(Coupler.joined(source, keyboard)));
    }
}
