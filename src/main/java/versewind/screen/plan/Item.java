package versewind.screen.plan;

import versewind.organ.Instrument;

/** Something on the stop jambs that can be drawn. */
public sealed interface Item {

    /** A stop, by its index in the instrument. */
    record StopItem(int stop) implements Item {}

    /** A coupler, by its index in the instrument. */
    record CouplerItem(int coupler) implements Item {}

    /** A tremulant, by its index in the instrument. */
    record TremulantItem(int tremulant) implements Item {}

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
}
