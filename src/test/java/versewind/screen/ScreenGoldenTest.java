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
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
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
                new Case("proposals-80x24", Desk.with("ordinary-sunday", 80, 24).press("n", "P", "<Down>")),
                new Case("proposals-60x18", Desk.with("ordinary-sunday", 60, 18).press("n", "P")),
                new Case(
                        "proposing-80x24",
                        Desk.with("ordinary-sunday", 80, 24).press("P", "s").answer(new Event.Searched(7, 18))),
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

    /** Small and large windows, and what is seldom seen. */
    static Stream<Case> moreScreens() {
        return Stream.of(
                new Case("findings-80x24", Desk.with("harvest-festival", 80, 24).press("n", "f", "<Down>")),
                new Case("findings-60x18", Desk.with("easter-cathedral", 60, 18).press("f")),
                new Case(
                        "findings-none-80x24",
                        Desk.with("ash-wednesday", 80, 24).press("n", "f")),
                new Case(
                        "silence-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("f", "s")),
                new Case("find-60x18", Desk.with("wedding", 60, 18).press("/", "'flute'", "<Tab>")),
                new Case("find-long-60x18", Desk.with("wedding", 60, 18).press("/", "'no such stop in this church'")),
                new Case(
                        "verse-form-60x18",
                        Desk.with("harvest-festival", 60, 18).press("n", "#")),
                new Case("new-hymn-60x18", Desk.with("harvest-festival", 60, 18).press("I", "<Up>")),
                new Case("long-field-80x24", longField()),
                new Case("help-60x18", Desk.with("harvest-festival", 60, 18).press("?", " ")),
                new Case("help-120x40", Desk.with("harvest-festival", 120, 40).press("?")),
                new Case("refused-60x18", refused()),
                new Case("failed-60x18", failed()),
                new Case("failed-nothing-open-80x24", Desk.empty(80, 24).answer(new Event.Failed(BROKEN))),
                new Case("kept-work-80x24", Desk.withDraft("harvest-festival", plan -> plan.withHymns(List.of()))),
                new Case("organs-60x18", organs()),
                new Case("new-plan-60x18", organs().press("<Enter>", "<Enter>")),
                new Case("nothing-fits-80x24", chooser().press("'zzz'")),
                new Case("cathedral-second-page-80x24", cathedral(80, 24).press("<Right>", "<Right>", "<Right>")),
                new Case("cathedral-60x18", cathedral(60, 18).press("<End>", "n")),
                new Case("cathedral-200x60", cathedral(200, 60).press("n")),
                new Case("wedding-120x40", Desk.with("wedding", 120, 40).press("]", "n", "n", "<Tab>")),
                new Case("solo-voice-80x24", Desk.with("wedding", 80, 24).press("]", "n")),
                new Case(
                        "ascii-60x18", Desk.with("wedding", 60, 18, Marks.ASCII).press("n")),
                new Case("strange-organ-80x24", odd(OddOrgans.withStrangeNames(), 80, 24)),
                new Case("strange-organ-60x18", odd(OddOrgans.withStrangeNames(), 60, 18)),
                new Case("long-names-80x24", odd(OddOrgans.withLongNames(), 80, 24)),
                new Case("no-stops-80x24", odd(OddOrgans.withoutStops(), 80, 24)),
                new Case("box-over-wide-characters-80x24", strangeText().press("S")),
                new Case(
                        "many-verses-60x18",
                        Desk.with("harvest-festival", 60, 18).press("d", "d", "d", "d", "d", "d")),
                new Case(
                        "desk-80x24",
                        Desk.with("harvest-festival", 80, 24)
                                .press("n", "n", "K")
                                .climb()),
                new Case(
                        "desk-first-60x18",
                        Desk.with("harvest-festival", 60, 18).press("K").climb()),
                new Case(
                        "desk-cathedral-80x24",
                        cathedral(80, 24).press("n", "n", "K").climb()),
                new Case(
                        "desk-cathedral-120x40",
                        cathedral(120, 40).press("n", "n", "K").climb()),
                new Case("desk-stepped-80x24", stepped(80, 24, Marks.UNICODE)),
                new Case("desk-ascii-60x18", stepped(60, 18, Marks.ASCII)),
                new Case(
                        "desk-tiny-40x10",
                        Desk.with("wedding", 40, 10).alone().climb().press(" ", "+")),
                new Case("desk-too-small-39x10", Desk.with("wedding", 39, 10).alone()),
                new Case("desk-strange-text-80x24", strangeText().press("K")),
                new Case("desk-no-verse-80x24", Desk.blank().alone()),
                new Case(
                        "answers-80x24",
                        Desk.with("harvest-festival", 80, 24).press("K", "a", "1", "2", "3", "2", "x")),
                new Case("answers-60x18", Desk.with("wedding", 60, 18).press("K", "a", "<PageDown>", "s")),
                new Case("too-small-20x5", Desk.with("harvest-festival", 20, 5)));
    }

    private static final String BROKEN =
            "plans/wedding.json, line 14, hymns[1].verses[2].drawn: the organ has no stop \"Open Diapson 8\" in Great. "
                    + "Did you mean \"Open Diapason 8\"?";

    /** A verse played stronger than planned, before fewer people than were expected. */
    private static Desk stepped(int columns, int rows, Marks marks) {
        return Desk.with("wedding", columns, rows, marks)
                .press("n", "n", "n", "K", "-", "-")
                .climb()
                .press("l");
    }

    private static Desk cathedral(int columns, int rows) {
        return Desk.with("easter-cathedral", columns, rows);
    }

    private static Desk longField() {
        String note = "Wait for the procession to reach the font, then the bell, then the choir's entry in canon. ";
        return Desk.with("harvest-festival", 80, 24)
                .press("e", "<Tab>", "<Tab>", "<Tab>", "^U", "'" + note.repeat(2) + "'", "<Left>", "<Left>");
    }

    private static Desk refused() {
        Desk desk = Desk.with("harvest-festival", 60, 18).press(" ");
        return desk.answer(new Event.SaveRefused(desk.plan(), List.of()));
    }

    private static Desk failed() {
        return Desk.with("harvest-festival", 60, 18).answer(new Event.Failed(BROKEN));
    }

    private static Desk organs() {
        return Desk.empty(60, 18)
                .answer(new Event.InstrumentsListed(List.of(
                        new Event.Listed("st-tethwin", "St Tethwin", "Averstoke"),
                        new Event.Listed("little-corvening", "All Hallows", "Little Corvening"))));
    }

    private static Desk odd(Instrument organ, int columns, int rows) {
        Plan plan = new Plan(new ServiceHeading("Trial", Optional.empty(), 1, ""), "organ", List.of());
        return Desk.with(plan, organ, State.empty(columns, rows, Marks.UNICODE, Desk.TODAY), Optional.empty())
                .press("I", "<Tab>", "'A tune'", "<Enter>", "n", " ");
    }

    private static Desk chooser() {
        return Desk.with("harvest-festival", 80, 24)
                .library(
                        Desk.listed("a", "Harvest Festival", "2026-10-04"),
                        Desk.listed("b", "Evensong with a very long title that goes on and on", "2026-09-27"),
                        Desk.listed("c", "An Ordinary Sunday", ""))
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
                new ServiceHeading("Title\nin\u009Btwo\u200Flines", Optional.empty(), 50, ""),
                "st-tethwin",
                List.of(hymn));
        return Desk.with(
                plan, desk.work().instrument(), State.empty(80, 24, Marks.UNICODE, Desk.TODAY), Optional.empty());
    }

    @ParameterizedTest
    @MethodSource({"screens", "moreScreens"})
    void a_screen_is_as_it_was(Case screen) {
        Golden.check("screen/" + screen.name() + ".txt", screen.desk().screen());
    }

    @Test
    void every_recorded_screen_has_its_case() {
        assertThat(Golden.names("screen"))
                .containsExactlyInAnyOrderElementsOf(Stream.concat(screens(), moreScreens())
                        .map(screen -> screen.name() + ".txt")
                        .toList());
    }
}
