package versewind.store;

import java.nio.charset.StandardCharsets;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;

/** Writes an instrument's file. */
final class InstrumentWriter {
    private InstrumentWriter() {}

    /** The bytes of the file of an instrument that was never calibrated. */
    static byte[] bytes(Instrument instrument) {
        return bytes(KnownOrgan.of(instrument));
    }

    /** The bytes of the file. */
    static byte[] bytes(KnownOrgan organ) {
        Instrument instrument = organ.instrument();
        Block file = Block.file();
        file.field("format", Written.number(Format.NUMBER));
        file.text("name", instrument.name());
        file.text("place", instrument.place());
        file.text("action", instrument.action().word());
        if (instrument.trimDb() != 0) {
            file.field("trim", Written.number(instrument.trimDb()));
        }
        file.field("room", room(file.inner(), instrument.room()));
        Block divisions = file.inner();
        for (Division division : instrument.divisions()) {
            divisions.row(division(divisions.inner(), division));
        }
        file.field("divisions", divisions.list());
        if (!instrument.couplers().isEmpty()) {
            Block couplers = file.inner();
            instrument.couplers().forEach(each -> couplers.row(coupler(each)));
            file.field("couplers", couplers.list());
        }
        if (!instrument.tremulants().isEmpty()) {
            Block tremulants = file.inner();
            instrument.tremulants().forEach(each -> tremulants.row(tremulant(each)));
            file.field("tremulants", tremulants.list());
        }
        if (instrument.pistons().any()) {
            file.field("pistons", pistons(instrument));
        }
        if (!organ.former().isNone()) {
            file.field("formerly", FormerlyWriter.names(file.inner(), organ.former()));
        }
        if (!organ.calibration().isNone()) {
            file.field("calibration", new CalibrationWriter(instrument).calibration(file.inner(), organ.calibration()));
        }
        return (file.object() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String room(Block block, Room room) {
        block.field("volume", Written.number(room.volumeM3()));
        block.field("seats", Written.number(room.seats()));
        if (room.reverberation() instanceof Room.MeasuredTimes measured) {
            Row times = new Row();
            measured.octaveS().forEach((octave, timeS) -> times.add(octave.toString(), Written.decimal(timeS)));
            block.field("reverberation", times.braced());
        }
        room.reverberation().known().ifPresent(surfaces -> {
            Block list = block.inner();
            for (Room.Surface surface : surfaces.list()) {
                list.row(new Row()
                        .text("material", surface.material())
                        .number("area", surface.areaM2())
                        .braced());
            }
            block.field("surfaces", list.list());
        });
        Room.Distances distances = room.distances();
        block.field(
                "distances",
                new Row()
                        .number("nave", distances.naveM())
                        .number("far", distances.farM())
                        .number("choir", distances.choirM())
                        .number("choir to nave", distances.choirToNaveM())
                        .number("console", distances.consoleM())
                        .braced());
        return block.object();
    }

    private static String division(Block block, Division division) {
        block.text("name", division.name());
        if (division.isPedal()) {
            block.field("pedal", "true");
        } else {
            block.field("manual", Written.number(division.manual().getAsInt()));
        }
        block.field("keys", Written.number(division.keys()));
        division.box().ifPresent(box -> block.field("box", box(box)));
        Block stops = block.inner();
        division.stops().forEach(stop -> stops.row(stop(stops, stop)));
        return block.field("stops", stops.list()).object();
    }

    private static String box(SwellBox box) {
        return new Row().trim(box.trimDb()).braced();
    }

    /** A stop stands on one line, its composition a break a line where it is too long. */
    private static String stop(Block stops, Stop stop) {
        Row row = new Row().text("name", stop.name());
        stop.footage().ifPresent(feet -> row.text("feet", feet.toString()));
        if (stop.ranks() > 1) {
            row.number("ranks", stop.ranks());
        }
        row.text("family", stop.family().word());
        if (stop.pipe() != stop.family().usualPipe()) {
            row.text("pipe", stop.pipe().word());
        }
        stop.borrowed().ifPresent(from -> row.text("from", from.toString()));
        row.trim(stop.trimDb());
        if (stop.enclosure() == Stop.Enclosure.OUTSIDE_THE_BOX) {
            row.add("outside the box", "true");
        }
        if (stop.composition().isEmpty()) {
            return row.braced();
        }
        String before = row.bare();
        String breaks = String.join(
                ", ",
                stop.composition().stream().map(InstrumentWriter::mixtureBreak).toList());
        String oneLine = row.add("composition", "[" + breaks + "]").braced();
        if (stops.holds(oneLine)) {
            return oneLine;
        }
        Block list = stops.inner();
        stop.composition().forEach(each -> list.row(mixtureBreak(each)));
        return "{" + before + ", " + new Row().add("composition", list.list()).bare() + "}";
    }

    private static String mixtureBreak(MixtureBreak part) {
        return new Row()
                .text("from", KeyName.of(part.fromKey()))
                .add(
                        "feet",
                        Row.list(part.pitches().stream().map(Object::toString).toList()))
                .braced();
    }

    private static String coupler(Coupler coupler) {
        Row row = new Row()
                .text("name", coupler.name())
                .text("source", coupler.source())
                .text("keyboard", coupler.keyboard());
        if (coupler.kind() != Coupler.Kind.UNISON) {
            row.text("kind", coupler.kind().word());
        }
        return row.braced();
    }

    private static String tremulant(Tremulant tremulant) {
        return new Row()
                .text("name", tremulant.name())
                .text("division", tremulant.division())
                .braced();
    }

    private static String pistons(Instrument instrument) {
        Pistons pistons = instrument.pistons();
        Row row = new Row();
        if (pistons.generals() > 0) {
            row.number("generals", pistons.generals());
        }
        if (!pistons.divisionals().isEmpty()) {
            Row divisionals = new Row();
            for (Division division : instrument.divisions()) {
                if (pistons.divisionals().containsKey(division.name())) {
                    divisionals.number(division.name(), pistons.divisionals().get(division.name()));
                }
            }
            row.add("divisionals", divisionals.braced());
        }
        return row.number("memory levels", pistons.memoryLevels()).braced();
    }
}
