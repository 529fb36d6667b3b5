package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.VerseKind;
import versewind.plan.Verses;

/** Screens that were looked at and found good: the characters, then a letter for the style of every cell. */
class ScreenGoldenTest {

    private record Case(String name, Desk desk) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> screens() {
        return Stream.of(
                new Case("harvest-80x24", Desk.with("harvest-festival", 80, 24)),
                new Case(
                        "harvest-120x40", Desk.with("harvest-festival", 120, 40).press("n")),
                new Case("harvest-60x18", Desk.with("harvest-festival", 60, 18).press("n")),
                new Case("sunday-80x24", Desk.with("ordinary-sunday", 80, 24).press("n")),
                new Case("wedding-80x24", Desk.with("wedding", 80, 24).press("]", "n")),
                new Case("ash-wednesday-80x24", Desk.with("ash-wednesday", 80, 24)),
                new Case("advent-80x24", Desk.with("advent-candlelight", 80, 24)),
                new Case("cathedral-80x24", Desk.with("easter-cathedral", 80, 24)),
                new Case(
                        "cathedral-last-page-80x24",
                        Desk.with("easter-cathedral", 80, 24).press("<End>")),
                new Case("cathedral-120x40", Desk.with("easter-cathedral", 120, 40)),
                new Case(
                        "verses-side-80x24",
                        Desk.with("harvest-festival", 80, 24).press("<Tab>", "<Down>")),
                new Case("soloed-80x24", Desk.with("harvest-festival", 80, 24).press("4", "<Tab>")),
                new Case("choir-80x24", Desk.with("harvest-festival", 80, 24).press("n", "2", "-")),
                new Case("silent-80x24", Desk.with("harvest-festival", 80, 24).press("n", "0")),
                new Case("find-80x24", Desk.with("harvest-festival", 80, 24).press("/", "'dia'")),
                new Case(
                        "find-none-80x24", Desk.with("harvest-festival", 80, 24).press("/", "'zink'")),
                new Case(
                        "verse-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("n", "e")),
                new Case(
                        "new-hymn-complaint-80x24",
                        Desk.with("harvest-festival", 80, 24).press("I", "'77'", "<Enter>")),
                new Case(
                        "hymn-form-60x18", Desk.with("harvest-festival", 60, 18).press("E")),
                new Case(
                        "service-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("S")),
                new Case("help-80x24", Desk.with("harvest-festival", 80, 24).press("?")),
                new Case("help-end-80x24", Desk.with("harvest-festival", 80, 24).press("?", " ", " ", " ", " ", " ")),
                new Case("question-80x24", Desk.with("harvest-festival", 80, 24).press(" ", "q")),
                new Case("chooser-80x24", chooser()),
                new Case("no-hymns-80x24", Desk.blank()),
                new Case("no-verses-80x24", withoutVerses()),
                new Case("strange-text-80x24", strangeText()),
                new Case("too-small-50x12", Desk.with("harvest-festival", 50, 12)),
                new Case(
                        "ascii-80x24",
                        Desk.with("harvest-festival", 80, 24, Marks.ASCII).press("n")),
                new Case("nothing-open-80x24", Desk.empty(80, 24)));
    }

    private static Desk chooser() {
        return Desk.with("harvest-festival", 80, 24)
                .answer(new Input.PlansListed(List.of(
                        new Input.Listed("a", "Harvest Festival", "2026-10-04"),
                        new Input.Listed(
                                "b", "Evensong with a very long title that goes on and on", "2026-09-27, unsaved work"),
                        new Input.Listed("c", "An Ordinary Sunday", "no date"))))
                .press("<Down>");
    }

    private static Desk withoutVerses() {
        return Desk.blank().press("I", "<Tab>", "'A hymn'", "<Up>", "<Up>", "<Backspace>", "'0'", "<Enter>", "x");
    }

    private static Desk strangeText() {
        Desk desk = Desk.blank();
        List<versewind.plan.Verse> verses = List.of(
                Verses.blank(desk.work().instrument(), VerseKind.VERSE).withLabel("e\u0301\u202Ex"),
                Verses.blank(desk.work().instrument(), VerseKind.VERSE).withLabel("賛美歌二番"));
        Hymn hymn = new Hymn(
                "\u001B[31m1",
                "Tabs\tand\u0000nulls and 賛美歌 and a title much too long for any screen to show in one line",
                "TUNE\u0007",
                "",
                "",
                OptionalInt.empty(),
                "",
                verses);
        Plan plan = new Plan(
                new Heading("Title\nin\u009Btwo\u200Flines", Optional.empty(), 50, ""), "st-tethwin", List.of(hymn));
        return Desk.with(
                plan, desk.work().instrument(), State.empty(80, 24, Marks.UNICODE, Desk.TODAY), Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("screens")
    void a_screen_is_as_it_was(Case screen) {
        Golden.check("screen/" + screen.name() + ".txt", screen.desk().screen());
    }

    @Test
    void every_recorded_screen_has_its_case() {
        assertThat(Golden.names("screen"))
                .containsExactlyInAnyOrderElementsOf(
                        screens().map(screen -> screen.name() + ".txt").toList());
    }
}
