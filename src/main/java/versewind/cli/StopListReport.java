package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Count;
import versewind.organ.Family;
import versewind.stoplist.ReadCoupler;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadPistons;
import versewind.stoplist.ReadStop;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;

/**
 * A stop list that was read: a table for every division, couplers, tremulants, pistons, what was not understood.
 *
 * @param list the list
 * @param name what the organ is called
 */
record StopListReport(StopList list, String name) implements Report {

    private static final int[] COLUMNS = {30, -8, 5, 12, 18};

    @Override
    public void print(Page page) {
        page.line(name);
        page.line(Count.of(list.stops().count(), "stop") + ", "
                + Count.of(list.couplers().size(), "coupler") + ", "
                + Count.of(list.tremulants().size(), "tremulant"));
        list.divisions().forEach(division -> division(page, division));
        section(
                page,
                "Couplers",
                list.couplers().stream().map(StopListReport::coupler).toList());
        section(
                page,
                "Tremulants",
                list.tremulants().stream()
                        .map(each -> each.name() + ", for " + each.division())
                        .toList());
        pistons(page, list.pistons());
        unread(page, "Not understood", list.doubts());
        unread(
                page,
                "Read as notes",
                list.notUnderstood().stream()
                        .filter(each -> each.weight() == Unread.Weight.NOTE)
                        .toList());
    }

    private static void pistons(Page page, ReadPistons pistons) {
        List<String> parts = new ArrayList<>();
        if (pistons.generals() > 0) {
            parts.add(Count.of(pistons.generals(), "general"));
        }
        pistons.divisionals().forEach((division, count) -> parts.add(division + " " + count));
        if (pistons.levels() > 0) {
            parts.add(Count.of(pistons.levels(), "memory level"));
        }
        section(page, "Pistons", parts);
    }

    private static void division(Page page, ReadDivision division) {
        page.blank();
        String keyboard =
                division.manual().isPresent() ? "manual " + division.manual().getAsInt() : "pedal";
        String keys = division.keys().isPresent() ? ", " + division.keys().getAsInt() + " keys" : "";
        page.line(division.name() + ": " + keyboard + keys + (division.enclosed() ? ", in a swell box" : ""));
        for (ReadStop stop : division.stops()) {
            String feet = stop.feet() + (stop.supposed() ? "?" : "");
            page.line("  "
                    + page.cells(
                            " ",
                            COLUMNS,
                            stop.name(),
                            feet,
                            ranks(stop),
                            stop.family().word(),
                            stop.how().word()));
        }
    }

    private static String ranks(ReadStop stop) {
        boolean counts = stop.family().isCompound() || (stop.family() == Family.CELESTE && stop.ranks() > 1);
        return counts ? stop.ranks() + " rk" : "";
    }

    private static String coupler(ReadCoupler coupler) {
        return coupler.name() + (coupler.isWhole() ? "" : " (its divisions are not both in the list)");
    }

    private static void section(Page page, String head, List<String> entries) {
        if (!entries.isEmpty()) {
            page.blank();
            String all = String.join("; ", entries);
            page.hanging(head + ": ", all + (all.endsWith(".") ? "" : "."));
        }
    }

    private static void unread(Page page, String head, List<Unread> lines) {
        if (lines.isEmpty()) {
            return;
        }
        page.blank();
        page.line(head + ":");
        lines.forEach(each -> page.hanging("  line " + each.line() + ": ", each.text() + " - " + each.why()));
    }

    /** A footage is text, "2 2/3", and "" for a compound stop without one. */
    @Override
    public Json json() {
        Json divisionals = new Json();
        list.pistons().divisionals().forEach(divisionals::put);
        return new Json()
                .put("title", list.title())
                .list("divisions", list.divisions(), StopListReport::json)
                .list("couplers", list.couplers(), each -> new Json()
                        .put("name", each.name())
                        .put("source", each.source())
                        .put("keyboard", each.keyboard())
                        .put("kind", each.kind().word())
                        .put("line", each.line()))
                .list("tremulants", list.tremulants(), each -> new Json()
                        .put("name", each.name())
                        .put("division", each.division())
                        .put("line", each.line()))
                .put(
                        "pistons",
                        new Json()
                                .put("generals", list.pistons().generals())
                                .put("divisionals", divisionals)
                                .put("levels", list.pistons().levels()))
                .list("notUnderstood", list.notUnderstood(), each -> new Json()
                        .put("line", each.line())
                        .put("text", each.text())
                        .put("why", each.why()));
    }

    private static Json json(ReadDivision division) {
        Json json = new Json()
                .put("name", division.name())
                .put("pedal", division.isPedal())
                .put("enclosed", division.enclosed());
        division.manual().ifPresent(manual -> json.put("manual", manual));
        division.keys().ifPresent(keys -> json.put("keys", keys));
        return json.list("stops", division.stops(), stop -> new Json()
                .put("name", stop.name())
                .put("footage", stop.feet())
                .put("ranks", stop.ranks())
                .put("family", stop.family().word())
                .put("sure", stop.how().isSure())
                .put("how", stop.how().word())
                .put("supposed", stop.supposed())
                .put("remarks", stop.remarks())
                .put("line", stop.line()));
    }
}
