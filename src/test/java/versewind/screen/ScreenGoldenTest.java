package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.PlanMerge;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;

/**
 * Screens that were looked at and found good. The most used are recorded whole, some with a letter for the style of
 * every cell; of others the rows that matter are named.
 */
class ScreenGoldenTest {

    private record Case(String name, Desk desk, List<String> rows) {

        Case(String name, Desk desk, String... rows) {
            this(name, desk, List.of(rows));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** Those of which the styles are recorded too. */
    private static final Set<String> STYLED = Set.of(
            "harvest-80x24",
            "soloed-80x24",
            "proposals-80x24",
            "findings-80x24",
            "verse-form-80x24",
            "question-80x24",
            "desk-80x24");

    static Stream<Case> recorded() {
        return Stream.of(
                new Case("harvest-80x24", Desk.with("harvest-festival", 80, 24)),
                new Case(
                        "harvest-120x40", Desk.with("harvest-festival", 120, 40).press("n")),
                new Case("harvest-60x18", Desk.with("harvest-festival", 60, 18).press("n")),
                new Case("cathedral-80x24", Desk.with("easter-cathedral", 80, 24)),
                new Case("soloed-80x24", Desk.with("harvest-festival", 80, 24).press("4", "<Tab>")),
                new Case("proposals-80x24", Desk.with("ordinary-sunday", 80, 24).press("n", "P", "<Down>")),
                new Case("proposals-60x18", Desk.with("ordinary-sunday", 60, 18).press("n", "P")),
                new Case(
                        "verse-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("n", "e")),
                new Case(
                        "service-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("S")),
                new Case("help-80x24", Desk.with("harvest-festival", 80, 24).press("?")),
                new Case("question-80x24", Desk.with("harvest-festival", 80, 24).press(" ", "q")),
                new Case("chooser-80x24", chooser()),
                new Case("no-hymns-80x24", Desk.blank()),
                new Case("strange-text-80x24", strangeText()),
                new Case(
                        "ascii-80x24",
                        Desk.with("harvest-festival", 80, 24, Marks.ASCII).press("n")),
                new Case("findings-80x24", Desk.with("harvest-festival", 80, 24).press("n", "f", "<Down>")),
                new Case("kept-work-80x24", Desk.withDraft("harvest-festival", plan -> plan.withHymns(List.of()))),
                new Case("conflict-80x24", conflict()),
                new Case("organs-60x18", organs()),
                new Case(
                        "desk-80x24",
                        Desk.with("harvest-festival", 80, 24)
                                .press("n", "n", "K")
                                .climb()),
                new Case(
                        "desk-cathedral-120x40",
                        cathedral(120, 40).press("n", "n", "K").climb()),
                new Case("desk-stepped-80x24", stepped(80, 24, Marks.UNICODE)),
                new Case(
                        "answers-80x24",
                        Desk.with("harvest-festival", 80, 24).press("K", "y", "1", "2", "3", "2", "x")));
    }

    /** Small and large windows, and what is seldom seen. */
    static Stream<Case> others() {
        return Stream.of(
                new Case(
                        "cathedral-60x18",
                        cathedral(60, 18).press("<End>", "n"),
                        "stops 7/7",
                        "▸1 Ring from the tower…"),
                new Case(
                        "long-names-80x24",
                        odd(OddOrgans.withLongNames(), 80, 24),
                        "● Un. and Ev. Un. and Ev. Un. and Ev. Un. and Ev.… 8│",
                        "A tune"),
                new Case(
                        "sunday-80x24",
                        Desk.with("ordinary-sunday", 80, 24).press("n"),
                        "Wide is the gate of the morning  LARKSTILE  8 7 8 7  G  ♩100",
                        "V1 ─ congregation of 140 ─ four parts on Great ─ piston G3"),
                new Case(
                        "wedding-80x24",
                        Desk.with("wedding", 80, 24).press("]", "n"),
                        "▸V1     solo",
                        "soloist, strongly ─ manuals only on Récit expressif",
                        "Récit expres. closed│"),
                new Case(
                        "ash-wednesday-80x24",
                        Desk.with("ash-wednesday", 80, 24),
                        "Stops and couplers to set before the service: 4",
                        "● Stopped Diap  8",
                        "▸58 Dust upon our doorway"),
                new Case(
                        "advent-80x24",
                        Desk.with("advent-candlelight", 80, 24),
                        "● Sesquialtera II",
                        "the melody soloed, right hand Rückpositiv, left Hauptwerk"),
                new Case(
                        "cathedral-last-page-80x24",
                        Desk.with("easter-cathedral", 80, 24).press("<End>"),
                        "· Solo Uni Off",
                        "◂ stops 4/4"),
                new Case("cathedral-120x40", Desk.with("easter-cathedral", 120, 40), "Great           Swell"),
                new Case(
                        "verses-side-80x24",
                        Desk.with("harvest-festival", 80, 24).press("<Tab>", "<Down>"),
                        "? help  i new verse  I new hymn  e edit  x delete  Tab stops"),
                new Case(
                        "choir-80x24",
                        Desk.with("harvest-festival", 80, 24).press("n", "2", "-"),
                        "▸V1      choir",
                        "small choir of 16, singing gently",
                        "▪ unsaved"),
                new Case(
                        "silent-80x24",
                        Desk.with("harvest-festival", 80, 24).press("n", "0"),
                        "Organ silent: nothing is drawn",
                        "▸V1      all     −"),
                new Case(
                        "proposing-80x24",
                        Desk.with("ordinary-sunday", 80, 24)
                                .press("P", "P", "P")
                                .answer(new PlanEvent.Searched(7, 18)),
                        "7 of 18 verses are searched.",
                        "Esc stop, and keep the best so far"),
                new Case(
                        "find-80x24",
                        Desk.with("harvest-festival", 80, 24).press("/", "'dia'"),
                        "Find: dia  Great: Open Diapason 8  (2 fit, Tab: the next)"),
                new Case(
                        "find-none-80x24",
                        Desk.with("harvest-festival", 80, 24).press("/", "'zink'"),
                        "Find: zink  no stop has this in its name"),
                new Case(
                        "new-hymn-complaint-80x24",
                        Desk.with("harvest-festival", 80, 24).press("I", "<Enter>"),
                        "A hymn needs a title or a number."),
                new Case(
                        "hymn-form-60x18",
                        Desk.with("harvest-festival", 60, 18).press("E"),
                        "Number: its number in the book",
                        "Title     Come, carry in the harvest"),
                new Case(
                        "help-end-80x24",
                        Desk.with("harvest-festival", 80, 24).press("?", "'surface'"),
                        "add a division, coupler, tremulant or surface",
                        "1 of"),
                new Case("no-verses-80x24", withoutVerses(), "no verse yet; i to add", "Deleted Intro; u to undo."),
                new Case(
                        "too-small-50x12",
                        Desk.with("harvest-festival", 50, 12),
                        "Versewind needs 60 columns and 18",
                        "which fits."),
                new Case("nothing-open-80x24", Desk.empty(80, 24), "Versewind"),
                new Case(
                        "findings-60x18",
                        Desk.with("easter-cathedral", 60, 18).press("f"),
                        "F fix  Enter go there  x ignore  Esc close",
                        "Findings"),
                new Case(
                        "findings-none-80x24",
                        Desk.with("ash-wednesday", 80, 24).press("n", "f"),
                        "No remarks.",
                        "How to play V1",
                        "Breathe 2 beats between verses"),
                new Case(
                        "silence-form-80x24",
                        Desk.with("harvest-festival", 80, 24).press("f", "x"),
                        "Note: the reason, kept in the plan; may be blank"),
                new Case(
                        "find-60x18",
                        Desk.with("wedding", 60, 18).press("/", "'flute'", "<Tab>"),
                        "Find: flute  Grand-Orgue: Flûte douce 4  (7 fit, Tab: the…"),
                new Case(
                        "find-long-60x18",
                        Desk.with("wedding", 60, 18).press("/", "'no such stop in this church'"),
                        "Find: no such stop in this church  no stop has this in it…"),
                new Case(
                        "verse-form-60x18",
                        Desk.with("harvest-festival", 60, 18).press("n", "#"),
                        "People: people present in this verse, or singers of a",
                        "small choir, if not as in the service; may be blank"),
                new Case(
                        "new-hymn-60x18",
                        Desk.with("harvest-festival", 60, 18).press("I", "<Up>"),
                        "Verses: how many; an introduction is added"),
                new Case(
                        "long-field-80x24",
                        longField(),
                        "Wait for the procession to reach the font, then the bell, then",
                        "font, then the bell, then the choir's entry in canon."),
                new Case(
                        "help-60x18",
                        Desk.with("harvest-festival", 60, 18).press("?", "'coupler'"),
                        "any pedal stops drawn",
                        "Marks and words"),
                new Case("help-120x40", Desk.with("harvest-festival", 120, 40).press("?"), "Filter:", "Moving about"),
                new Case(
                        "refused-60x18",
                        refused(),
                        "Somebody else changed this plan's file after you opened",
                        "w      save this version under another title"),
                new Case(
                        "failed-60x18",
                        failed(),
                        "plans/wedding.json, line 14, hymns[1].verses[2].drawn: the",
                        "\"Open Diapason 8\"?"),
                new Case(
                        "failed-nothing-open-80x24",
                        Desk.empty(80, 24).answer(new Event.Failed(BROKEN)),
                        "No plan is open. Press o to open one, q to leave.",
                        "Enter  choose another plan"),
                new Case(
                        "new-plan-60x18",
                        organs().answer(new LibraryEvent.PlanBegun(
                                        "st-tethwin", "St Tethwin", Player.MANUALS_ONLY, 100))
                                .press("<Enter>"),
                        "Pedals    manuals only",
                        "A service needs a title."),
                new Case(
                        "nothing-fits-80x24",
                        chooser().press("'zzz'"),
                        "Filter: zzz",
                        "Nothing matches the filter.",
                        "0 of 3 plans"),
                new Case(
                        "cathedral-second-page-80x24",
                        cathedral(80, 24).press("<Right>", "<Right>", "<Right>"),
                        "◂ stops 2/4 ▸",
                        "● Tuba         8"),
                new Case("cathedral-200x60", cathedral(200, 60).press("n"), "Double Diapason", "Sharp Mixture"),
                new Case(
                        "wedding-120x40",
                        Desk.with("wedding", 120, 40).press("]", "n", "n", "<Tab>"),
                        "▸V2        choir",
                        "Choir. Down to the Positif; the"),
                new Case(
                        "solo-voice-80x24",
                        Desk.with("wedding", 80, 24).press("]", "n"),
                        "soloist, strongly",
                        "Soprano alone. On the"),
                new Case(
                        "ascii-60x18", Desk.with("wedding", 60, 18, Marks.ASCII).press("n"), "Grand-Orgue"),
                new Case(
                        "strange-organ-80x24",
                        odd(OddOrgans.withStrangeNames(), 80, 24),
                        "赞美诗歌赞美诗歌赞美",
                        "· 🎹 q                       8"),
                new Case("strange-organ-60x18", odd(OddOrgans.withStrangeNames(), 60, 18), "· 赞美诗歌"),
                new Case("no-stops-80x24", odd(OddOrgans.withoutStops(), 80, 24), "This organ has no stops."),
                new Case(
                        "box-over-wide-characters-80x24",
                        strangeText().press("S"),
                        "Title?in?two?lines",
                        "Title: the name of the service; needed"),
                new Case(
                        "many-verses-60x18",
                        Desk.with("harvest-festival", 60, 18).press("d", "d", "d", "d", "d", "d"),
                        "▸Intro organ",
                        "V4    all"),
                new Case(
                        "desk-first-60x18",
                        Desk.with("harvest-festival", 60, 18).press("K").climb(),
                        "Set this before the service: piston G3",
                        "480 present  1 of 26"),
                new Case(
                        "desk-cathedral-80x24",
                        cathedral(80, 24).press("n", "n", "K").climb(),
                        "1400 present  3 of 29",
                        "The banners move off."),
                new Case(
                        "desk-ascii-60x18", stepped(60, 18, Marks.ASCII), "140 present (170 planned)", "1 step louder"),
                new Case(
                        "desk-tiny-40x10",
                        Desk.with("wedding", 40, 10).alone().climb().press(" ", "+"),
                        "180 present  2 of 20",
                        "Now  piston G4"),
                new Case(
                        "desk-too-small-39x10",
                        Desk.with("wedding", 39, 10).alone(),
                        "Versewind needs 40 columns and 10",
                        "Nothing is lost."),
                new Case(
                        "desk-strange-text-80x24",
                        strangeText().press("K"),
                        "Set this before the service.",
                        "Nothing is drawn."),
                new Case("desk-no-verse-80x24", Desk.blank().alone(), "This plan has no verse to play yet."),
                new Case(
                        "answers-60x18",
                        Desk.with("wedding", 60, 18).press("K", "y", "<PageDown>", "1"),
                        "1 too soft  2 right  3 too strong  x no feedback",
                        "too soft"),
                new Case(
                        "too-small-20x5",
                        Desk.with("harvest-festival", 20, 5),
                        "Versewind needs 60",
                        "by 5. Nothing is"));
    }

    private static final String BROKEN =
            "plans/wedding.json, line 14, hymns[1].verses[2].drawn: the organ has no stop \"Open Diapson 8\" in Great. "
                    + "Did you mean \"Open Diapason 8\"?";

    /** A verse played stronger than planned, before fewer people than were expected. */
    private static Desk stepped(int columns, int rows, Marks marks) {
        return Desk.with("wedding", columns, rows, marks)
                .press("n", "n", "n", "K", "-", "-")
                .climb()
                .press("<");
    }

    private static Desk cathedral(int columns, int rows) {
        return Desk.with("easter-cathedral", columns, rows);
    }

    private static Desk longField() {
        String note = "Wait for the procession to reach the font, then the bell, then the choir's entry in canon. ";
        return Desk.with("harvest-festival", 80, 24)
                .press("e", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "^U", "'" + note.repeat(2) + "'", "<Left>", "<Left>");
    }

    private static Desk conflict() {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        Plan base = desk.plan();
        VersePlace place = new VersePlace(0, 1);
        Verse verse = base.verse(place);
        Plan theirs = base.withVerse(place, verse.withNote("wait").withSinging(Singing.GENTLE));
        Plan mine = desk.press("n", "0").plan().withPeople(300);
        PlanMerge merge = PlanMerge.of(base, mine, theirs.withPeople(200));
        return desk.answer(new FileEvent.Conflicting(merge, List.of())).press("<Down>", "<Right>");
    }

    private static Desk refused() {
        Desk desk = Desk.with("harvest-festival", 60, 18).press(" ");
        return desk.answer(new FileEvent.SaveRefused(Desk.CHANGED_ELSEWHERE, desk.plan(), List.of()));
    }

    private static Desk failed() {
        return Desk.with("harvest-festival", 60, 18).answer(new Event.Failed(BROKEN));
    }

    private static Desk organs() {
        return Desk.empty(60, 18)
                .answer(new LibraryEvent.InstrumentsListed(List.of(
                        new Chooser.Row("st-tethwin", "St Tethwin", "Averstoke"),
                        new Chooser.Row("little-corvening", "All Hallows", "Little Corvening"))));
    }

    private static Desk odd(Instrument organ, int columns, int rows) {
        Plan plan = new Plan(new ServiceHeading("Trial", Optional.empty(), 1, ""), "organ", List.of());
        return Desk.with(plan, organ, Update.empty(columns, rows, Marks.UNICODE, Desk.TODAY), Optional.empty())
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
        return Desk.blank().press("I", "<Tab>", "'A hymn'", "<Tab>", "<Tab>", "<Backspace>", "'0'", "<Enter>", "x");
    }

    private static Desk strangeText() {
        Desk desk = Desk.blank();
        List<Verse> verses = List.of(
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
                plan, desk.work().instrument(), Update.empty(80, 24, Marks.UNICODE, Desk.TODAY), Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("recorded")
    void a_screen_is_as_it_was(Case screen) {
        Desk desk = screen.desk();
        Golden.check(
                "screen/" + screen.name() + ".txt", STYLED.contains(screen.name()) ? desk.screen() : desk.characters());
    }

    @ParameterizedTest
    @MethodSource("others")
    void a_screen_has_the_rows_that_matter(Case screen) {
        assertThat(screen.desk().screen()).contains(screen.rows());
    }

    /** A row is never wider than the window, and a window of some size always has something to say. */
    @ParameterizedTest
    @MethodSource({"recorded", "others"})
    void a_screen_fits_its_window(Case screen) {
        Frame frame = screen.desk().frame();
        assertThat(IntStream.range(0, frame.height()).mapToObj(frame::styleRow))
                .allSatisfy(row -> assertThat(row).hasSize(frame.width()));
        assertThat(IntStream.range(0, frame.height()).mapToObj(frame::row)).anyMatch(row -> !row.isBlank());
        assertThat(frame.caretX()).isLessThan(frame.width());
    }

    @Test
    void every_recorded_screen_has_its_case() {
        assertThat(Golden.names("screen"))
                .containsExactlyInAnyOrderElementsOf(
                        recorded().map(screen -> screen.name() + ".txt").toList());
    }
}
