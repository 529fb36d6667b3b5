package versewind.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.organ.Decimal;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;

/** Writes an instrument in the lines of a draft. */
final class DraftRows {
    private DraftRows() {}

    static List<DraftLine> of(Instrument organ) {
        List<DraftLine> lines = new ArrayList<>();
        lines.add(
                line(RowKind.ORGAN, organ.name(), organ.place(), organ.action().word(), dB(organ.trimDb())));
        int stop = 0;
        for (int d = 0; d < organ.divisions().size(); d++) {
            Division division = organ.divisions().get(d);
            lines.add(line(
                    RowKind.DIVISION,
                    d,
                    division.name(),
                    division.isPedal()
                            ? DraftLine.PEDAL
                            : Integer.toString(division.manual().getAsInt()),
                    Integer.toString(division.keys()),
                    division.isEnclosed() ? DraftLine.YES : "",
                    dB(division.box().map(SwellBox::trimDb).orElse(0.0)),
                    count(organ.pistons().divisionals().getOrDefault(division.name(), 0))));
            for (Stop each : division.stops()) {
                lines.add(stop(each, stop++));
            }
        }
        for (int i = 0; i < organ.couplers().size(); i++) {
            Coupler coupler = organ.couplers().get(i);
            String kind =
                    coupler.kind() == Coupler.Kind.UNISON ? "" : coupler.kind().word();
            lines.add(line(RowKind.COUPLER, i, coupler.name(), coupler.source(), coupler.keyboard(), kind));
        }
        for (int i = 0; i < organ.tremulants().size(); i++) {
            Tremulant tremulant = organ.tremulants().get(i);
            lines.add(line(RowKind.TREMULANT, i, tremulant.name(), tremulant.division()));
        }
        lines.add(line(
                RowKind.PISTONS,
                count(organ.pistons().generals()),
                count(organ.pistons().memoryLevels())));
        addRoom(lines, organ.room());
        return lines;
    }

    private static DraftLine stop(Stop stop, int index) {
        boolean counts = stop.family().isCompound() || stop.ranks() > 1;
        return line(
                RowKind.STOP,
                index,
                stop.name(),
                stop.footage().map(Object::toString).orElse(""),
                stop.family().word(),
                stop.pipe() == stop.family().usualPipe() ? "" : stop.pipe().word(),
                counts ? Integer.toString(stop.ranks()) : "",
                TypedNumbers.written(stop.composition()),
                dB(stop.trimDb()),
                stop.enclosure() == Stop.Enclosure.OUTSIDE_THE_BOX ? "no" : "",
                stop.borrowed().map(Object::toString).orElse(""));
    }

    private static void addRoom(List<DraftLine> lines, Room room) {
        lines.add(line(RowKind.ROOM, Decimal.of(room.volumeM3()), Integer.toString(room.seats())));
        Map<Integer, Double> times =
                room.reverberation() instanceof Room.MeasuredTimes measured ? measured.octaveS() : Map.of();
        lines.add(new DraftLine(
                RowKind.TIMES,
                OptionalInt.empty(),
                Room.OCTAVES_HZ.stream()
                        .map(octave -> times.containsKey(octave) ? Decimal.of(times.get(octave)) : "")
                        .toList()));
        Room.Distances distances = room.distances();
        lines.add(new DraftLine(
                RowKind.DISTANCES,
                OptionalInt.empty(),
                Stream.of(
                                distances.naveM(),
                                distances.farM(),
                                distances.choirM(),
                                distances.choirToNaveM(),
                                distances.consoleM())
                        .map(Decimal::of)
                        .toList()));
        room.reverberation().known().ifPresent(surfaces -> surfaces.list()
                .forEach(
                        surface -> lines.add(line(RowKind.SURFACE, surface.material(), Decimal.of(surface.areaM2())))));
    }

    private static DraftLine line(RowKind part, String... values) {
        return new DraftLine(part, OptionalInt.empty(), List.of(values));
    }

    private static DraftLine line(RowKind part, int origin, String... values) {
        return new DraftLine(part, OptionalInt.of(origin), List.of(values));
    }

    private static String dB(double trimDb) {
        return trimDb == 0 ? "" : Decimal.of(trimDb);
    }

    private static String count(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }
}
