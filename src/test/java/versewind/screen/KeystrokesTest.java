package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.rules.Assessment;
import versewind.screen.library.LibraryEvent;
import versewind.screen.organ.OrganEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;

/**
 * How many keys it takes to plan a new service with proposals: four hymns and 18 verses, from the library to the saved
 * plan. What is typed into the fields for title, number and date is left out.
 *
 * <p>Time by the keystroke-level model: 0.28 s a key for an average non-secretary typist, 1.35 s to get ready for each
 * step of the work; nothing for the program, which answers sooner. Source: S. Card, T. Moran, A. Newell, The
 * keystroke-level model for user performance time with interactive systems, Communications of the ACM 23 (1980) 396;
 * values as in the University of Hamburg's course on software evaluation, table 1.
 */
class KeystrokesTest {

    private static final double KEY_S = 0.28;
    private static final double GETTING_READY_S = 1.35;
    private static final int MOST_KEYS = 60;

    private final Desk desk = Desk.empty(80, 24);
    private Optional<Plan> written = Optional.empty();
    private Instrument organ = Shipped.instrument("st-tethwin");
    private String sheet = "";
    private int keys;
    private int steps;

    /** One step of the work: keys that are counted. */
    private void step(String... pressed) {
        steps++;
        for (String key : pressed) {
            keys++;
            desk.press(key);
            serve();
        }
    }

    /** What the hymn board or the calendar says. */
    private void type(String text) {
        desk.press("'" + text + "'");
    }

    private void serve() {
        for (Effect effect : desk.takeEffects()) {
            effect.by(Wanted.doneBy(this::done)).forEach(desk::answer);
        }
    }

    private List<Event> done(String name, Object[] arguments) {
        return switch (name) {
            case "listInstruments" ->
                List.of(new LibraryEvent.InstrumentsListed(
                        List.of(new Chooser.Row("st-tethwin", "St Tethwin", "Averstoke"))));
            case "beginPlan" ->
                List.of(new LibraryEvent.PlanBegun(
                        (String) arguments[0], (String) arguments[0], Player.WITH_PEDALS, 100));
            case "makeOrgan" -> {
                organ = (Instrument) arguments[0];
                yield List.of(new OrganEvent.OrganMade(
                        new OrganEvent.OrganOpened("st-tethwin", organ, Experience.NONE, "", Optional.empty())));
            }
            case "saveOrgan" -> {
                organ = (Instrument) arguments[0];
                yield List.of(new OrganEvent.OrganSaved(organ, "Saved.", List.of()));
            }
            case "writeSheet" -> {
                sheet = (String) arguments[1];
                yield List.of(new Event.Done("Written."));
            }
            case "createPlan" -> {
                Plan plan = new Plan((ServiceHeading) arguments[0], (String) arguments[1], List.of());
                yield List.of(new FileEvent.PlanOpened("new", plan, organ, Desk.organ(organ), Optional.empty()));
            }
            case "propose" -> {
                Plan plan = (Plan) arguments[0];
                yield List.of(new PlanEvent.Proposed(
                        plan, RegistrationProposer.of(Desk.sound(organ)).forService(plan, SearchProgress.PATIENT)));
            }
            case "save" -> {
                written = Optional.of((Plan) arguments[0]);
                yield List.of(new FileEvent.Saved((Plan) arguments[0], List.of(), true));
            }
            default -> List.of();
        };
    }

    private void hymn(String number, String title, String... verses) {
        step("I");
        type(number);
        step("<Tab>");
        type(title);
        if (verses.length > 0) {
            step("<Tab>", "<Tab>", "<Backspace>");
            step(verses);
        }
        step("<Enter>");
    }

    @Test
    void a_service_of_four_hymns_is_planned_in_sixty_keys() {
        desk.library();
        step("^N");
        step("<Enter>");
        type("Last Sunday after Trinity");
        step("<Enter>");
        hymn("12", "Now the lamps are lit", "5");
        hymn("77", "Teach us the quiet word");
        step("n", "n", "g", "g", "g"); // the second verse gentle
        step("p", "p", "4"); // a soloed introduction
        hymn("142", "Loaf and cup and lamplight");
        step("n", "2"); // the choir has the first verse
        hymn("190", "Out by the doors of morning", "5");
        step(
                "<PageDown>",
                "<PageDown>",
                "<PageDown>",
                "<PageDown>",
                "<PageDown>",
                "g",
                "g",
                "+"); // the last one festal
        step("A", "<Enter>", "<Esc>");
        step("s");

        Plan plan = written.orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%d keys in %d steps: about %.0f s by the keystroke-level model%n",
                keys,
                steps,
                keys * KEY_S + steps * GETTING_READY_S);
        assertThat(plan.hymns()).hasSize(4);
        assertThat(plan.hymns().stream().flatMap(hymn -> hymn.verses().stream()).filter(Verse::isSung))
                .hasSize(18);
        assertThat(plan.hymns()).allSatisfy(hymn -> assertThat(hymn.verses())
                .allSatisfy(verse ->
                        assertThat(verse.registration().stops().isEmpty()).isFalse()));
        Hymn second = plan.hymns().get(1);
        assertThat(second.verses().get(0).mode()).isEqualTo(Mode.MELODY_SOLOED);
        assertThat(second.verses().get(2).mood()).isEqualTo(Mood.GENTLE);
        assertThat(Assessment.of(plan, Desk.sound(Shipped.instrument("st-tethwin")))
                        .wantingAttention())
                .isEmpty();
        assertThat(keys).isLessThanOrEqualTo(MOST_KEYS);
    }

    /** A hymn of some verses, its number and verses counted. */
    private void countedHymn(String number, String title, String verses) {
        step("I");
        step(number.split("(?!^)"));
        step("<Tab>");
        type(title);
        step("<Tab>", "<Tab>", "<Backspace>", verses, "<Enter>");
    }

    private void fourHymns() {
        countedHymn("12", "Now the lamps are lit", "5");
        countedHymn("77", "Teach us the quiet word", "4");
        countedHymn("142", "Loaf and cup and lamplight", "4");
        countedHymn("190", "Out by the doors of morning", "5");
    }

    private List<Verse> sungVerses() {
        return written.orElseThrow().hymns().stream()
                .flatMap(hymn -> hymn.verses().stream())
                .filter(Verse::isSung)
                .toList();
    }

    @Test
    void from_a_pasted_list_to_a_proposed_service_and_its_sheet_takes_at_most_120_keys() throws IOException {
        desk.library();
        step("<Tab>", "^N");
        desk.answer(new Event.Paste(Files.readString(Path.of("src/test/resources/stoplists/parish-english.txt"))));
        step("^S", "<Enter>");
        type("St Hild");
        step("<Enter>");
        step("<Down>", "<Enter>", "<Enter>"); // a parish church of the usual size
        step("<Esc>", "<Enter>");
        type("Last Sunday after Trinity");
        step("<Enter>");
        fourHymns();
        step("A", "<Enter>", "<Esc>", "s");
        step("W", "<Enter>", "<Enter>");

        assertThat(sungVerses()).hasSize(18);
        assertThat(sheet).contains("Now the lamps are lit", "Out by the doors of morning");
        assertThat(written.orElseThrow().hymns()).allSatisfy(hymn -> assertThat(hymn.verses())
                .allSatisfy(verse ->
                        assertThat(verse.registration().stops().isEmpty()).isFalse()));
        assertThat(keys).isLessThanOrEqualTo(120);
    }

    @Test
    void a_service_drawn_by_hand_takes_at_most_350_keys() {
        desk.library();
        step("^N", "<Enter>");
        type("Last Sunday after Trinity");
        step("<Enter>");
        fourHymns();
        step("[", "[", "[");
        for (int hymn = 0; hymn < 4; hymn++) {
            step("<Home>", "<Down>", " ", "<Down>", "<Down>", " "); // the introduction: Open Diapason, Principal
            step("n", "c", "<Down>", "<Down>", "<Down>", " "); // with the Fifteenth
            step("<Right>", "<Right>", "<Home>", "<Down>"); // pedal
            step("&", "<Enter>"); // and in all verses
            step(Collections.nCopies(desk.hymn().verses().size() - 2, "n").toArray(String[]::new));
            step("/", "m", "i", "x", "<Enter>", " ", "+"); // the last one with the Mixture, sung more strongly
            step("]");
        }
        step("s");

        assertThat(sungVerses()).hasSize(18).allSatisfy(verse -> assertThat(
                        verse.registration().stops().size())
                .isGreaterThanOrEqualTo(3));
        assertThat(keys).isLessThanOrEqualTo(350);
    }
}
