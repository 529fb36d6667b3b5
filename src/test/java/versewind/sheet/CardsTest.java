package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.Verse;
import versewind.store.BadFile;

class CardsTest {

    private static Instrument organ;
    private static Registration soft;
    private static Registration loud;

    @BeforeAll
    static void open() throws BadFile {
        organ = Sheets.organ();
        soft = drawn("Open Diapason 8", "Principal 4");
        loud = drawn("Open Diapason 8", "Principal 4", "Fifteenth 2", "Mixture III")
                .toggleCoupler(0);
    }

    private static Registration drawn(String... great) {
        IndexSet stops = IndexSet.EMPTY;
        for (String label : great) {
            stops = stops.with(organ.stop(new StopName("Great", label)).orElseThrow());
        }
        return Registration.silent(organ).withStops(stops);
    }

    @Test
    void a_piston_is_set_once_however_often_it_is_used_and_boxes_do_not_matter() throws BadFile {
        Sheet sheet = Sheets.of(
                Sheets.hymn("1", Sheets.verse("V1", "G1", soft), Sheets.verse("V2", "G2", loud)),
                Sheets.hymn("2", Sheets.verse("V1", "G1", soft.withBox(1, BoxPosition.CLOSED))));
        List<PistonSetting> settings = sheet.pistons();
        assertThat(settings).extracting(PistonSetting::piston).containsExactly("G1", "G2");
        assertThat(settings.get(0).usedBy()).containsExactly("1 V1", "2 V1");
        assertThat(settings.get(0).levelWords()).isEqualTo("1");
        assertThat(settings.get(0).drawn().get(0).knobs()).containsExactly("Open Diapason 8", "Principal 4");
    }

    @Test
    void a_piston_that_is_used_for_two_registrations_needs_two_memory_levels() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "G1", soft), Sheets.verse("V2", "g1", loud)));
        assertThat(sheet.pistons()).extracting(PistonSetting::level).containsExactly(1, 2);
        assertThat(SheetPages.of(sheet).get(1).blocks())
                .filteredOn(SheetPage.Verse.class::isInstance)
                .extracting(block -> ((SheetPage.Verse) block).piston())
                .containsExactly("G1", "2/G1");
    }

    @Test
    void a_general_is_set_on_the_memory_level_that_its_name_says() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "G1", soft),
                Sheets.verse("V2", "2/G1", loud),
                Sheets.verse("V3", "G1", drawn("Principal 4"))));
        assertThat(sheet.pistons()).extracting(PistonSetting::piston).containsOnly("G1");
        assertThat(sheet.pistons()).extracting(PistonSetting::level).containsExactly(1, 2, 3);
    }

    @Test
    void whoever_pulls_stops_is_told_what_a_piston_that_there_is_not_leaves() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "G1", soft), Sheets.verse("V2", "G99", loud)));
        assertThat(sheet.turns()).extracting(Sheet.Turn::verse).containsExactly("1 V2");
    }

    @Test
    void a_memory_level_that_the_organ_does_not_have_is_told() {
        PistonSetting setting = new PistonSetting("G1", 9, true, List.of(), List.of());
        assertThat(setting.levelWords()).isEqualTo("9 (this organ has no such level)");
    }

    @Test
    void where_no_memory_level_is_left_both_verses_on_a_piston_say_so() throws BadFile {
        Verse[] verses = new Verse[9];
        for (int i = 0; i < verses.length; i++) {
            verses[i] = Sheets.verse("V" + (i + 1), "G1", soft.withStops(IndexSet.of(i)));
        }
        List<SheetPage> pages = SheetPages.of(Sheets.of(Sheets.hymn("1", verses)));
        List<SheetPage.Verse> set = pages.get(1).blocks().stream()
                .filter(SheetPage.Verse.class::isInstance)
                .map(SheetPage.Verse.class::cast)
                .toList();

        String clash = "G1 holds something else in 1 V%d, and there is no other memory level.";
        assertThat(set.get(0).blocks())
                .contains(new SheetPage.Line(SheetPage.Look.STILL, SheetPages.unbroken(clash.formatted(9))));
        assertThat(set.get(8).blocks().get(1)).asString().contains(SheetPages.unbroken(clash.formatted(1)));
        assertThat(set.get(8).piston()).isEqualTo("G1");
        assertThat(pages.get(0).toString())
                .contains(SheetPages.unbroken("G1 set otherwise in 1 V9: no memory level for that"));
    }

    @Test
    void each_piston_stands_unbroken_on_a_line_of_its_own_as_large_as_fits() throws BadFile {
        String html = SheetHtml.of(Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "Great 1, Swell 1", soft))));

        assertThat(html)
                .contains("style=\"font-size:1em\"><span class=\"apart\">piston </span>Great&#160;1</p>\n<p ")
                .contains("</span>Swell&#160;1</p>");
        assertThat(PageFit.pistonEm("G1")).isEqualTo(PageFit.PISTON_EM);
    }

    @Test
    void a_piston_named_after_a_division_sets_that_division_alone() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "Gre 2", loud)));
        assertThat(sheet.pistons().get(0).drawn())
                .extracting(DivisionLine::where)
                .containsExactly("Great");
    }

    @Test
    void whoever_pulls_stops_is_told_only_what_no_piston_and_no_foot_does() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "", soft),
                Sheets.verse("V2", "G2", loud),
                Sheets.verse("V3", "", loud.withBox(1, BoxPosition.CLOSED)),
                Sheets.verse("V4", "", soft)));
        List<Sheet.Turn> turns = sheet.turns();
        assertThat(turns).extracting(Sheet.Turn::verse).containsExactly("1 V1", "1 V4");
        assertThat(turns.get(1).changes().get(0).places())
                .contains(new ChangeRow.Placed("Great", List.of("Fifteenth 2", "Mixture III")));
        assertThat(turns.get(1).changes()).noneMatch(row -> row.kind() == ChangeRow.Kind.BOX);
    }

    @Test
    void without_pistons_and_movements_there_are_no_cards() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "", Registration.silent(organ))));
        assertThat(SheetHtml.of(sheet)).doesNotContain("class=\"card\"");
    }

    @Test
    void a_verse_is_compared_with_the_last_of_the_hymn_before() throws BadFile {
        Sheet sheet = Sheets.of(
                Sheets.hymn("1", Sheets.verse("V1", "", soft)), Sheets.hymn("2", Sheets.verse("V1", "", loud)));
        VerseSheet first = sheet.hymns().get(0).verses().get(0);
        VerseSheet second = sheet.hymns().get(1).verses().get(0);
        assertThat(first.before()).isEmpty();
        assertThat(second.before()).contains("V1");
        assertThat(second.changes().get(0).kind()).isEqualTo(ChangeRow.Kind.DRAW);
        assertThat(second.changes().get(0).places())
                .contains(new ChangeRow.Placed("Great", List.of("Fifteenth 2", "Mixture III")));
    }
}
