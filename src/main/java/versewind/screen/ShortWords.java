package versewind.screen;

import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.plan.Mode;
import versewind.plan.Verse;

/** The short words with which the screen names things where room is scarce. */
final class ShortWords {
    private ShortWords() {}

    /** What stands on a knob: name and pitch. */
    static String name(Instrument instrument, Item item) {
        if (item instanceof Item.StopItem stop) {
            return instrument.stops().get(stop.stop()).name().label();
        }
        if (item instanceof Item.CouplerItem coupler) {
            return instrument.couplers().get(coupler.coupler()).name();
        }
        return instrument
                .tremulants()
                .get(((Item.TremulantItem) item).tremulant())
                .name();
    }

    /** What stands on a knob, and in which division: "Great: Open Diapason 8". */
    static String fullName(Instrument instrument, Item item) {
        if (item instanceof Item.StopItem stop) {
            return instrument.stops().get(stop.stop()).name().toString();
        }
        if (item instanceof Item.TremulantItem tremulant) {
            return instrument.tremulants().get(tremulant.tremulant()).division() + ": " + name(instrument, item);
        }
        return name(instrument, item);
    }

    /** Whom the organ accompanies, in five letters at most. */
    static String who(Verse verse) {
        if (verse.kind().isOrganAlone() && verse.isPlayed() && verse.mode() != Mode.MELODY_SOLOED) {
            return "organ";
        }
        return verse.sungBy().shortWord();
    }

    /** How far a box stands open, in eight letters at most. */
    static String box(BoxPosition position) {
        return switch (position) {
            case CLOSED -> "box shut";
            case QUARTER -> "box 1/4";
            case HALF -> "box 1/2";
            case THREE_QUARTERS -> "box 3/4";
            case OPEN -> "box open";
        };
    }

    static int longestBox() {
        return "box open".length();
    }
}
