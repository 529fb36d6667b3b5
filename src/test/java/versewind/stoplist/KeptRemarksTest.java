package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Family;
import versewind.organ.Pipe;
import versewind.organ.Stop;
import versewind.organ.StopName;

/** What a list says of a stop besides its name, pitch and family, as the instrument made of it keeps it. */
class KeptRemarksTest {

    private static Stop last(String list) {
        NewInstrument made = NewInstrument.of(StopList.read(list), "New").orElseThrow();
        return made.instrument().divisions().stream().reduce((first, next) -> next).orElseThrow().stops().stream()
                .reduce((first, next) -> next)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "Vox Angelica (T.C.) 8; T.C.",
                "Vox Angelica 8 TC; TC",
                "Gamba 8 from tenor C; from tenor C",
                "Dulciana 8, grooved to Open Diapason; grooved to Open Diapason",
                "Salicional (bass from Open Diapason) 8; bass from Open Diapason",
                "Clarinet (tenor C) 8; tenor C",
                "Clarinet (from mid. C) 8; from mid. C",
                "Gamba 8 (wood); ''",
                "Gamba; pitch not given\\, 8 ft assumed"
            })
    void from_which_key_a_stop_begins_and_what_was_assumed_is_its_note(String stop, String note) {
        Stop made = last("Great\nOpen Diapason 8\nPrincipal 4\nFlute 8\nFlute 4\n" + stop);
        assertThat(made.note()).isEqualTo(note.replace("\\,", ";"));
        assertThat(made.borrowed()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "Mixture III 15.19.22; 2, 1 1/3, 1",
                "Mixture (12-15-19) III; 2 2/3, 2, 1 1/3",
                "Mixture III\\nC: 2 + 1 1/3 + 1\\nc1: 2 2/3 + 2 + 1 1/3; 2, 1 1/3, 1",
                "Sesquialtera II 2 2/3 ft + 1 3/5 ft; 2 2/3, 1 3/5",
                "Mixture III; ''"
            })
    void the_ranks_of_a_mixture_are_its_composition(String stop, String pitches) {
        Stop made = last("Great\nOpen Diapason 8\nPrincipal 4\n" + stop.replace("\\n", "\n"));
        String lowest = made.composition().stream()
                .findFirst()
                .map(each -> each.pitches().toString())
                .orElse("[]");
        assertThat(lowest).isEqualTo("[" + pitches + "]");
    }

    @Test
    void a_rank_that_would_be_too_high_drops_an_octave_and_that_is_said() {
        Stop made = last("Great (58 notes)\nOpen Diapason 8\nMixture III 15.19.22");
        assertThat(made.composition()).hasSizeGreaterThan(1);
        assertThat(made.note()).isEqualTo("15.19.22; breaks assumed");
    }

    @Test
    void breaks_that_the_list_gives_are_those_of_the_organ() {
        Stop made = last("Hauptwerk\nPrinzipal 8'\nMixtur III\nC: 1 1/3 + 1 + 2/3\nc': 2 + 1 1/3 + 1");
        assertThat(made.composition()).extracting(each -> each.fromKey()).containsExactly(36, 60);
        assertThat(made.note()).isEmpty();
    }

    @Test
    void pitches_from_a_higher_key_on_are_kept_as_a_note_and_do_not_count_below_it() {
        Stop made = last("Great\nOpen Diapason 8\nMixture III (c1: 2 + 1 1/3 + 1)");
        assertThat(made.composition()).isEmpty();
        assertThat(made.note()).isEqualTo("c1: 2 + 1 1/3 + 1");
    }

    @Test
    void a_principal_that_is_said_to_be_stopped_is_a_flute() {
        Stop made = last("Great\nOpen Diapason 8\nPedal\nPedal Principal (stopped) 16");
        assertThat(made.family()).isEqualTo(Family.FLUTE);
        assertThat(made.pipe()).isEqualTo(Pipe.STOPPED);
        assertThat(last("Great\nOpen Diapason 8\nPedal\nOpen Diapason (the bass stopped) 16")
                        .family())
                .isEqualTo(Family.PRINCIPAL);
    }

    @ParameterizedTest
    @CsvSource({"Trombone 16, Trombone 16", "Trombone 16, Trumpet 8", "Flute 8, Claribel Flute 8"})
    void a_division_beside_a_stop_of_the_pedal_lends_its_pipes(String stop, String lender) {
        assertThat(last("Great\nOpen Diapason 8\n" + lender + "\nPedal\nBourdon 16\n" + stop + " (Great)")
                        .borrowed())
                .contains(new StopName("Great", lender));
    }

    @ParameterizedTest
    @CsvSource({"Great (58 notes), 58", "'Great\\n(58 notes, C-a)', 58", "'Great\\n56 notes', 56"})
    void a_note_below_a_heading_gives_the_compass(String heading, int keys) {
        StopList list = StopList.read(heading.replace("\\n", "\n") + "\nOpen Diapason 8\nPrincipal 4");
        assertThat(list.divisions().get(0).keys()).hasValue(keys);
    }

    @ParameterizedTest
    @CsvSource({
        "'Compass: manuals 58 notes, pedals 30 notes.', 58, 30",
        "'An organ with two manuals of 61 keys and a pedal of 32 keys.', 61, 32",
        "'Built 1958 for 56 guilders.', 0, 0"
    })
    void a_note_above_the_first_heading_gives_the_compass_of_all_keyboards(String note, int manual, int pedal) {
        StopList list = StopList.read(note + "\nGreat\nOpen Diapason 8\nSwell\nOboe 8\nPedal\nBourdon 16");
        assertThat(list.divisions()).extracting(each -> each.keys().orElse(0)).containsExactly(manual, manual, pedal);
    }

    @Test
    void a_gemshorn_is_of_one_family_at_every_pitch() {
        StopList list = StopList.read("Great\nGemshorn 8\nGemshorn 4\nGemshorn 2");
        assertThat(list.stops().map(ReadStop::family)).containsOnly(Family.FLUTE);
    }

    @Test
    void a_playing_aid_is_named() {
        StopList list = StopList.read("Great\nOpen Diapason 8\nGreat & Pedal combinations coupled");
        assertThat(list.notUnderstood()).extracting(Unread::text).containsExactly("Great & Pedal combinations coupled");
    }
}
