package versewind.cli;

import java.util.Optional;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Room;
import versewind.organ.RoomWords;
import versewind.schema.OrganDraft;
import versewind.store.BadFile;
import versewind.store.OpenOrgan;

/** {@code versewind room INSTRUMENT [ROOM]}: the room an organ stands in. */
final class RoomCommand {

    private RoomCommand() {}

    static Command command() {
        return Command.of(
                        Subcommand.ROOM,
                        "Shows the room of an organ, or changes it to a room described in words or figures. Calibration"
                                + " and usual registrations are kept.",
                        RoomCommand::run)
                .operand("INSTRUMENT", Command.INSTRUMENT)
                .optionalOperand(
                        "ROOM",
                        "Parts between commas: village church, parish church, town church, cathedral, chapel or dry"
                                + " hall; small, large, a size in metres or feet, or m3; seats; bare, pews or carpet;"
                                + " in how many seconds a clap dies in the empty room. What is left out is estimated.")
                .statuses()
                .examples("versewind room st-tethwin \"parish church, 22 x 9 x 8, 180 seats, a clap dies in 2 s\"");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        OpenOrgan open = commands.library().openOrgan(typed.operand());
        Optional<String> described = typed.operand(1);
        if (described.isEmpty()) {
            return Reply.good(shown(open.organ().instrument().room(), commands));
        }
        Room room = RoomWords.room(described.get());
        Instrument next = OrganDraft.of(open.organ().instrument())
                .withRoom(room)
                .instrument()
                .orElseThrow(() -> new UsageException("No organ can stand in this room."));
        commands.library().keepVersion(open);
        Commands.requireSaved(
                commands.library()
                        .saveChangedOrgan(open, next, FormerNames.NONE, (done, of) -> true)
                        .saved(),
                "The room was not saved to " + open.path() + ": ",
                "Someone else has just changed " + open.path() + ". Nothing was written; try again.");
        return new Reply(Reply.GOOD, shown(room, commands), WrittenOver.organ(open, commands));
    }

    private static String shown(Room room, Commands commands) {
        Page page = new Page(commands.letters());
        page.paragraph(words(room));
        return page.text();
    }

    /** "4000 m3, 300 seats, rings 2.2 s at 1000 Hz". */
    private static String words(Room room) {
        String rings = room.reverberation() instanceof Room.MeasuredTimes times
                        && times.octaveS().containsKey(1000)
                ? ", rings " + times.octaveS().get(1000) + " s at 1000 Hz"
                : "";
        return Math.round(room.volumeM3()) + " m3, " + room.seats() + " seats" + rings + ", "
                + Math.round(room.distances().naveM()) + " m from the organ to the middle of the nave";
    }
}
