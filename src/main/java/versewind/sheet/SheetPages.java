package versewind.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Pistons;
import versewind.organ.Stop;
import versewind.plan.ServiceHeading;
import versewind.rules.StopChangesByDivision;
import versewind.sheet.SheetPage.Block;
import versewind.sheet.SheetPage.Kind;
import versewind.sheet.SheetPage.Line;
import versewind.sheet.SheetPage.Look;
import versewind.sheet.SheetPage.Row;
import versewind.sheet.SheetPage.Rows;
import versewind.sheet.SheetPage.Weight;

/** All that a sheet says, page by page: the service with its levels and verdicts, then a page a hymn. */
final class SheetPages {

    private static final String NO_BREAK = "\u00a0";
    /** More than can be moved by hand in a breath, and more than can be read in one. */
    private static final int MANY = 10;

    private static final String NONE = "none";

    private final Sheet sheet;

    private SheetPages(Sheet sheet) {
        this.sheet = sheet;
    }

    static List<SheetPage> of(Sheet sheet) {
        SheetPages words = new SheetPages(sheet);
        boolean isForDeputy = sheet.wishes().reader() == SheetOptions.Reader.DEPUTY;
        List<SheetPage> pages = new ArrayList<>();
        if (isForDeputy) {
            pages.add(words.organ());
        }
        pages.add(words.overview());
        sheet.hymns().forEach(hymn -> pages.add(words.hymn(hymn)));
        if (isForDeputy && !sheet.turns().isEmpty()) {
            pages.add(words.registrant());
        }
        return List.copyOf(pages);
    }

    private SheetPage overview() {
        ServiceHeading heading = sheet.heading();
        Chart chart = new Chart(sheet.hymns());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Line(Look.DAY, sheet.date()));
        blocks.add(new Line(Look.DAY, heading.summary().orElse("")));
        blocks.add(new Line(Look.SETTING, sheet.setting()));
        blocks.add(new Line(Look.NOTE, heading.notes()));
        blocks.add(new Rows(Look.SETUP, pistonsToSet()));
        if (chart.sounds()) {
            blocks.add(new SheetPage.Curve(chart));
        }
        blocks.add(new Rows(
                Look.LEVELS, sheet.hymns().stream().flatMap(SheetPages::levels).toList()));
        sheet.cautions().forEach(each -> blocks.add(new Line(Look.CAUTION, each)));
        return new SheetPage(Kind.OVERVIEW, "", heading.title().isBlank() ? "Sheet" : heading.title(), blocks);
    }

    /** The pistons, each with the verse at which its stops are listed. */
    private List<Row> pistonsToSet() {
        String pistons = sheet.pistons().stream()
                .map(each -> unbroken(
                        each.isBeyond()
                                ? each.piston() + " set otherwise in "
                                        + each.usedBy().get(0) + ": no memory level for that"
                                : each.name() + " set as in " + each.usedBy().get(0)))
                .collect(Collectors.joining(", "));
        return pistons.isEmpty() ? List.of() : List.of(Row.of("Pistons", pistons));
    }

    private static Stream<Row> levels(HymnSheet hymn) {
        return Stream.concat(
                Stream.of(new Row(hymn.hymn().number(), hymn.hymn().title(), Weight.HEADING)),
                hymn.verses().stream()
                        .map(verse -> new Row(
                                verse.verse().label(),
                                verse.levelWords() + ", "
                                        + Wording.verdict(verse.estimate().balance())
                                                .replace(" in 10", NO_BREAK + "in" + NO_BREAK + "10"),
                                verse.wantsAttention() ? Weight.ATTENTION : Weight.PLAIN)));
    }

    private SheetPage hymn(HymnSheet hymn) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Line(Look.FACTS, String.join(", ", hymn.facts())));
        blocks.add(new Line(Look.NOTE, hymn.hymn().notes()));
        if (hymn.verses().isEmpty()) {
            blocks.add(new Line(Look.STILL, "No verses yet."));
        }
        for (int i = 0; i < hymn.verses().size(); i++) {
            blocks.add(verse(
                    hymn.verses().subList(0, i),
                    hymn.verses().get(i),
                    piston(hymn, hymn.verses().get(i)),
                    clashes(hymn, hymn.verses().get(i)),
                    sheet.wishes().listsStopsOf(i)));
        }
        String title = hymn.hymn().title();
        return new SheetPage(Kind.HYMN, hymn.hymn().number(), title.isBlank() ? "-" : title, blocks);
    }

    /** The piston of a verse, with the memory level that it is to be set on where others have it too. */
    private String piston(HymnSheet hymn, VerseSheet verse) {
        String written = verse.verse().piston();
        List<String> set = sheet.pistons().stream()
                .filter(each -> each.usedBy().contains(hymn.placed(verse)))
                .map(each -> each.isBeyond() ? each.piston() : each.name())
                .toList();
        return !written.isBlank() && set.size() == 1 ? set.get(0) : written;
    }

    /** What other verses would have set on the pistons of a verse, where there is no memory level for both. */
    private String clashes(HymnSheet hymn, VerseSheet verse) {
        return sheet.pistons().stream()
                .filter(each -> each.usedBy().contains(hymn.placed(verse)))
                .flatMap(each -> sheet.pistons().stream().filter(each::clashesWith))
                .map(other -> unbroken(other.piston() + " holds something else in "
                        + other.usedBy().get(0) + ", and there is no other memory level."))
                .collect(Collectors.joining(" "));
    }

    private static SheetPage.Verse verse(
            List<VerseSheet> earlier, VerseSheet verse, String piston, String clashes, boolean listsStops) {
        String label = verse.verse().label();
        boolean isSetBefore =
                verse.before().isEmpty() && piston.isBlank() && verse.verse().isPlayed();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Line(Look.WHO, verse.playing()));
        blocks.add(new Line(Look.STILL, clashes));
        blocks.add(new Line(Look.STILL, still(verse, isSetBefore)));
        blocks.add(moves(verse.changes()));
        for (VerseSheet.LeftOut other : verse.leftOut()) {
            blocks.add(new Line(Look.STILL, other.words() + (other.changes().isEmpty() ? " no changes." : "")));
            blocks.add(moves(other.changes()));
        }
        if (listsStops && !isSetBefore) {
            blocks.addAll(stops(earlier, verse));
        }
        blocks.add(new Line(Look.TOUCH, String.join(" ", verse.played())));
        blocks.add(new Line(Look.NOTE, verse.verse().note()));
        blocks.add(new Rows(
                Look.STEPS,
                Stream.of(step("stronger", verse.stronger()), step("softer", verse.softer()))
                        .flatMap(List::stream)
                        .toList()));
        return new SheetPage.Verse(label.isBlank() ? "-" : label, piston, blocks);
    }

    /** Words before what is moved, or instead of it. */
    private static String still(VerseSheet verse, boolean isSetBefore) {
        if (isSetBefore) {
            return verse.changes().isEmpty() ? "Nothing drawn." : "Set before the service:";
        }
        boolean isStill = verse.verse().isPlayed()
                && verse.changes().isEmpty()
                && verse.verse().piston().isBlank();
        return isStill ? "No changes." : "";
    }

    private static Rows moves(List<ChangeRow> changes) {
        int knobs = changes.stream().mapToInt(ChangeRow::knobs).sum();
        return new Rows(
                knobs > MANY ? Look.MANY : Look.MOVES,
                changes.stream()
                        .map(row -> new Row(
                                row.kind().marked(),
                                row.words(),
                                row.kind() == ChangeRow.Kind.DRAW || row.kind() == ChangeRow.Kind.BOX
                                        ? Weight.STRONG
                                        : Weight.PLAIN))
                        .toList());
    }

    static String labels(Collection<String> names) {
        return names.stream().map(SheetPages::unbroken).collect(Collectors.joining(", "));
    }

    /** A name that is never parted from its pitch: "Open Diapason 8", "Twelfth 2 2/3". */
    static String unbroken(String label) {
        return label.replaceAll(" (?=(?:[0-9/]+|[IVX]+)(?: |$))", NO_BREAK);
    }

    /** All that is drawn, once on a page: later only where it is listed, unless it is that of the verse before. */
    private static List<Block> stops(List<VerseSheet> earlier, VerseSheet verse) {
        Knobs drawn = Knobs.drawn(verse.verse().registration());
        List<VerseSheet> played =
                earlier.stream().filter(other -> other.verse().isPlayed()).toList();
        List<VerseSheet> alike = played.stream()
                .filter(other -> Knobs.drawn(other.verse().registration()).equals(drawn))
                .toList();
        if (!verse.verse().isPlayed()) {
            return List.of();
        }
        if (alike.isEmpty()) {
            return List.of(new Rows(Look.STOPS, stops(verse.drawn())));
        }
        boolean isStill = verse.changes().isEmpty()
                && verse.verse().piston().isBlank()
                && heard(played.get(played.size() - 1)).equals(heard(verse));
        VerseSheet same = alike.get(0);
        String boxes = verse.drawn().stream()
                .filter(line -> same.drawn().stream()
                        .noneMatch(other -> other.where().equals(line.where())
                                && other.box().equals(line.box())))
                .flatMap(line -> line.box().map(box -> "; " + line.where() + " box " + box.word()).stream())
                .collect(Collectors.joining());
        String heard = heard(same).equals(heard(verse)) ? "" : "; heard here: " + String.join("; ", heard(verse));
        return isStill
                ? List.of()
                : List.of(new Line(Look.TOUCH, "Stops as in " + same.verse().label() + boxes + heard + "."));
    }

    /** What is drawn and sounds, where some of it waits on another manual: "Swell: Oboe 8". */
    private static List<String> heard(VerseSheet verse) {
        return verse.drawn().stream()
                .filter(line -> !line.waits() && !line.where().equals(StopChangesByDivision.COUPLERS))
                .map(line -> line.where() + ": " + labels(line.knobs()))
                .toList();
    }

    private static List<Row> stops(List<DivisionLine> drawn) {
        return drawn.isEmpty()
                ? List.of(Row.of("", "Nothing drawn."))
                : drawn.stream()
                        .map(line -> Row.of(
                                line.where(),
                                labels(line.knobs())
                                        + line.box()
                                                .map(box -> " (box " + box.word() + ")")
                                                .orElse("")
                                        + (line.waits() ? " (" + Wording.WAITS + ")" : "")))
                        .toList();
    }

    private static List<Row> step(String way, List<VerseSheet.Step> steps) {
        return steps.isEmpty()
                ? List.of()
                : List.of(Row.of(way, steps.stream().map(SheetPages::step).collect(Collectors.joining("; then "))));
    }

    private static String step(VerseSheet.Step step) {
        return byHand(step.changes()) + " (" + step.changeWords().replace(" ", NO_BREAK) + ")";
    }

    /** "put in Great: Mixture III; draw Swell: Oboe 8". */
    private static String byHand(List<ChangeRow> changes) {
        return changes.stream()
                .map(row -> row.kind().word() + " " + row.words())
                .collect(Collectors.joining("; "));
    }

    private SheetPage organ() {
        Instrument organ = sheet.organ();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Line(
                Look.SETTING,
                Stream.of(sheet.heading().title(), sheet.date())
                        .filter(each -> !each.isBlank())
                        .collect(Collectors.joining(", "))));
        List<Row> rows = new ArrayList<>();
        organ.divisions().forEach(division -> rows.add(Row.of(keyboard(division), labelled(division))));
        rows.add(Row.of("Action", action(organ)));
        rows.add(Row.of("Couplers", listed(labels(organ.couplerNames()))));
        rows.add(Row.of("Enclosed", listed(boxes(organ))));
        rows.add(Row.of(
                "Tremulant",
                listed(organ.tremulants().stream()
                        .map(each -> each.name() + " (" + each.division() + ")")
                        .collect(Collectors.joining(", ")))));
        rows.add(Row.of("Pistons", pistons(organ)));
        rows.add(Row.of("Player", player()));
        rows.add(Row.of("Before", firstSetting()));
        blocks.add(new Rows(Look.SETUP, rows));
        if (!sheet.pistons().isEmpty()) {
            blocks.add(new Line(Look.STILL, "Pistons to set before the service"));
            blocks.add(new Rows(
                    Look.PISTONS,
                    sheet.pistons().stream()
                            .map(each -> Row.of(each.piston(), setting(each)))
                            .toList()));
        }
        return new SheetPage(Kind.ORGAN, "", organ.toString(), blocks);
    }

    private static String listed(String names) {
        return names.isEmpty() ? NONE : names;
    }

    private static String keyboard(Division division) {
        return division.isPedal() ? "Pedal" : "Manual " + division.manual().getAsInt();
    }

    private static String labelled(Division division) {
        return division.name() + ", " + division.keys() + " keys: "
                + labels(division.stops().stream()
                        .map(stop -> stop.label()
                                + stop.borrowed()
                                        .map(lender -> " (pipes of " + lender + ")")
                                        .orElse(""))
                        .toList());
    }

    private static String action(Instrument organ) {
        return switch (organ.action()) {
            case MECHANICAL -> "mechanical: a coupler also works the couplers of the keyboard it joins";
            case ELECTRIC -> "electric: a coupler does not work the couplers of the keyboard it joins";
        };
    }

    private static String boxes(Instrument organ) {
        return organ.divisions().stream()
                .filter(Division::isEnclosed)
                .map(division -> division.name() + outside(division))
                .collect(Collectors.joining(", "));
    }

    private static String outside(Division division) {
        List<String> outside = division.stops().stream()
                .filter(stop -> !division.encloses(stop))
                .map(Stop::label)
                .toList();
        return outside.isEmpty() ? "" : " (not " + labels(outside) + ")";
    }

    private static String pistons(Instrument organ) {
        Pistons pistons = organ.pistons();
        if (!pistons.any()) {
            return "none: every change is made by hand";
        }
        List<String> all = new ArrayList<>();
        if (pistons.generals() > 0) {
            all.add("generals G1 to G" + pistons.generals());
        }
        pistons.divisionals().forEach((name, count) -> all.add(name + " 1 to " + count));
        int levels = pistons.memoryLevels();
        String couplers = pistons.divisionals().isEmpty()
                ? ""
                : pistons.setsCouplers() ? "; divisionals set couplers" : "; divisionals leave couplers alone";
        return String.join(", ", all) + couplers + "; " + levels + (levels == 1 ? " memory level" : " memory levels")
                + "; boxes stay";
    }

    private String player() {
        ServiceHeading heading = sheet.heading();
        return heading.player().word() + "; one change by hand takes "
                + String.format(Locale.ROOT, "%.1f", heading.moveS()) + " s";
    }

    /** What the first verse that is played needs. */
    private String firstSetting() {
        return sheet.hymns().stream()
                .flatMap(hymn -> hymn.verses().stream())
                .filter(verse -> verse.verse().isPlayed())
                .findFirst()
                .map(verse -> Stream.of(
                                verse.verse().piston().isBlank()
                                        ? ""
                                        : "press " + verse.verse().piston(),
                                byHand(verse.changes()))
                        .filter(each -> !each.isBlank())
                        .collect(Collectors.joining("; ")))
                .filter(each -> !each.isBlank())
                .orElse(NONE);
    }

    private static String setting(PistonSetting piston) {
        String drawn = piston.drawn().isEmpty()
                ? "nothing"
                : piston.drawn().stream()
                        .map(line -> line.where() + ": " + labels(line.knobs()))
                        .collect(Collectors.joining("; "));
        String level = piston.level() == 1 ? "" : "memory level " + piston.levelWords() + ": ";
        return level + drawn + ". For " + String.join(", ", piston.usedBy()) + ".";
    }

    private SheetPage registrant() {
        return new SheetPage(
                Kind.REGISTRANT,
                "",
                "For the registrant",
                List.of(new Rows(
                        Look.TURNS,
                        sheet.turns().stream()
                                .map(turn -> Row.of(turn.verse(), byHand(turn.changes())))
                                .toList())));
    }
}
