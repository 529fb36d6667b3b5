package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Invented organs told in sentences. */
class ProseTest {

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
}
