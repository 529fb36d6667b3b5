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
                .contains(new Placed("Great", List.of("Fifteenth 2", "Mixture III")));
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
                .contains(new Placed("Great", List.of("Fifteenth 2", "Mixture III")));
    }
}
