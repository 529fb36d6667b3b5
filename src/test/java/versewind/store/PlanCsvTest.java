package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Silenced;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

class PlanCsvTest {

    private static final Library SHIPPED = new Library(Path.of(""));

    static List<String> plans() throws BadFile {
        return SHIPPED.catalogue().read().stream()
                .map(entry -> entry.file().id())
                .toList();
    }

    private static PlanCsv.Read read(String csv) throws BadRows {
        return PlanCsv.read(csv, id -> SHIPPED.openOrgan(id).organ());
    }

    private static String harvest() throws BadFile {
        OpenPlan open = SHIPPED.openPlan("harvest-festival");
        return PlanCsv.of(open.plan(), open.instrument());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void every_shipped_plan_comes_back_as_it_was(String id) throws BadFile, BadRows {
        OpenPlan open = SHIPPED.openPlan(id);

        assertThat(read(PlanCsv.of(open.plan(), open.instrument())).plan()).isEqualTo(open.plan());
    }

    @Test
    void dangerous_texts_and_empty_hymns_come_back_as_they_were() throws BadFile, BadRows {
        OpenPlan open = SHIPPED.openPlan("harvest-festival");
        Hymn odd = new Hymn(
                "-1",
                "=cmd|' /C calc'!A0",
                "@TUNE",
                "+1",
                "'=x",
                OptionalInt.of(90),
                "two\nlines, \"quoted\"",
                List.of());
        Plan plan = new Plan(
                new ServiceHeading("'-", Optional.empty(), 3, " "),
                "st-tethwin",
                List.of(odd, open.plan().hymns().get(1), odd));

        assertThat(read(PlanCsv.of(plan, open.instrument())).plan()).isEqualTo(plan);
        Plan none = plan.withHymns(List.of());
        assertThat(read(PlanCsv.of(none, open.instrument())).plan()).isEqualTo(none);
    }

    @Test
    void what_was_wished_silenced_and_heard_comes_back_as_it_was() throws BadFile, BadRows {
        OpenPlan open = SHIPPED.openPlan("harvest-festival");
        Verse verse = open.plan().hymns().get(0).verses().get(1);
        Verse full = verse.withMood(Mood.FESTAL)
                .withLocks(Locks.NONE.withAlways(0).withNever(2).withNever(3))
                .silencing(new Silenced("gap", "the room: it helps; here"))
                .silencing(new Silenced("no 8 ft", ""))
                .withAnswer(Optional.of(new Feedback(HeardAs.TOO_STRONG, 120)));
        ServiceHeading heading = new ServiceHeading("Slow hands", Optional.empty(), 3, "").withMoveS(1.25);
        Plan plan = open.plan().withVerse(new VersePlace(0, 1), full).withHeading(heading);

        assertThat(read(PlanCsv.of(plan, open.instrument())).plan()).isEqualTo(plan);
    }

    @Test
    void columns_may_be_moved_and_what_repeats_left_blank() throws BadFile, BadRows {
        String csv = """
            title,service,instrument,people,hymn,kind,mode,stops
            All things new,Matins,st-tethwin,40,1,verse,congregation,"Great: Principal 4, Open Diapason 8"
            ,,,,1,last verse,congregation,
            """;

        Plan plan = read(csv).plan();
        assertThat(plan.heading()).isEqualTo(new ServiceHeading("Matins", Optional.empty(), 40, ""));
        assertThat(plan.hymns().get(0).verses()).hasSize(2);
        assertThat(plan.hymns().get(0).verses().get(0).registration().stops().size())
                .isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Trumpet 8 | Trumpit 8 | stops: Great has no stop \"Trumpit 8\". Did you mean \"Trumpet 8\"?",
                "Great: Open | Grate: Open | stops: The organ has no division \"Grate\". Did you mean \"Great\"?",
                "2026-10-04 | 04-10-2026 | date: \"04-10-2026\" is not a date."
                        + " Enter a date, such as 20 Dec 2026 or 2026-12-20.",
                ",480, | ,many, | people: \"many\" is not a number. Enter a whole number from 1 to 50000.",
                "last verse | lost verse | kind: unknown value \"lost verse\". Did you mean \"last verse\"?",
                "Swell to Pedal | Swell to Petal |"
                        + " couplers: The organ has no coupler \"Swell to Petal\". Did you mean \"Swell to Pedal\"?",
            })
    void a_cell_that_is_wrong_is_told_with_its_line_and_column(String was, String is, String sentence) throws BadFile {
        BadRows bad = catchThrowableOfType(BadRows.class, () -> read(harvest().replaceAll(was, is)));

        assertThat(bad.sentences().get(0)).matches("line \\d+: .*").endsWith(sentence);
    }

    @Test
    void all_rows_that_are_wrong_are_told() throws BadFile {
        BadRows bad = catchThrowableOfType(
                BadRows.class,
                () -> read(harvest().replace("Trumpet 8", "Trumpit 8").replace(",last verse", ",lost")));

        assertThat(bad.sentences()).hasSizeGreaterThan(4).doesNotHaveDuplicates();
    }

    @Test
    void every_wrong_cell_of_a_row_is_told() {
        BadRows bad = catchThrowableOfType(BadRows.class, () -> read("""
            service,date,instrument,people,hymn,title,tempo,kind,mode,right,stops
            Matins,May,st-tethwin,many,1,A,fast,verse,angels,Grate,Great: Foo 8
            """));

        assertThat(bad.sentences())
                .extracting(sentence -> sentence.split(": ", 3)[1])
                .containsExactlyInAnyOrder("date", "people", "tempo", "mode", "right", "stops");
    }

    @Test
    void a_wrong_organ_is_told_beside_all_that_is_wrong_without_it() {
        BadRows bad = catchThrowableOfType(BadRows.class, () -> read("""
            service,instrument,people,hymn,title,kind,stops
            Matins,st-tethwyn,many,1,A,psalm,Great: Foo 8
            """));

        assertThat(bad.sentences())
                .containsExactly(
                        "line 2: instrument: instruments: there is no \"st-tethwyn\" here."
                                + " Did you mean \"st-tethwin\"?",
                        "line 2: people: \"many\" is not a number. Enter a whole number from 1 to 50000.",
                        "line 2: kind: unknown value \"psalm\"."
                                + " Use introduction, verse, refrain, interlude, last verse or Amen.");
    }

    @Test
    void rows_with_more_cells_than_columns_are_told_and_empty_ones_at_the_end_do_no_harm() throws BadRows {
        String head = "hymn,service,instrument,people,title,kind,label,stops\n";
        String row = "1,S5,st-tethwin,40,\"Come, carry in\",verse,V1,";
        BadRows bad = catchThrowableOfType(
                BadRows.class,
                () -> read(head + row + "Great: Principal 4\n" + row + "Great: Principal 4, Open Diapason 8\n"));

        assertThat(bad.sentences())
                .containsExactly("line 3: there are more cells than columns."
                        + " Put what contains commas or semicolons, such as a registration, in quotation marks.");
        assertThat(read(head + row + "Great: Principal 4,,\n").plan().hymns()).hasSize(1);
    }

    @Test
    void a_choir_larger_than_the_church_is_read() throws BadFile, BadRows {
        String csv = """
            service,instrument,people,hymn,title,kind,mode,singers,stops
            Matins,st-tethwin,40,1,A,verse,small choir,9000,Great: Principal 4
            """;

        assertThat(read(csv).plan().hymns().get(0).verses().get(0).people()).hasValue(9000);
    }

    @Test
    void a_later_row_that_says_otherwise_of_the_service_or_the_hymn_is_told() throws BadFile {
        String csv = harvest();
        int last = csv.lastIndexOf("Harvest Festival,");
        String other = csv.substring(0, last) + "Easter" + csv.substring(last + "Harvest Festival".length());

        assertThatThrownBy(() -> read(other))
                .isInstanceOf(BadRows.class)
                .hasMessageContaining("service: line 2 has \"Harvest Festival\" here.");
    }

    @Test
    void columns_that_are_missing_or_unknown_are_told() {
        assertThatThrownBy(() -> read("service,colour\na,b\n"))
                .hasMessageStartingWith("line 1: there is no column \"colour\".");
        assertThatThrownBy(() -> read("service,hymn\na,b\n"))
                .hasMessage(
                        "line 1: the columns \"instrument\", \"people\", \"title\", \"kind\", \"stops\" are missing.");
        assertThatThrownBy(() -> read(""))
                .hasMessageStartingWith("line 1: this is empty. Write the names of the columns here, hymn, ");
        assertThatThrownBy(() -> read("service,service\na,b\n"))
                .hasMessage("line 1: the column \"service\" stands here twice.");
    }
}
