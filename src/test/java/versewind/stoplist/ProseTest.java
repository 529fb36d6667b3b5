package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Invented organs told in sentences. */
class ProseTest {

    private static String told(StopList list) {
        return list.divisions().stream()
                .map(division -> division.name() + ": "
                        + division.stops().stream()
                                .map(stop -> (stop.name() + " " + stop.feet()).strip())
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "On the Great you will find an Open Diapason 8, a Stopped Diapason 8 and a Principal 4. The Swell,"
                        + " enclosed, has a Gedact 8 and an Oboe 8. The Pedal has but a Bourdon 16."
                        + " | Great: Open Diapason 8, Stopped Diapason 8, Principal 4; Swell: Gedact 8, Oboe 8;"
                        + " Pedal: Bourdon 16",
                "The Great has Open Diapason 8, Principal 4 and Fifteenth 2, while the Swell contains a Gedact 8,"
                        + " a Flute 4 (borrowed from the Great) and an Oboe 8. The Pedal has a Bourdon 16."
                        + " | Great: Open Diapason 8, Principal 4, Fifteenth 2; Swell: Gedact 8, Flute 4, Oboe 8;"
                        + " Pedal: Bourdon 16",
                "Au grand-orgue on trouve une Montre de 8 pieds dont les tuyaux ornent la fa\u00e7ade et un Bourdon de"
                        + " 16. Le r\u00e9cit, enferm\u00e9 dans une bo\u00eete expressive, poss\u00e8de un Cor de nuit"
                        + " de 8 et, pour les anches, une Trompette de 8."
                        + " | grand-orgue: Montre 8, Bourdon 16; r\u00e9cit: Cor de nuit 8, Trompette 8",
                "Im Hauptwerk stehen ein Principal 8', eine Gambe 8' und eine Mixtur 4fach. Das Schwellwerk"
                        + " enth\u00e4lt ein Lieblich Gedackt 8' sowie eine Oboe 8'."
                        + " | Hauptwerk: Principal 8, Gambe 8, Mixtur; Schwellwerk: Lieblich Gedackt 8, Oboe 8",
                "On the Great stands an Open Diapason of 8 ft, with a Claribel Flute and a Dulciana of the same pitch;"
                        + " above it stands a Principal of 4 ft. The Swell has a Bourdon of 16 ft, a Celeste (8 ft,"
                        + " from tenor C), a Trumpet of 8 ft and an Oboe, also of 8 ft."
                        + " | Great: Open Diapason 8, Claribel Flute 8, Dulciana 8, Principal 4; Swell: Bourdon 16,"
                        + " Celeste 8, Trumpet 8, Oboe 8",
                "Het Hoofdwerk heeft een Prestant 8' en een Octaaf 4'. Op het Rugwerk staan een Quintadeen 8' en een"
                        + " Dulciaan 8'. | Hoofdwerk: Prestant 8, Octaaf 4; Rugwerk: Quintadeen 8, Dulciaan 8"
            })
    void sentences_are_read_as_the_list_that_they_hold(String text, String list) {
        StopList read = StopList.read(text);
        assertThat(told(read)).isEqualTo(list);
        assertThat(read.wantsAttention())
                .as("it is said that these were sentences")
                .isTrue();
    }

    @Test
    void sentences_over_several_lines_say_in_which_line_a_stop_stands() {
        StopList list = StopList.read("""
            The organ was made in 1844.
            The Great has an Open Diapason 8, a
            Principal 4 and a Fifteenth 2. The Swell (enclosed) has
            a Gedact 8 and an Oboe 8.

            The couplers are Swell to Great and Great to Pedal.
            """);
        assertThat(list.stops().map(ReadStop::name))
                .containsExactly("Open Diapason", "Principal", "Fifteenth", "Gedact", "Oboe");
        assertThat(list.stops().map(ReadStop::line)).allMatch(line -> line >= 1 && line <= 4);
        assertThat(list.couplers()).extracting(ReadCoupler::name).containsExactly("Swell to Great", "Great to Pedal");
        assertThat(list.divisions()).extracting(ReadDivision::name).containsExactly("Great", "Swell");
    }

    @Test
    void a_list_with_notes_in_sentences_stays_a_list() {
        StopList list = StopList.read("""
            The organ has two manuals. It was made in 1844.

            Great
            Open Diapason 8
            Principal 4
            Pedal
            Bourdon 16

            The Trumpet 8 was taken from the old organ.
            """);
        assertThat(told(list)).isEqualTo("Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16");
        assertThat(list.doubts()).isEqualTo(List.of());
    }

    @Test
    void a_contract_tells_the_pitches_in_words_and_the_couplers_below() {
        StopList read = StopList.read("""
            The GREAT MANUAL is to contain an Open Diapason of eight feet, of metal, 56 pipes; a Twelfth,
            2 2/3 feet; a Gamba and a Melodia, both of eight feet; and a Cymbal of two ranks.

            The SWELL is to have a Bourdon of sixteen feet, of wood, and a Vox Humana of
            eight feet which shall draw by one knob.

            There shall be Couplers as follows: Swell to Great; and Swell to
            Great at the octave.
            """);
        assertThat(told(read))
                .isEqualTo("Great: Open Diapason 8, Twelfth 2 2/3, Gamba 8, Melodia 8, Cymbal; "
                        + "Swell: Bourdon 16, Vox Humana 8");
        assertThat(read.stops().filter(stop -> stop.name().equals("Cymbal")).map(ReadStop::ranks))
                .containsExactly(2);
        assertThat(read.couplers())
                .extracting(each -> each.source() + " " + each.keyboard() + " " + each.kind())
                .containsExactly("Swell Great UNISON", "Swell Great OCTAVE");
    }
}
