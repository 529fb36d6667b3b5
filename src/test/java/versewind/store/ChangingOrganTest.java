package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import versewind.calibration.Experience;
import versewind.calibration.Fit;
import versewind.calibration.HeardRegistration;
import versewind.calibration.MeterReading;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.rules.Caution;
import versewind.schema.DivisionFields;
import versewind.schema.DraftChange;
import versewind.schema.Field;
import versewind.schema.InstrumentFields;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganDraft;
import versewind.schema.RandomWorks;
import versewind.schema.RowKind;
import versewind.schema.StopFields;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

/** What becomes of plans and readings when an instrument changes under them. */
class ChangingOrganTest {
    private static final Path FOLDER = Path.of("/church");
    private static final Path ORGAN = FOLDER.resolve("instruments/nether-wick.json");
    private static final Path LENT = FOLDER.resolve("plans/lent.json");
    private static final Path WORK = FOLDER.resolve("plans/.lent.unsaved.json");
    private static final Path BINNED = FOLDER.resolve("bin/old.json");

    private static Map<Path, byte[]> files() {
        byte[] plan = SmallOrgan.PLAN.getBytes(StandardCharsets.UTF_8);
        Map<Path, byte[]> files = new TreeMap<>();
        files.put(ORGAN, SmallOrgan.FILE.getBytes(StandardCharsets.UTF_8));
        files.put(LENT, plan);
        files.put(
                WORK,
                SmallOrgan.PLAN.replace("\"people\": 70", "\"people\": 71").getBytes(StandardCharsets.UTF_8));
        files.put(BINNED, plan);
        return files;
    }

    private static OrganDraft set(OrganDraft draft, String name, Field<?, ?> field, String text) {
        for (int i = 0; i < draft.lines().size(); i++) {
            if (draft.lines().get(i).has(InstrumentFields.NAME)
                    && draft.fullName(i).equals(name)) {
                return draft.with(i, draft.lines().get(i).with(field, text).values());
            }
        }
        throw new AssertionError("there is no " + name);
    }

    private static OrganDraft without(OrganDraft draft, String name) {
        for (int i = 0; i < draft.lines().size(); i++) {
            if (draft.lines().get(i).has(InstrumentFields.NAME)
                    && draft.fullName(i).equals(name)) {
                return draft.without(i);
            }
        }
        throw new AssertionError("there is no " + name);
    }

    private static OrganDraft renamed(OrganDraft draft) {
        OrganDraft next = set(draft, "Great: Open Diapason 8", InstrumentFields.NAME, "Montre");
        next = set(next, "Swell", InstrumentFields.NAME, "Récit");
        return set(next, "Great to Pedal", InstrumentFields.NAME, "Tirasse");
    }

    private static OrganOutcome change(Library library, UnaryOperator<OrganDraft> edit) throws BadFile {
        OpenOrgan open = library.openOrgan("nether-wick");
        Instrument before = open.organ().instrument();
        OrganDraft draft = edit.apply(OrganDraft.of(before));
        DraftChange change = DraftChange.of(before, draft);
        assertThat(draft.problems()).isEmpty();
        assertThat(change.problems()).isEmpty();
        return library.saveChangedOrgan(open, draft.instrument().orElseThrow(), change.names(), (done, of) -> true);
    }

    private static List<Verse> verses(Plan plan) {
        return plan.hymns().stream().flatMap(hymn -> hymn.verses().stream()).toList();
    }

    @Test
    void renamed_stops_divisions_and_couplers_are_renamed_in_plans_in_kept_work_and_in_the_bin() throws BadFile {
        PowerCutDisk disk = PowerCutDisk.working(files());
        Library library = new Library(FOLDER, disk);
        Plan before = library.openPlan("lent").plan();

        OrganOutcome outcome = change(library, ChangingOrganTest::renamed);

        assertThat(outcome.rewritten()).containsExactlyInAnyOrder("lent", "lent", "old");
        assertThat(outcome.troubles()).isEmpty();
        assertThat(outcome.missing()).isEmpty();
        assertThat(outcome.forgotten()).isEmpty();
        for (Path file : List.of(LENT, WORK, BINNED)) {
            String text = new String(disk.seen().get(file), StandardCharsets.UTF_8);
            assertThat(text)
                    .contains("Montre 8", "Récit")
                    .doesNotContain("Open Diapason", "\"Swell\"", "Great to Pedal");
        }
        assertThat(new Library(FOLDER, disk).openPlan("lent").plan()).isEqualTo(before);
    }

    @Test
    void wherever_the_power_goes_every_plan_is_old_or_new_and_opens_with_the_same_stops() throws BadFile {
        Plan before = new Library(FOLDER, PowerCutDisk.working(files()))
                .openPlan("lent")
                .plan();
        int looked = 0;
        for (int steps = 0; ; steps++) {
            PowerCutDisk disk = PowerCutDisk.cutAfter(steps, files());
            try {
                change(new Library(FOLDER, disk), ChangingOrganTest::renamed);
            } catch (PowerCutDisk.PowerCut end) {
                assertThat(disk.hasStopped()).isTrue();
            }
            for (Map<Path, byte[]> left : disk.possible()) {
                Library after = new Library(FOLDER, PowerCutDisk.working(left));
                assertThat(after.openPlan("lent").plan()).isEqualTo(before);
                assertThat(after.openPlan(BINNED).plan()).isEqualTo(before);
                assertThat(after.openPlan("lent").draft()).get().isInstanceOf(Autosave.Kept.class);
                looked++;
            }
            if (!disk.hasStopped()) {
                break;
            }
        }
        assertThat(looked).isGreaterThan(100);
    }

    @Test
    void a_plan_that_draws_what_is_gone_opens_says_so_and_keeps_the_name_in_its_file() throws BadFile {
        PowerCutDisk disk = PowerCutDisk.working(files());
        Library library = new Library(FOLDER, disk);

        OrganOutcome outcome = change(library, draft -> without(draft, "Great: Open Diapason 8"));

        assertThat(outcome.missing()).contains("lent: Great: Open Diapason 8");
        assertThat(disk.seen().get(LENT)).isEqualTo(files().get(LENT));
        Plan plan = library.openPlan("lent").plan();
        assertThat(verses(plan)).anySatisfy(verse -> assertThat(verse.note())
                .endsWith("No longer on the organ: Great: Open Diapason 8."));
    }

    @Test
    void a_stop_that_is_put_back_is_drawn_again_in_plans_that_were_not_saved_meanwhile() throws BadFile {
        Library library = new Library(FOLDER, PowerCutDisk.working(files()));
        Plan before = library.openPlan("lent").plan();
        OpenOrgan open = library.openOrgan("nether-wick");
        Instrument whole = open.organ().instrument();
        change(library, draft -> without(draft, "Great: Open Diapason 8"));

        OpenOrgan less = library.openOrgan("nether-wick");
        library.saveChangedOrgan(
                less,
                whole,
                DraftChange.of(
                                less.organ().instrument(),
                                OrganDraft.of(less.organ().instrument()))
                        .names(),
                (done, of) -> true);

        assertThat(library.openPlan("lent").plan()).isEqualTo(before);
    }

    @Test
    void when_a_division_its_box_or_a_coupler_goes_the_plan_still_opens() throws BadFile {
        Library library = new Library(FOLDER, PowerCutDisk.working(files()));
        change(library, draft -> set(draft, "Swell", DivisionFields.IS_BOXED, ""));
        assertThat(library.openPlan("lent").plan().hymns()).isNotEmpty();

        change(library, draft -> {
            OrganDraft less = without(draft, "Swell");
            less = without(less, "Swell to Great");
            less = without(less, "Swell Octave");
            return without(less, "Tremulant");
        });

        OpenPlan open = library.openPlan("lent");
        assertThat(open.plan().fits(open.instrument())).isTrue();
        assertThat(verses(open.plan()))
                .anySatisfy(verse -> assertThat(verse.note()).contains("Swell: "));
    }

    @Test
    void a_name_given_anew_after_the_plans_were_left_behind_is_not_taken_for_the_old_one() throws BadFile {
        Library library = new Library(FOLDER, PowerCutDisk.working(files()));
        change(library, draft -> without(draft, "Great: Open Diapason 8"));

        change(library, draft -> set(draft, "Great: Principal 4", StopFields.FEET, "8"));
        change(library, draft -> set(draft, "Great: Principal 8", InstrumentFields.NAME, "Open Diapason"));

        OpenPlan open = library.openPlan("lent");
        Verse verse = verses(open.plan()).stream()
                .filter(each -> each.note().contains("No longer on the organ"))
                .findFirst()
                .orElseThrow();
        assertThat(verse.note()).contains("Great: Open Diapason 8");
    }

    @Test
    void readings_survive_new_names_to_the_last_decibel() throws BadFile {
        Map<Path, byte[]> files = files();
        KnownOrgan calibrated = calibrated();
        files.put(ORGAN, InstrumentJson.bytes(calibrated));
        Library library = new Library(FOLDER, PowerCutDisk.working(files));

        OrganOutcome outcome = change(library, ChangingOrganTest::renamed);

        assertThat(outcome.open().organ().calibration()).isEqualTo(calibrated.calibration());
        assertThat(outcome.open().organ().experience()).isEqualTo(calibrated.experience());
        assertThat(library.openOrgan("nether-wick").organ())
                .isEqualTo(outcome.open().organ());
    }

    @Test
    void the_organ_keeps_the_readings_and_the_usual_registrations_of_what_is_still_there() throws BadFile {
        Map<Path, byte[]> files = files();
        files.put(ORGAN, InstrumentJson.bytes(calibrated()));
        Library library = new Library(FOLDER, PowerCutDisk.working(files));

        OrganOutcome outcome = change(library, draft -> without(draft, "Great: Fifteenth 2"));

        KnownOrgan known = outcome.open().organ();
        assertThat(outcome.forgotten())
                .containsExactly("the usual registration \"full church\"", "1 answer", "1 reading");
        assertThat(known.calibration().kept()).hasSize(1);
        assertThat(known.experience().all())
                .extracting(HeardRegistration::name)
                .containsExactly("gentle", "2026-10-04, 208 V1");
        assertThat(known.calibration().before().orElseThrow().stopsDb())
                .hasSameSizeAs(known.instrument().stops());
        assertThat(library.openOrgan("nether-wick").organ()).isEqualTo(known);
    }

    @Test
    void a_trim_of_borrowed_pipes_stays_in_the_file_has_no_effect_and_is_mentioned() throws BadFile {
        String trimmed = SmallOrgan.with(
                SmallOrgan.FILE, "\"from\": \"Pedal: Bourdon 16\"", "\"from\": \"Pedal: Bourdon 16\", \"trim\": 3");

        Instrument organ = SmallOrgan.read(trimmed);

        assertThat(organ.stops().get(7).stop().trimDb()).isEqualTo(3);
        Registration full = Registration.full(organ);
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision());
        assertThat(OrganSound.open(organ).levelDba(full, hands))
                .isEqualTo(OrganSound.open(SmallOrgan.organ()).levelDba(full, hands));
        assertThat(Caution.organ(organ))
                .containsExactly("Pedal: Bass Flute 8 has a trim without effect: its pipes are those of Pedal: Bourdon"
                        + " 16, which may be trimmed instead.");
        assertThat(Caution.organ(SmallOrgan.organ())).isEmpty();
    }

    /** Two readings and two usual registrations and two answers: of everything, and of the first stop alone. */
    private static KnownOrgan calibrated() {
        Instrument organ = SmallOrgan.organ();
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, organ.mainDivision());
        Registration first = Registration.silent(organ).toggleStop(0);
        Fit fit = Fit.of(
                OrganSound.open(organ),
                List.of(
                        new MeterReading("", Registration.full(organ), hands, Seat.NAVE, 0, Optional.empty(), 84),
                        new MeterReading("", first, hands, Seat.NAVE, 0, Optional.empty(), 66)));
        Experience experience = new Experience(
                List.of(usual("full church", Registration.full(organ), hands), usual("gentle", first, hands)),
                List.of(usual("2026-10-04, 208 V1", first, hands), usual("12 V2", Registration.full(organ), hands)));
        return new KnownOrgan(
                fit.instrument(),
                fit.calibration(),
                experience,
                KnownOrgan.of(organ).former());
    }

    private static HeardRegistration usual(String name, Registration drawn, HandsAndFeet hands) {
        return new HeardRegistration(
                name, SungBy.CONGREGATION, Singing.ORDINARY, 60, OptionalInt.empty(), hands, drawn, HeardAs.RIGHT);
    }

    @Test
    void names_changed_about_between_two_stops_are_refused_until_one_is_saved() throws BadFile {
        Instrument organ = SmallOrgan.organ();
        OrganDraft draft = set(OrganDraft.of(organ), "Great: Principal 4", InstrumentFields.NAME, "Octave");
        draft = set(draft, "Great: Fifteenth 2", StopFields.FEET, "4");
        draft = set(draft, "Great: Fifteenth 4", InstrumentFields.NAME, "Principal");

        assertThat(draft.problems()).isEmpty();
        assertThat(DraftChange.of(organ, draft).problems()).singleElement().satisfies(problem -> assertThat(
                        problem.sentence())
                .startsWith("Principal 4 was another part's name until now."));
    }

    @Test
    void any_instrument_that_can_be_is_the_same_after_it_was_a_draft() {
        for (int seed = 0; seed < 300; seed++) {
            Instrument organ = new RandomWorks(seed).instrument();
            OrganDraft draft = OrganDraft.of(organ);
            assertThat(draft.problems()).as("seed %d", seed).isEmpty();
            assertThat(draft.instrument()).as("seed %d", seed).contains(organ);
            assertThat(DraftChange.of(organ, draft).names().isNone())
                    .as("seed %d", seed)
                    .isTrue();
            assertThat(draft.lines().stream().filter(line -> line.part() == RowKind.STOP))
                    .hasSameSizeAs(organ.stops());
        }
    }

    @Test
    void a_draft_that_is_wrong_is_kept_as_it_was_typed_and_taken_up_again() throws BadFile, IOException {
        PowerCutDisk disk = PowerCutDisk.working(files());
        Library library = new Library(FOLDER, disk);
        OpenOrgan open = library.openOrgan("nether-wick");
        OrganDraft right = OrganDraft.of(open.organ().instrument());
        OrganDraft draft = set(right, "Great: Principal 4", StopFields.FEET, "four\n");
        OrganHold hold = library.hold(open);
        hold.keep(open, set(right, "Great: Principal 4", StopFields.FEET, "4 "));
        hold.keep(open, draft);

        OrganHold living = library.hold(open);
        assertThat(living.left(open)).isEmpty();
        living.keep(open, right);
        living.drop();

        PowerCutDisk later = PowerCutDisk.working(disk.seen());
        OrganHold again = new Library(FOLDER, later).hold(open);
        assertThat(again.left(open)).contains(draft);
        again.drop();
        again.close();
        assertThat(later.seen().keySet()).noneMatch(path -> path.toString().endsWith(".journal"));
    }

    @Test
    void of_a_draft_of_another_file_only_the_texts_are_taken() throws BadFile, IOException {
        PowerCutDisk disk = PowerCutDisk.working(files());
        Library library = new Library(FOLDER, disk);
        OpenOrgan open = library.openOrgan("nether-wick");
        library.hold(open).keep(open, OrganDraft.of(open.organ().instrument()));
        change(library, ChangingOrganTest::renamed);

        Library after = new Library(FOLDER, PowerCutDisk.working(disk.seen()));
        OpenOrgan now = after.openOrgan("nether-wick");
        OrganDraft draft = after.hold(now).left(now).orElseThrow();
        assertThat(draft.lines()).allMatch(line -> line.origin().isEmpty());
        assertThat(draft.divisions()).contains("Swell");
    }
}
