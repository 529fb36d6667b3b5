package versewind.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import versewind.Shipped;
import versewind.organ.Instrument;

/** An instrument as rows of text. */
class OrganDraftTest {

    private static final Map<String, Field<?, ?>> FIELDS = Map.ofEntries(
            Map.entry("Name", InstrumentFields.NAME),
            Map.entry("Manual", DivisionFields.KEYBOARD),
            Map.entry("Keys", InstrumentFields.KEYS),
            Map.entry("Feet", StopFields.FEET),
            Map.entry("Family", StopFields.FAMILY),
            Map.entry("Pipe", StopFields.PIPE),
            Map.entry("Ranks", StopFields.RANKS),
            Map.entry("Breaks", StopFields.COMPOSITION),
            Map.entry("Trim", StopFields.TRIM),
            Map.entry("In box", StopFields.OUTSIDE),
            Map.entry("From", StopFields.FROM),
            Map.entry("Sounds", InstrumentFields.SOURCE),
            Map.entry("Action", InstrumentFields.ACTION));

    private static final OrganDraft DRAFT = OrganDraft.of(Shipped.instrument("st-tethwin"));

    private static int row(OrganDraft draft, String name) {
        for (int i = 0; i < draft.lines().size(); i++) {
            if (draft.lines().get(i).has(InstrumentFields.NAME)
                    && draft.fullName(i).equals(name)) {
                return i;
            }
        }
        throw new AssertionError("there is no " + name);
    }

    private static OrganDraft set(OrganDraft draft, String name, Field<?, ?> field, String text) {
        int at = row(draft, name);
        return draft.with(at, draft.lines().get(at).with(field, text).values());
    }

    private static List<String> sentences(OrganDraft draft) {
        return draft.problems().stream().map(Problem::sentence).toList();
    }

    @ParameterizedTest
    @FieldSource("versewind.Shipped#ORGANS")
    void a_shipped_instrument_is_the_same_after_it_was_a_draft(String id) {
        assertThat(OrganDraft.of(Shipped.instrument(id)).instrument()).contains(Shipped.instrument(id));
    }

    /** One thing is typed wrongly; what is said of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Great: Mixture III | Ranks | '' | A mixture needs its number of ranks.",
                "Great: Mixture III | Ranks | 13 | Ranks: 13 is out of range. Enter a whole number from 1 to 12.",
                "Great: Open Diapason 8 | Name | '' | Name: This must not be blank. Enter a name.",
                "Great: Open Diapason 8 | Feet | '' | A principal needs a footage.",
                "Great: Open Diapason 8 | Feet | 9x | 'Feet: \"9x\" is not a pitch in feet. Enter a pitch in feet, such"
                        + " as 8, 2 2/3 or 1/2.'",
                "Great: Open Diapason 8 | Pipe | conical | A principal is not made of conical reed pipes.",
                "Great: Open Diapason 8 | Ranks | 2 | Only compound stops have several ranks.",
                "Great: Open Diapason 8 | Trim | 21 | Trim: 21 is out of range. Enter a number from -20 to 20.",
                "Great: Open Diapason 8 | In box | yes | Great has no swell box for it to stand in.",
                "Great: Open Diapason 8 | From | Pedal: Bordun 16 | 'Great: Open Diapason 8 borrows from \"Pedal:"
                        + " Bordun 16\", which does not exist. Did you mean \"Pedal: Bourdon 16\"?'",
                "Great: Open Diapason 8 | From | Great: Open Diapason 8 | 'Great: Open Diapason 8 borrows from itself."
                        + " Let one stop of the circle have pipes.'",
                "Pedal: Bass Flute 8 | Trim | 2 | Bass Flute 8 has no pipes of its own to trim."
                        + " Trim Pedal: Bourdon 16.",
                "Swell | Name | Great | 'Two divisions are called \"Great\". Give one of them another name.'",
                "Great | Manual | 8 | 'Manual: \"8\" is not a keyboard. Enter a keyboard, 1 for the lowest manual to 7,"
                        + " or pedal.'",
                "Great | Keys | 20 | A manual has 24 to 73 keys.",
                "Great | Manual | pedal | A pedal has 12 to 37 keys.",
                "Great | Name | 'A: B' | 'Name: \"A: B\" is not a name. Enter a name, as Great or Hauptwerk, without a"
                        + " colon.'",
                "Swell to Great | Sounds | Swel | 'Sounds: There is no division \"Swel\". Did you mean \"Swell\"?'",
                "Swell to Great | Sounds | Great | A unison coupler joins two divisions.",
                "Swell to Great | Name | Great to Pedal | 'Two couplers are called \"Great to Pedal\". Give one of them"
                        + " another name.'",
                "St Tethwin | Action | steam | 'Action: Unknown value \"steam\". Use mechanical or electric.'",
            })
    void whatever_is_wrong_is_said_where_it_is(String name, String field, String text, String sentence) {
        OrganDraft wrong = set(DRAFT, name, FIELDS.get(field), text);

        assertThat(sentences(wrong)).contains(sentence);
        assertThat(wrong.instrument()).isEmpty();
        int at = row(DRAFT, name);
        assertThat(wrong.with(at, DRAFT.lines().get(at).values())).isEqualTo(DRAFT);
    }

    @Test
    void several_things_are_wrong_at_once_and_all_are_said_from_the_first_row_to_the_last() {
        int at = row(DRAFT, "Great: Principal 4");
        OrganDraft wrong = set(DRAFT.duplicated(at), "Swell to Great", InstrumentFields.PITCH, "twelfth");
        wrong = wrong.duplicated(row(wrong, "Pedal")).with(0, Collections.nCopies(4, "?"));

        assertThat(wrong.problems()).extracting(Problem::line).isSorted();
        assertThat(sentences(wrong))
                .contains(
                        "Trim: \"?\" is not a number. Enter a number from -20 to 20.",
                        "Great has two stops called \"Principal 4\". Give one of them another name.",
                        "An instrument has one pedal at most. Put all its stops into one pedal division.",
                        "Pitch: Unknown value \"twelfth\". Use unison, octave, sub-octave or unison off.");
    }

    @Test
    void a_mixture_added_without_ranks_is_told_until_it_has_them() {
        int at = DRAFT.placeFor(RowKind.STOP, row(DRAFT, "Swell"));
        OrganDraft draft = DRAFT.inserted(at, DraftLine.blank(RowKind.STOP));
        draft = draft.with(at, List.of("Cymbal", "1/2", "mix", "", "", "", "", "", "", ""));
        assertThat(sentences(draft)).containsExactly("A mixture needs its number of ranks.");

        draft = draft.with(at, List.of("Cymbal", "1/2", "mix", "", "iii", "", "", "", "", ""));
        assertThat(draft.fullName(at)).isEqualTo("Swell: Cymbal III");
        assertThat(draft.instrument().orElseThrow().stops())
                .anySatisfy(knob -> assertThat(knob.name()).hasToString("Swell: Cymbal III"));
    }

    @Test
    void couplers_tremulants_and_what_is_borrowed_follow_a_new_name() {
        OrganDraft draft = set(DRAFT, "Swell", InstrumentFields.NAME, "Récit");
        draft = set(draft, "Pedal: Bourdon 16", InstrumentFields.NAME, "Soubasse");

        Instrument organ = draft.instrument().orElseThrow();
        assertThat(organ.couplers()).noneMatch(coupler -> coupler.source().equals("Swell"));
        assertThat(organ.tremulants())
                .allMatch(tremulant -> !tremulant.division().equals("Swell"));
        assertThat(organ.stops().stream().flatMap(knob -> knob.stop().borrowed().stream()))
                .noneMatch(name -> name.label().equals("Bourdon 16"));
    }

    @Test
    void a_stop_moves_within_its_division_and_over_into_the_next() {
        int last = row(DRAFT, "Swell") - 1;
        String name = DRAFT.lines().get(last).label();
        OrganDraft.Moved over = DRAFT.movedDown(last).orElseThrow();

        assertThat(over.draft().fullName(over.at())).isEqualTo("Swell: " + name);
        assertThat(over.draft().movedUp(over.at()).orElseThrow().draft()).isEqualTo(DRAFT);
        assertThat(DRAFT.movedUp(row(DRAFT, "Great") + 1)).isEmpty();
    }

    @Test
    void whatever_moves_down_moves_up_again_and_takes_its_stops_along() {
        for (int at = 0; at < DRAFT.lines().size(); at++) {
            String name = DRAFT.lines().get(at).label();
            DRAFT.movedDown(at).ifPresent(down -> {
                assertThat(down.draft().lines().get(down.at()).label()).isEqualTo(name);
                assertThat(down.draft().movedUp(down.at()).orElseThrow().draft())
                        .isEqualTo(DRAFT);
            });
        }
        OrganDraft.Moved great = DRAFT.movedDown(row(DRAFT, "Great")).orElseThrow();
        assertThat(great.draft().divisions().subList(0, 2)).containsExactly("Swell", "Great");
        assertThat(great.draft().fullName(great.at() + 1)).startsWith("Great: ");
    }

    @Test
    void a_division_goes_with_its_stops_and_what_led_to_it_is_told() {
        OrganDraft less = DRAFT.without(row(DRAFT, "Swell"));

        assertThat(less.divisions()).doesNotContain("Swell");
        assertThat(sentences(less)).isNotEmpty().allMatch(sentence -> sentence.contains("Swell"));
    }

    @Test
    void a_room_that_cannot_be_is_told() {
        int at = DRAFT.only(RowKind.TIMES);

        assertThat(sentences(DRAFT.with(at, List.of("", "", "", "0.1", "", ""))))
                .singleElement()
                .asString()
                .contains("of absorption");
        assertThat(sentences(DRAFT.with(at, Collections.nCopies(6, ""))))
                .containsExactly(
                        "The reverberation is missing. Enter a time for one octave at least, or add surfaces.");
    }
}
