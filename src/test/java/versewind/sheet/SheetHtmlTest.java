package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Golden;
import versewind.Shipped;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.store.BadFile;

class SheetHtmlTest {

    private static Validator validator;

    @BeforeAll
    static void open() throws InterruptedException {
        validator = Validator.open();
    }

    @Test
    void the_sheets_of_the_shipped_plans_are_valid_html() throws BadFile, InterruptedException {
        for (String plan : Shipped.plans()) {
            assertThat(validator.complaints(SheetHtml.of(Sheets.shipped(plan, SheetOptions.USUAL))))
                    .as(plan)
                    .isEmpty();
        }
        assertThat(validator.complaints(SheetHtml.of(Sheets.shipped("harvest-festival", Sheets.LADDER))))
                .isEmpty();
        assertThat(validator.complaints(SheetHtml.of(Sheets.shipped("wedding", Sheets.CHANGES))))
                .isEmpty();
        assertThat(validator.complaints(SheetHtml.of(Sheets.shipped("easter-cathedral", Sheets.DEPUTY))))
                .isEmpty();
    }

    @Test
    void a_plan_without_hymns_and_one_without_verses_are_valid_html() throws BadFile, InterruptedException {
        assertThat(validator.complaints(SheetHtml.of(Sheets.of()))).isEmpty();
        assertThat(validator.complaints(SheetHtml.of(Sheets.of(Sheets.hymn("1")))))
                .isEmpty();
    }

    @Test
    void the_validator_finds_what_is_wrong() throws InterruptedException {
        assertThat(validator.complaints("<!DOCTYPE html><html lang=en><title>x</title><p><table></p>"))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\" onload=\"x",
                "' & ; &lt; </style> <!-- ]]>",
                "\u0000\u0007\u001b[31m\u007f\u009b",
                "\u202egnirts\u2066\u200f",
                "\ud800 \udfff \ufffe",
                "line\nline\r\nline\u2028line",
                "   ",
                "\u8b9a\u7f8e \u05e9\u05dc\u05d5\u05dd \ud83c\udfb5 e\u0301",
            })
    void whatever_is_typed_the_sheet_is_valid_html_in_plain_ascii(String word) throws BadFile, InterruptedException {
        String html = SheetHtml.of(Sheets.odd(word));
        assertThat(validator.complaints(html)).isEmpty();
        assertThat(html.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
        assertThat(html).doesNotContain("<script").doesNotContain("onload=\"x");
    }

    private static String text(String text) {
        return new HtmlWriter().text(text).toString();
    }

    private static String label(String label) {
        return text(SheetPages.unbroken(label));
    }

    @Test
    void letters_of_all_kinds_are_kept() {
        assertThat(text("R\u00e9cit \u8b9a")).isEqualTo("R&#233;cit &#35738;");
        assertThat(text("\ud83c\udfb5")).isEqualTo("&#127925;");
        assertThat(text("a\u202eb")).isEqualTo("a&#65533;b");
    }

    @Test
    void a_name_and_its_pitch_stay_together() {
        assertThat(label("Open Diapason 8")).isEqualTo("Open Diapason&#160;8");
        assertThat(label("Twelfth 2 2/3")).isEqualTo("Twelfth&#160;2&#160;2/3");
        assertThat(label("Mixture III")).isEqualTo("Mixture&#160;III");
        assertThat(label("Swell to Great")).isEqualTo("Swell to Great");
    }

    @Test
    void headings_go_down_one_step_at_a_time_and_the_picture_says_what_it_is() {
        String html = SheetHtml.of(Sheets.shipped("easter-cathedral", SheetOptions.USUAL));
        List<Integer> levels = new ArrayList<>();
        Matcher heading = Pattern.compile("<h([1-6])").matcher(html);
        while (heading.find()) {
            levels.add(Integer.valueOf(heading.group(1)));
        }
        assertThat(levels.get(0)).isEqualTo(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).isBetween(2, levels.get(i - 1) + 1);
        }
        assertThat(count(html, "<svg "))
                .isEqualTo(count(html, "role=\"img\""))
                .isEqualTo(count(html, "<title>[^<]*organ"))
                .isEqualTo(1);
    }

    private static long count(String html, String pattern) {
        return Pattern.compile(pattern).matcher(html).results().count();
    }

    /** Pages of a sheet by what they are about. */
    private static List<String> kinds(String html) {
        return Pattern.compile("<section class=\"page ([a-z]+)\"")
                .matcher(html)
                .results()
                .map(page -> page.group(1))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void the_service_has_one_page_and_every_hymn_another(String plan) {
        Sheet sheet = Sheets.shipped(plan, SheetOptions.USUAL);
        String html = SheetHtml.of(sheet);
        assertThat(kinds(html)).hasSize(sheet.hymns().size() + 1).startsWith("overview");
        assertThat(kinds(html).subList(1, kinds(html).size())).containsOnly("hymn");
        assertThat(html)
                .contains(".page + .page { margin-top: 0; padding-top: 0; border-top: 0; break-before: page; }");
        assertThat(count(html, "style=\"--a4:[0-9.]+pt;--a5:[0-9.]+pt;"))
                .isEqualTo(kinds(html).size());
    }

    @Test
    void for_a_deputy_the_organ_comes_first_and_the_registrants_list_last() {
        String html = SheetHtml.of(Sheets.shipped("ordinary-sunday", Sheets.DEPUTY));
        assertThat(kinds(html)).startsWith("organ", "overview", "hymn").endsWith("registrant");
        String first = html.substring(html.indexOf("<section"), html.indexOf("</section>"));
        assertThat(first)
                .contains("Action", "Couplers", "Enclosed", "Pistons", "Player", "Before")
                .contains("Pistons to set before the service");
    }

    @Test
    void the_piston_is_larger_than_what_changes_and_that_larger_than_all_else() {
        double moves = SheetPage.Look.MOVES.em();
        assertThat(PageFit.PISTON_EM).isGreaterThan(moves);
        assertThat(SheetPage.Look.values())
                .filteredOn(look -> look != SheetPage.Look.MOVES)
                .allMatch(look -> look.em() < moves);
    }

    @Test
    void levels_and_verdicts_stand_on_the_first_page_only() {
        String html = SheetHtml.of(Sheets.shipped("harvest-festival", SheetOptions.USUAL));
        String hymns = html.substring(html.indexOf("</section>"));
        assertThat(count(html, "in&#160;10")).isGreaterThan(10);
        assertThat(count(hymns, "in&#160;10|&#177;|<svg")).isZero();
    }

    @Test
    void long_names_of_divisions_have_room_beside_their_stops() {
        assertThat(count(SheetHtml.of(Sheets.shipped("wedding", SheetOptions.USUAL)), "--stops:[0-9.]+em;"))
                .isGreaterThan(3);
    }

    @Test
    void a_flat_and_a_sharp_are_signs() {
        assertThat(List.of("E flat", "E-flat", "Eb", "b flat minor", "F sharp", "d minor", "Ebony"))
                .extracting(Wording::key)
                .containsExactly("E\u266d", "E\u266d", "E\u266d", "b\u266d minor", "F\u266f", "d minor", "Ebony");
    }

    @Test
    void only_what_changes_leaves_the_stops_of_later_verses_out() {
        String whole = SheetHtml.of(Sheets.shipped("harvest-festival", SheetOptions.USUAL));
        Sheet sheet = Sheets.shipped("harvest-festival", Sheets.CHANGES);
        long lists = count(SheetHtml.of(sheet), "<ul class=\"stops\"");
        assertThat(lists).isLessThanOrEqualTo(sheet.hymns().size()).isLessThan(count(whole, "<ul class=\"stops\""));
    }

    private static Registration drawn(String typed) {
        try {
            return new RegistrationText(Sheets.organ()).parse(typed);
        } catch (NotationException wrong) {
            throw new AssertionError(wrong);
        }
    }

    @Test
    void a_small_sheet_reads_as_before() {
        Registration soft = drawn("Great: Open Diapason 8; Pedal: Bourdon 16; Swell closed");
        Registration loud = drawn("Great: all; couplers: Great to Pedal; Tremulant drawn");
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "G1", soft), Sheets.verse("V2", "", loud)));
        Golden.check("sheet/small.html", SheetHtml.of(sheet).replaceFirst("(?s)<style>.*</style>", "<style></style>"));
    }
}
