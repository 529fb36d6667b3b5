package versewind.screen;

/** Something on the stop jambs that can be drawn. */
sealed interface Item {

    /** A stop, by its index in the instrument. */
    record StopItem(int stop) implements Item {}

    /** A coupler, by its index in the instrument. */
    record CouplerItem(int coupler) implements Item {}

    /** A tremulant, by its index in the instrument. */
    record TremulantItem(int tremulant) implements Item {}
}
