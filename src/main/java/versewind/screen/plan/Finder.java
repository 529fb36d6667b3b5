package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Instrument;
import versewind.plan.Sought;

/** Finds knobs by parts of their names. */
final class Finder {

    private Finder() {}

    /** The knobs whose full names hold every word typed, those first whose own name begins with it. */
    static List<Integer> fitting(Instrument instrument, List<Item> items, String typed) {
        String plain = Sought.plain(typed).strip();
        if (plain.isEmpty()) {
            return List.of();
        }
        Sought sought = Sought.of(typed);
        List<Integer> beginning = new ArrayList<>();
        List<Integer> holding = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (Sought.plain(Item.name(instrument, items.get(i))).startsWith(plain)) {
                beginning.add(i);
            } else if (sought.isIn(Item.fullName(instrument, items.get(i)))) {
                holding.add(i);
            }
        }
        beginning.addAll(holding);
        return beginning;
    }
}
