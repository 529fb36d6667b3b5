package versewind.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.Instrument;
import versewind.store.BadFile;
import versewind.store.InstrumentEntry;
import versewind.store.Library;

class OrganDraftTest {

    static List<String> shipped() throws Exception {
        return new Library(Path.of(""))
                .instruments().stream().map(InstrumentEntry::id).toList();
    }

    private static Instrument organ(String id) {
        try {
            return new Library(Path.of("")).openInstrument(id);
        } catch (BadFile bad) {
            throw new IllegalStateException(bad);
        }
    }

    private static final OrganDraft DRAFT = OrganDraft.of(organ("st-tethwin"));

    private static int line(OrganDraft draft, String name) {
        for (int i = 0; i < draft.lines().size(); i++) {
            if (draft.lines().get(i).part().slots().contains(DraftField.NAME)
                    && draft.fullName(i).equals(name)) {
                return i;
            }
        }
        throw new AssertionError("there is no " + name + " among "
                + draft.lines().stream().map(DraftLine::values).toList());
    }

    private static OrganDraft set(OrganDraft draft, String name, DraftField slot, String text) {
        int at = line(draft, name);
        return draft.with(at, draft.lines().get(at).with(slot, text).values());
    }

    private static List<String> sentences(OrganDraft draft) {
        return draft.problems().stream().map(Problem::sentence).toList();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void a_shipped_instrument_is_the_same_after_it_was_a_draft(String id) {
        assertThat(OrganDraft.of(organ(id)).instrument()).contains(organ(id));
    }

    /** One thing is written wrongly; what is said of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Great: Mixture III | RANKS | '' | The number of ranks is missing: a mixture needs it.",
                "Great: Mixture III | RANKS | 13 | 'Not a number of ranks from 1 to 12: \"13\".'",
                "Great: Mixture III | BREAKS | C one | The breaks cannot be read: write C 1 1/3, 1; c1 2, 1 1/3 (a"
                        + " key, then its feet).",
                "Great: Open Diapason 8 | NAME | '' | A name is missing: every stop needs one.",
                "Great: Open Diapason 8 | FEET | '' | The pitch in feet is missing: a principal needs one.",
                "Great: Open Diapason 8 | FEET | 9x | 'Not a pitch from 1/8 to 64 feet: \"9x\".'",
                "Great: Open Diapason 8 | FAMILY | brass | 'Family: not \"brass\"; it is principal, flute, string,"
                        + " celeste, mutation, mixture, cornet, chorus reed, solo reed.'",
                "Great: Open Diapason 8 | PIPE | conical | A principal is not made of conical reed pipes.",
                "Great: Open Diapason 8 | RANKS | 2 | Only compound stops have several ranks.",
                "Great: Open Diapason 8 | TRIM | 21 | A trim lies between -20 and 20 dB.",
                "Great: Open Diapason 8 | STANDS | yes | 'It is to stand in the box, but Great has no box.'",
                "Great: Open Diapason 8 | FROM | Pedal: Ophicleide 32 | 'It borrows from \"Pedal: Ophicleide 32\","
                        + " which does not exist.'",
                "Great: Open Diapason 8 | FROM | Great: Open Diapason 8 | It borrows from itself in a circle: let one"
                        + " of them have pipes.",
                "Swell | NAME | Great | Two divisions are called Great: give one another name.",
                "Great | MANUAL | 8 | 'Manual: not \"8\"; it is a whole number from 1 to 7.'",
                "Great | KEYS | 80 | A manual has 24 to 73 keys.",
                "Great | MANUAL | pedal | There is a pedal already: an organ has one.",
                "Swell to Great | SOUNDS | Echo | 'It leads nowhere: there is no division \"Echo\".'",
                "Swell to Great | SOUNDS | Great | A unison coupler joins two divisions.",
                "Swell to Great | NAME | Great to Pedal | Two are called Great to Pedal: give one of them another"
                        + " name.",
                "St Tethwin | ACTION | steam | 'Action: not \"steam\"; it is mechanical, electric.'",
            })
    void whatever_is_wrong_is_said_where_it_is(String name, DraftField slot, String text, String sentence) {
        int at = line(DRAFT, name);
        OrganDraft wrong = set(DRAFT, name, slot, text);

        assertThat(wrong.problems()).anySatisfy(problem -> {
            assertThat(problem.sentence()).isEqualTo(sentence);
        });
        assertThat(wrong.instrument()).isEmpty();
        assertThat(wrong.with(at, DRAFT.lines().get(at).values())).isEqualTo(DRAFT);
    }

    @Test
    void two_stops_of_one_name_in_a_division_are_told() {
        OrganDraft twice = DRAFT.duplicated(line(DRAFT, "Great: Principal 4"));

        assertThat(sentences(twice)).containsExactly("Great has two stops called Principal 4: give one another name.");
        assertThat(twice.problems().get(0).line()).isEqualTo(line(DRAFT, "Great: Principal 4") + 1);
    }

    @Test
    void a_mixture_put_in_without_ranks_is_told_until_it_has_them() {
        int at = DRAFT.placeFor(RowKind.STOP, line(DRAFT, "Swell"));
        OrganDraft draft = DRAFT.inserted(at, DraftLine.blank(RowKind.STOP));
        draft = draft.with(at, List.of("Cymbal", "1/2", "mix", "", "", "", "", "", ""));
        assertThat(sentences(draft)).containsExactly("The number of ranks is missing: a mixture needs it.");

        draft = draft.with(at, List.of("Cymbal", "1/2", "mix", "", "iii", "", "", "", ""));
        assertThat(draft.fullName(at)).isEqualTo("Swell: Cymbal III");
        assertThat(draft.instrument().orElseThrow().stops())
                .anySatisfy(knob -> assertThat(knob.name()).hasToString("Swell: Cymbal III"));
    }

    @Test
    void couplers_tremulants_and_what_is_borrowed_follow_a_new_name() {
        OrganDraft draft = set(DRAFT, "Swell", DraftField.NAME, "Récit");
        draft = set(draft, "Pedal: Bourdon 16", DraftField.NAME, "Soubasse");

        Instrument organ = draft.instrument().orElseThrow();
        assertThat(organ.couplers()).noneMatch(coupler -> coupler.source().equals("Swell"));
        assertThat(organ.tremulants())
                .allMatch(tremulant -> !tremulant.division().equals("Swell"));
        assertThat(organ.stops().stream().flatMap(knob -> knob.stop().borrowed().stream()))
                .noneMatch(name -> name.label().equals("Bourdon 16"));
    }

    @Test
    void a_stop_moves_within_its_division_and_over_into_the_next() {
        int last = line(DRAFT, "Swell") - 1;
        String name = DRAFT.lines().get(last).label();
        OrganDraft.Moved over = DRAFT.movedDown(last).orElseThrow();

        assertThat(over.draft().fullName(over.at())).isEqualTo("Swell: " + name);
        assertThat(over.draft().movedUp(over.at()).orElseThrow().draft()).isEqualTo(DRAFT);
        assertThat(DRAFT.movedUp(line(DRAFT, "Great") + 1)).isEmpty();
    }

    @Test
    void a_division_moves_with_its_stops_and_back() {
        OrganDraft.Moved down = DRAFT.movedDown(line(DRAFT, "Great")).orElseThrow();

        assertThat(down.draft().divisions().subList(0, 2)).containsExactly("Swell", "Great");
        assertThat(down.draft().fullName(down.at())).isEqualTo("Great");
        assertThat(down.draft().fullName(down.at() + 1)).startsWith("Great: ");
        assertThat(down.draft().movedUp(down.at()).orElseThrow().draft()).isEqualTo(DRAFT);
    }

    @Test
    void a_division_goes_with_its_stops_and_what_led_to_it_is_told() {
        OrganDraft less = DRAFT.without(line(DRAFT, "Swell"));

        assertThat(less.divisions()).doesNotContain("Swell");
        assertThat(sentences(less)).isNotEmpty().allMatch(sentence -> sentence.contains("Swell"));
    }

    @Test
    void a_room_that_cannot_be_is_told() {
        OrganDraft draft = DRAFT;
        for (int i = 0; i < DRAFT.lines().size(); i++) {
            if (DRAFT.lines().get(i).part() == RowKind.TIMES) {
                draft = DRAFT.with(i, List.of("", "", "", "0.1", "", ""));
            }
        }
        assertThat(sentences(draft)).singleElement().asString().contains("of absorption");
    }
}
