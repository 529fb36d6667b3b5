package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import versewind.organ.Family;
import versewind.stoplist.ReadCoupler;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadPistons;
import versewind.stoplist.ReadStop;
import versewind.stoplist.ReadTremulant;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;

/** A stop list that was read, as plain text: a table for every division, couplers, tremulants, what was not understood. */
final class StopListPage {

    private static final int NAME = 30;
    private static final int FEET = 8;
    private static final int RANKS = 5;
    private static final int FAMILY = 12;
    private static final int HOW = 18;

    private final Page page;

    private StopListPage(Page page) {
        this.page = page;
    }

    static String of(StopList list, String name, CharsetFallback lettering) {
        StopListPage text = new StopListPage(new Page(lettering));
        text.write(list, name);
        return text.page.text();
    }

    private void write(StopList list, String name) {
        page.line(name);
        page.line(counted(list.stops().count(), "stop") + ", "
                + counted(list.couplers().size(), "coupler") + ", "
                + counted(list.tremulants().size(), "tremulant"));
        list.divisions().forEach(this::division);
        section("Couplers", list.couplers().stream().map(StopListPage::coupler).toList());
        section(
                "Tremulants",
                list.tremulants().stream().map(StopListPage::tremulant).toList());
        pistons(list.pistons());
        unread("Not understood", list.doubts());
        unread(
                "Taken for notes",
                list.notUnderstood().stream()
                        .filter(each -> each.weight() == Unread.Weight.NOTE)
                        .toList());
    }

    private void pistons(ReadPistons pistons) {
        List<String> parts = new ArrayList<>();
        if (pistons.generals() > 0) {
            parts.add(counted(pistons.generals(), "general"));
        }
        pistons.divisionals().forEach((division, count) -> parts.add(division + " " + count));
        if (pistons.levels() > 0) {
            parts.add(counted(pistons.levels(), "memory level"));
        }
        section("Pistons", parts);
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private void division(ReadDivision division) {
        page.blank();
        String keyboard =
                division.manual().isPresent() ? "manual " + division.manual().getAsInt() : "pedal";
        String keys = division.keys().isPresent() ? ", " + division.keys().getAsInt() + " keys" : "";
        page.line(division.name() + ": " + keyboard + keys + (division.enclosed() ? ", in a box" : ""));
        for (ReadStop stop : division.stops()) {
            page.line("  " + page.left(stop.name(), NAME) + " "
                    + page.right(stop.feet() + (stop.supposed() ? "?" : ""), FEET) + " "
                    + page.left(ranks(stop), RANKS) + " "
                    + page.left(stop.family().word(), FAMILY) + " "
                    + page.left(stop.how().word(), HOW));
        }
    }

    private static String ranks(ReadStop stop) {
        boolean counts = stop.family().isCompound() || (stop.family() == Family.CELESTE && stop.ranks() > 1);
        return counts ? stop.ranks() + " rk" : "";
    }

    private static String coupler(ReadCoupler coupler) {
        return coupler.name() + (coupler.isWhole() ? "" : " (its divisions are not both in the list)");
    }

    private static String tremulant(ReadTremulant tremulant) {
        return tremulant.name() + ", for " + tremulant.division();
    }

    private void section(String head, List<String> entries) {
        if (!entries.isEmpty()) {
            page.blank();
            page.hanging(head + ": ", entries.stream().collect(Collectors.joining("; ")) + ".");
        }
    }

    private void unread(String head, List<Unread> lines) {
        if (lines.isEmpty()) {
            return;
        }
        page.blank();
        page.line(head + ":");
        lines.forEach(each -> page.hanging("  line " + each.line() + ": ", each.text() + " - " + each.why()));
    }
}
