package versewind.store;

import versewind.calibration.Calibration;
import versewind.calibration.MeterReading;
import versewind.organ.Instrument;
import versewind.organ.Trims;

/** Writes what an instrument's trims rest on. */
final class CalibrationWriter {
    private final Instrument instrument;
    private final DrawnWriter drawn;

    CalibrationWriter(Instrument instrument) {
        this.instrument = instrument;
        this.drawn = new DrawnWriter(instrument);
    }

    String calibration(Block block, Calibration calibration) {
        if (calibration.offsets().singersDb() != 0) {
            block.field("singers", Written.number(calibration.offsets().singersDb()));
        }
        if (calibration.offsets().roomDb() != 0) {
            block.field("room", Written.number(calibration.offsets().roomDb()));
        }
        block.field("before", before(block.inner(), calibration.before().orElseThrow()));
        Block readings = block.inner();
        calibration.kept().forEach(kept -> readings.row(reading(readings.inner(), kept)));
        return block.field("readings", readings.list()).object();
    }

    private String before(Block block, Trims before) {
        if (before.organDb() != 0) {
            block.field("trim", Written.number(before.organDb()));
        }
        Block stops = block.inner();
        Row boxes = new Row();
        boolean anyStop = false;
        for (int division = 0; division < instrument.divisions().size(); division++) {
            String name = instrument.divisions().get(division).name();
            Row ofDivision = new Row();
            for (int stop = 0; stop < instrument.stops().size(); stop++) {
                Instrument.Knob knob = instrument.stops().get(stop);
                if (knob.division() == division && before.stopsDb().get(stop) != 0) {
                    ofDivision.number(knob.name().label(), before.stopsDb().get(stop));
                }
            }
            if (!ofDivision.bare().isEmpty()) {
                stops.field(name, ofDivision.braced());
                anyStop = true;
            }
            if (before.boxesDb().get(division) != 0) {
                boxes.number(name, before.boxesDb().get(division));
            }
        }
        if (anyStop) {
            block.field("stops", stops.object());
        }
        if (!boxes.bare().isEmpty()) {
            block.field("boxes", boxes.braced());
        }
        return block.object();
    }

    private String reading(Block block, Calibration.Kept kept) {
        MeterReading reading = kept.reading();
        Row where = new Row();
        if (!reading.date().isBlank()) {
            where.text("date", reading.date());
        }
        where.text("seat", reading.seat().word());
        if (reading.present() > 0) {
            where.number("people", reading.present());
        }
        reading.sung().ifPresent(sung -> where.number("singers", sung.singers())
                .text("singing", sung.strength().word()));
        block.row(where.bare());
        drawn.hands(block, reading.hands());
        drawn.registration(block, reading.registration());
        block.row(new Row()
                .number("dBA", reading.dba())
                .number("before", kept.beforeDba())
                .number("after", kept.afterDba())
                .bare());
        return block.object();
    }
}
