package versewind.screen;

import java.util.Locale;
import java.util.stream.Collectors;
import versewind.schema.DraftLine;
import versewind.schema.InstrumentFields;
import versewind.schema.RoomFields;
import versewind.schema.StopFields;

/** A row of an organ's draft in one line: its name, and in less weight what else is typed in it. */
final class DraftLineText {

    private DraftLineText() {}

    /** The name of what it describes. */
    static String first(DraftLine line) {
        return switch (line.part()) {
            case STOP, DIVISION, COUPLER, TREMULANT ->
                line.name().isBlank() ? "(unnamed " + line.part().word().toLowerCase(Locale.ROOT) + ")" : line.name();
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES -> line.label();
            case SURFACE -> {
                String material = line.at(RoomFields.MATERIAL);
                yield material.isBlank() ? line.part().word() : material;
            }
        };
    }

    /** What else is typed in it, in short. */
    static String second(DraftLine line) {
        return switch (line.part()) {
            case ORGAN -> line.at(InstrumentFields.PLACE);
            case DIVISION ->
                (line.isPedal() ? "pedal" : "manual " + line.at(InstrumentFields.KEYBOARD)) + ", "
                        + line.at(InstrumentFields.KEYS) + " keys"
                        + (line.read(InstrumentFields.IS_BOXED).orElse(false) ? ", swell box" : "");
            case STOP -> pitch(line.pitch(), line.at(StopFields.FEET));
            case COUPLER -> {
                String kind = line.at(InstrumentFields.PITCH);
                yield line.at(InstrumentFields.SOURCE) + " on " + line.at(InstrumentFields.PLAYED_FROM)
                        + (kind.isBlank() ? "" : ", " + kind);
            }
            case TREMULANT -> line.at(InstrumentFields.AFFECTED);
            case PISTONS -> {
                String generals = line.at(InstrumentFields.GENERALS);
                yield generals.isBlank() ? "" : generals + " general";
            }
            case ROOM -> line.at(RoomFields.VOLUME) + " m3, " + line.at(RoomFields.SEATS) + " seats";
            case TIMES -> joined(line) + " s";
            case DISTANCES -> joined(line) + " m";
            case SURFACE -> line.at(RoomFields.AREA) + " m2";
        };
    }

    private static String pitch(String pitch, String feet) {
        return pitch.equals(feet) || feet.isBlank() ? pitch : feet + "  " + pitch;
    }

    private static String joined(DraftLine line) {
        return line.values().stream().filter(text -> !text.isBlank()).collect(Collectors.joining(" "));
    }
}
