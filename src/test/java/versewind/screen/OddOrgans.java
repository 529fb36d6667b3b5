package versewind.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;

/** OddOrgans as nobody builds them, but as files may hold them. */
public final class OddOrgans {

    private static final Room ROOM = new Room(
            800, 80, new Room.MeasuredTimes(List.of(1.5, 1.5, 1.5, 1.5, 1.5, 1.5)), new Room.Distances(8, 14, 5, 6, 2));

    private OddOrgans() {}

    /** A keyboard and nothing behind it. */
    public static Instrument withoutStops() {
        return organ("Silent", List.of(manual("Manual", 1, List.of())), List.of(), List.of());
    }

    /** Every name as long as a sermon. */
    public static Instrument withLongNames() {
        String name = "Unending and Everlasting ".repeat(12).strip();
        return organ(
                name,
                List.of(boxed(name, 1, List.of(flute(name), flute("M".repeat(120))))),
                List.of(new Coupler(name, name, name, Coupler.Kind.OCTAVE)),
                List.of(new Tremulant(name + " trembling", name)));
    }

    /** Names with characters that would move the cursor, turn the line around or take two columns. */
    static Instrument withStrangeNames() {
        Stop rightToLeft = flute("\u05E9\u05D9\u05E8 \u202E8");
        List<Stop> wide = List.of(flute("赞美诗歌赞美诗歌赞美诗歌赞"), flute("\uD83C\uDFB9 q\u0303"));
        return organ(
                "St \u202EOsyn\u0007",
                List.of(
                        boxed("主\u001B[2J音", 1, List.of(flute("Flo\u0308te\t"), rightToLeft)),
                        manual("赞美诗歌赞美诗歌赞美", 2, wide),
                        new Division(
                                "Pedal", OptionalInt.empty(), 30, Optional.empty(), List.of(flute("Sub\u0000bass")))),
                List.of(new Coupler("主 \u2192 Pedal\n", "主\u001B[2J音", "Pedal", Coupler.Kind.UNISON)),
                List.of(new Tremulant("~\u200F~", "赞美诗歌赞美诗歌赞美")));
    }

    private static Instrument organ(
            String name, List<Division> divisions, List<Coupler> couplers, List<Tremulant> tremulants) {
        return new Instrument(
                name, "Nowhere", Action.MECHANICAL, 0, divisions, couplers, tremulants, Pistons.NONE, ROOM);
    }

    private static Division manual(String name, int manual, List<Stop> stops) {
        return new Division(name, OptionalInt.of(manual), 56, Optional.empty(), stops);
    }

    private static Division boxed(String name, int manual, List<Stop> stops) {
        return new Division(name, OptionalInt.of(manual), 56, Optional.of(new SwellBox(0)), stops);
    }

    private static Stop flute(String name) {
        return Stop.of(name, "8", Family.FLUTE, Pipe.OPEN);
    }
}
