package versewind.screen.organ;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import versewind.organ.Church;
import versewind.organ.NotationException;
import versewind.organ.Room;
import versewind.organ.RoomWords;
import versewind.schema.OrganDraft;
import versewind.schema.RoomFields;
import versewind.schema.RowKind;
import versewind.screen.state.Chooser;
import versewind.screen.state.FormBox;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.screen.toolkit.Text;

/** The room by choice: a kind of church, its size, what is in it and how it sounds; figures for those who have them. */
final class RoomChoice {

    private static final String AS_IT_IS = "as it is";
    private static final String FIGURES = "figures";
    private static final int SIZE = 0;
    private static final int FURNISHING = 1;
    private static final int CLAP = 2;

    /** Reverberation times that are off by less than this still fit. */
    private static final double LEAST_CHANGE = 0.05;

    private RoomChoice() {}

    /** Asks which kind of church it is; first whether it stays as it is, where that is known. */
    static State open(
            State state, Optional<Room> now, UnaryOperator<State> figures, BiFunction<State, Room, State> taken) {
        List<Chooser.Row> rows = Stream.of(
                        now.stream().map(room -> new Chooser.Row(AS_IT_IS, "as it is", words(room))),
                        Arrays.stream(Church.values())
                                .map(church -> new Chooser.Row(
                                        church.name(),
                                        church.word(),
                                        church.usual().words() + ", " + church.seconds() + " seconds")),
                        Stream.of(new Chooser.Row(
                                FIGURES, "volume, seats and distances in figures", "for those who have them")))
                .flatMap(each -> each)
                .toList();
        return state.open(Chooser.of("What is the room like?", rows, (id, chosen) -> switch (id) {
            case AS_IT_IS -> chosen.close().says("The room stays as it is.");
            case FIGURES -> figures.apply(chosen.close());
            default -> chosen.close().open(form(Church.valueOf(id), taken));
        }));
    }

    private static String words(Room room) {
        return Math.round(room.volumeM3()) + " cubic metres, " + room.seats() + " seats";
    }

    private static FormBox form(Church church, BiFunction<State, Room, State> taken) {
        return FormBox.of(
                "Room: " + church.word(),
                List.of(
                        FormBox.Field.of(
                                "Size",
                                church.usual().words(),
                                "small, large, 250 seats, 20 m long, 22 by 9 by 8 metres or 72 by 30 by 26 ft"),
                        FormBox.Field.of(
                                "Furnished", Church.Furnishing.PEWS.word(), "bare, pews or carpet; blank for pews"),
                        FormBox.Field.of(
                                "Clap",
                                "",
                                "seconds until a clap has died away in the empty church; leave blank to have it"
                                        + " estimated")),
                (form, closed) -> {
                    Room room = room(church, form);
                    return taken.apply(
                            closed.says(Text.capital(church.word()) + ", "
                                    + size(church, form).words() + "."),
                            room);
                });
    }

    private static Room room(Church church, FormBox form) {
        Church.Furnishing furnishing = form.isBlank(FURNISHING)
                ? Church.Furnishing.PEWS
                : Church.Furnishing.of(form.text(FURNISHING))
                        .orElseThrow(() -> new FormBox.Wrong(FURNISHING, "Furnished: enter bare, pews or carpet."));
        return church.room(size(church, form), furnishing, clap(form));
    }

    private static Church.Size size(Church church, FormBox form) {
        try {
            return RoomWords.size(church, form.text(SIZE));
        } catch (NotationException wrong) {
            throw new FormBox.Wrong(SIZE, "Size: " + wrong.getMessage());
        }
    }

    private static OptionalDouble clap(FormBox form) {
        if (form.isBlank(CLAP)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(RoomWords.clapS(form.text(CLAP)));
        } catch (NotationException wrong) {
            throw new FormBox.Wrong(CLAP, wrong.getMessage());
        }
    }

    /** Asks about reverberation times that no longer fit a volume that was changed. */
    static State afterVolume(State state, OrganDraft now, OrganDraft next, BiFunction<State, OrganDraft, State> taken) {
        OptionalDouble was = volumeM3(now);
        OptionalDouble is = volumeM3(next);
        if (!next.hasTimes() || was.isEmpty() || is.isEmpty()) {
            return state;
        }
        double factor = Church.ringing(was.getAsDouble(), is.getAsDouble());
        if (Math.abs(factor - 1) < LEAST_CHANGE) {
            return state;
        }
        String more = Math.round(Math.abs(factor - 1) * 100) + "% " + (factor > 1 ? "longer" : "shorter");
        return state.open(new Question(
                "With this volume the same surfaces would ring about " + more + ". Change the reverberation times too?",
                List.of(
                        new Question.Answer("Enter", "change them", asked -> taken.apply(asked, next.ringing(factor))),
                        new Question.Answer("Esc", "keep them, as they were measured", asked -> asked))));
    }

    private static OptionalDouble volumeM3(OrganDraft draft) {
        try {
            int row = draft.rows(RowKind.ROOM).findFirst().orElseThrow();
            double volumeM3 = Double.parseDouble(draft.lines().get(row).at(RoomFields.VOLUME));
            return volumeM3 > 0 ? OptionalDouble.of(volumeM3) : OptionalDouble.empty();
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }
}
