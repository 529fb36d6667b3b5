package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.store.BadFile;

/** The sheet as a browser shows and prints it; skipped with a word where there is no Chromium. */
@Tag("slow")
class SheetInBrowserTest {

    /** Elements whose box goes beyond the window to the right. */
    private static final String TOO_WIDE = "[...document.body.querySelectorAll('*')]"
            + ".filter(e => !e.closest('.apart') && e.getBoundingClientRect().right > innerWidth + 0.5)"
            + ".map(e => e.tagName + ' ' + e.textContent.slice(0, 40))";

    /** The lowest contrast of any text with what lies behind it (WCAG 2.1, relative luminance). */
    private static final String LOWEST_CONTRAST = """
        (() => {
          const parts = c => c.match(/[\\d.]+/g).map(Number);
          const lum = c => { const l = parts(c).slice(0, 3).map(v => v / 255)
              .map(v => v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
            return 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2]; };
          const behind = e => { for (; e; e = e.parentElement) { const b = getComputedStyle(e).backgroundColor;
              const p = parts(b); if (p.length < 4 || p[3] > 0) return b; } return 'rgb(255, 255, 255)'; };
          let lowest = 21;
          for (const e of document.body.querySelectorAll('*')) {
            if (e.closest('.apart, title') || ![...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())) continue;
            const style = getComputedStyle(e);
            const ink = e.closest('svg') ? style.fill : style.color;
            const a = lum(ink), b = lum(behind(e));
            lowest = Math.min(lowest, (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05));
          }
          return lowest;
        })()\
        """;

    /** Puts a word of its own at the top and at the foot of every verse, to be found again on paper. */
    private static final String MARKED = """
        document.querySelectorAll('.verse').forEach((verse, i) => {
          for (const end of ['top', 'bottom']) {
            const mark = document.createElement('div');
            mark.textContent = end + i + 'x';
            verse.style.position = 'relative';
            verse.style.padding = '8px 0';
            mark.style = 'position:absolute;right:0;font:6px monospace;' + end + ':0';
            verse.append(mark);
          }
        })\
        """;

    @TempDir
    private static Path folder;

    private static Browser browser;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        assumeTrue(Browser.isPossible(), "chromium or pdftotext is not here, so no sheet can be looked at");
        browser = Browser.start(folder.resolve("profile"));
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private static void open(String plan, SheetOptions wishes) throws BadFile, IOException, InterruptedException {
        browser.show("screen", "light");
        browser.resize(800);
        Path file = Files.writeString(folder.resolve(plan + ".html"), SheetHtml.of(Sheets.shipped(plan, wishes)));
        browser.open(file);
    }

    @Test
    void it_stands_there_whole_without_a_script_without_the_network_and_without_a_word_on_the_console()
            throws BadFile, IOException, InterruptedException {
        open("harvest-festival", Sheets.LADDER);
        long verses = Sheets.shipped("harvest-festival", SheetOptions.USUAL).hymns().stream()
                .mapToLong(hymn -> hymn.verses().size())
                .sum();
        assertThat(browser.value("document.querySelectorAll('.verse').length").asLong())
                .isEqualTo(verses);
        assertThat(browser.value("document.scripts.length").asInt()).isZero();
        assertThat(browser.value("getComputedStyle(document.querySelector('h2')).fontWeight")
                        .asText())
                .isEqualTo("600");
        assertThat(browser.fetched()).hasSize(1).allMatch(address -> address.startsWith("file:"));
        assertThat(browser.complaints()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"harvest-festival", "easter-cathedral", "advent-candlelight"})
    void nothing_is_wider_than_a_telephone_or_a_leaf_of_a5(String plan)
            throws BadFile, IOException, InterruptedException {
        open(plan, Sheets.LADDER);
        browser.resize(360);
        assertThat(browser.value("document.documentElement.scrollWidth").asInt())
                .isLessThanOrEqualTo(360);
        assertThat(browser.value(TOO_WIDE)).isEmpty();
        browser.show("print", "light");
        browser.resize((int) ((148 - 24) / 25.4 * 96));
        assertThat(browser.value(TOO_WIDE)).isEmpty();
    }

    @Test
    void what_is_too_wide_would_be_found() throws BadFile, IOException, InterruptedException {
        open("ash-wednesday", Sheets.LARGE);
        browser.resize(360);
        browser.value("document.querySelector('h1').style.minWidth = '400px'");
        assertThat(browser.value(TOO_WIDE)).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void every_page_fits_one_leaf_of_a4_a5_and_letter(String plan) throws BadFile, IOException, InterruptedException {
        open(plan, SheetOptions.USUAL);
        int pages = browser.value("document.querySelectorAll('.page').length").asInt();
        for (double[] paper : new double[][] {{210, 297}, {148, 210}, {215.9, 279.4}}) {
            List<String> leaves = browser.printed(folder.resolve("leaves.pdf"), paper[0], paper[1]);
            assertThat(leaves).as(paper[0] + " mm").hasSize(pages + 1).last().isEqualTo("");
        }
    }

    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "A5, 148, 210"})
    void in_large_type_no_verse_is_parted_by_the_end_of_a_page(String paper, double widthMm, double heightMm)
            throws BadFile, IOException, InterruptedException {
        open("harvest-festival", Sheets.LARGE);
        int verses = browser.value("document.querySelectorAll('.verse').length").asInt();
        browser.value(MARKED);
        List<String> leaves = browser.printed(folder.resolve(paper + ".pdf"), widthMm, heightMm);
        assertThat(parted(leaves, verses)).isEmpty();
        assertThat(leaves.subList(0, leaves.size() - 1)).noneMatch(String::isBlank);
    }

    @Test
    void a_verse_that_is_parted_would_be_found() throws BadFile, IOException, InterruptedException {
        open("harvest-festival", Sheets.LARGE);
        int verses = browser.value("document.querySelectorAll('.verse').length").asInt();
        browser.value(MARKED);
        browser.value("document.querySelectorAll('.verse, .verse *').forEach(v => v.style.breakInside = 'auto')");
        assertThat(parted(browser.printed(folder.resolve("parted.pdf"), 148, 210), verses))
                .isNotEmpty();
    }

    /** The verses whose top and foot do not stand on one page. */
    private static List<Integer> parted(List<String> pages, int verses) {
        List<Integer> parted = new ArrayList<>();
        for (int verse = 0; verse < verses; verse++) {
            String top = "top" + verse + "x";
            String bottom = "bottom" + verse + "x";
            if (pages.stream().noneMatch(page -> page.contains(top) && page.contains(bottom))) {
                parted.add(verse);
            }
        }
        return parted;
    }

    @ParameterizedTest
    @CsvSource({"screen, light", "screen, dark", "print, light"})
    void every_text_stands_out_from_its_paper_seven_to_one(String medium, String scheme)
            throws BadFile, IOException, InterruptedException {
        open("harvest-festival", Sheets.LADDER);
        browser.show(medium, scheme);
        JsonNode paper = browser.value("getComputedStyle(document.body).backgroundColor");
        assertThat(paper.asText()).isEqualTo(scheme.equals("dark") ? "rgb(12, 12, 12)" : "rgb(255, 255, 255)");
        assertThat(browser.value(LOWEST_CONTRAST).asDouble()).isBetween(7.0, 21.0);
    }

    @Test
    void a_title_that_is_markup_is_shown_as_it_was_typed() throws BadFile, IOException, InterruptedException {
        String title = "</h2><script>document.title = 'caught'</script><img src=x onerror=alert(1)>";
        browser.open(Files.writeString(folder.resolve("odd.html"), SheetHtml.of(Sheets.odd(title))));
        assertThat(browser.value("document.querySelector('h2').textContent").asText())
                .isEqualTo(title);
        assertThat(browser.value("document.scripts.length + document.images.length")
                        .asInt())
                .isZero();
        assertThat(browser.complaints()).isEmpty();
    }
}
