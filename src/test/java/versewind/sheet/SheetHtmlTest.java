package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Golden;
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
        for (String plan : Sheets.SHIPPED) {
            assertThat(validator.complaints(SheetHtml.of(Sheets.shipped(plan, SheetOptions.USUAL))))
                    .as(plan)
                    .isEmpty();
        }
        assertThat(validator.complaints(SheetHtml.of(Sheets.shipped("harvest-festival", Sheets.LADDER))))
                .isEmpty();
        assertThat(validator.complaints(SheetHtml.of(Sheets.shipped("wedding", Sheets.CHANGES))))
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
        return text(SheetHtml.unbroken(label));
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
    void headings_go_down_one_step_at_a_time_and_every_table_and_picture_says_what_it_is() throws BadFile {
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
        assertThat(count(html, "<th ")).isEqualTo(count(html, "scope=\"(row|col)\""));
        assertThat(count(html, "<svg "))
                .isEqualTo(count(html, "role=\"img\""))
                .isEqualTo(count(html, "<title>[^<]*organ"));
        assertThat(count(html, "<svg ")).isGreaterThan(3);
    }

    private static long count(String html, String pattern) {
        return Pattern.compile(pattern).matcher(html).results().count();
    }

    @Test
    void only_what_changes_leaves_the_stops_of_later_verses_out() throws BadFile {
        String whole = SheetHtml.of(Sheets.shipped("harvest-festival", SheetOptions.USUAL));
        String changes = SheetHtml.of(Sheets.shipped("harvest-festival", Sheets.CHANGES));
        int hymns =
                Sheets.shipped("harvest-festival", SheetOptions.USUAL).hymns().size();
        assertThat(count(changes, "<table class=\"stops\"")).isEqualTo(hymns);
        assertThat(count(whole, "<table class=\"stops\"")).isEqualTo(count(whole, "<article"));
    }

    @Test
    void every_drawn_stop_stands_once_in_the_table_of_its_verse() throws BadFile {
        Sheet sheet = Sheets.shipped("wedding", SheetOptions.USUAL);
        List<String> tables = Pattern.compile("(?s)<table class=\"stops\">.*?</table>")
                .matcher(SheetHtml.of(sheet))
                .results()
                .map(MatchResult::group)
                .toList();
        List<VerseSheet> verses =
                sheet.hymns().stream().flatMap(hymn -> hymn.verses().stream()).toList();
        assertThat(tables).hasSameSizeAs(verses);
        for (int i = 0; i < tables.size(); i++) {
            int stops = verses.get(i).verse().registration().stops().size();
            int others = verses.get(i).verse().registration().couplers().size()
                    + verses.get(i).verse().registration().tremulants().size();
            String cells = tables.get(i).replaceAll("(?s)<caption>.*</caption>|<th.*?</th>|<span.*?</span>", "");
            long names = Pattern.compile(", |<td>").matcher(cells).results().count();
            assertThat(names).isEqualTo(stops + others);
        }
    }

    private static Registration drawn(String typed) throws BadFile {
        try {
            return new RegistrationText(Sheets.organ()).parse(typed);
        } catch (NotationException wrong) {
            throw new AssertionError(wrong);
        }
    }

    @Test
    void a_small_sheet_reads_as_before() throws BadFile {
        Registration soft = drawn("Great: Open Diapason 8; Pedal: Bourdon 16; Swell closed");
        Registration loud = drawn("Great: all; couplers: Great to Pedal; Tremulant drawn");
        Sheet sheet = Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "G1", soft), Sheets.verse("V2", "", loud)));
        Golden.check("sheet/small.html", SheetHtml.of(sheet).replaceFirst("(?s)<style>.*</style>", "<style></style>"));
    }
}
