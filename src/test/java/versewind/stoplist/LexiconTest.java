package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Family;
import versewind.organ.Pipe;

class LexiconTest {

    private static Lexicon.Found found(String name) {
        return Lexicon.get().find(name, NameContext.NONE).orElseThrow();
    }

    @Test
    void it_knows_more_than_a_thousand_names_each_with_a_sentence() {
        assertThat(Lexicon.get().rows()).hasSizeGreaterThan(1000).allSatisfy(row -> {
            assertThat(row.kind().description()).isNotBlank().endsWith(".");
            assertThat(row.kind().strengthDb()).isBetween(-8.0, 8.0);
        });
    }

    @Test
    void a_reed_has_reed_pipes_and_a_flue_has_none() {
        assertThat(Lexicon.get().rows())
                .allSatisfy(row -> assertThat(row.kind().pipe().isReed())
                        .as(row.kind().name())
                        .isEqualTo(row.kind().family().isReed()));
    }

    @Test
    void no_name_stands_twice_under_the_same_conditions() {
        Map<String, String> seen = new HashMap<>();
        for (Lexicon.Row row : Lexicon.get().rows()) {
            for (String name : row.names()) {
                String before = seen.put(
                        Spelling.spelled(name) + row.conditions(), row.kind().name());
                assertThat(before == null || before.equals(row.kind().name()))
                        .as(name + " in " + before + " and " + row.kind().name())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Open Diapason, PRINCIPAL, OPEN",
        "Stopped Diapason, FLUTE, STOPPED",
        "Viola da Gamba, STRING, OPEN",
        "Vox coelestis, CELESTE, OPEN",
        "Twelfth, MUTATION, OPEN",
        "Fourniture, MIXTURE, OPEN",
        "Cornopean, CHORUS_REED, CONICAL_REED",
        "Cromorne, SOLO_REED, CYLINDRICAL_REED",
        "Flûte harmonique, FLUTE, HARMONIC",
        "Spitzflöte, FLUTE, TAPERED",
        "Roerfluit, FLUTE, STOPPED",
        "Basun, CHORUS_REED, CONICAL_REED",
        "Voce umana, CELESTE, OPEN",
        "Vox humana, SOLO_REED, CYLINDRICAL_REED"
    })
    void a_name_has_its_family_and_its_kind_of_pipe(String name, Family family, Pipe pipe) {
        assertThat(found(name).kind().family()).isEqualTo(family);
        assertThat(found(name).kind().pipe()).isEqualTo(pipe);
        assertThat(found(name).how()).isEqualTo(Confidence.NAME);
    }

    @ParameterizedTest
    @CsvSource({
        "Oktav, Octave",
        "Klarinette, Clarinet",
        "Cymbale, Zimbel",
        "Rohr-Flöte, Rohrflote",
        "Prinzipal, Principal",
        "Gedeckt, Gedackt"
    })
    void two_spellings_are_one_family(String one, String other) {
        assertThat(found(one).kind().family()).isEqualTo(found(other).kind().family());
    }

    @ParameterizedTest
    @CsvSource({
        "Domgambe, STRING",
        "Turmtrompete, CHORUS_REED",
        "Kapellflöte, FLUTE",
        "Contra Hohl Flute, FLUTE",
        "Festmixtur, MIXTURE"
    })
    void a_compound_is_known_by_its_parts(String name, Family family) {
        assertThat(found(name).how()).isEqualTo(Confidence.PARTS);
        assertThat(found(name).kind().family()).isEqualTo(family);
    }

    @Test
    void a_mistake_of_the_pen_is_found_and_is_not_called_sure() {
        Lexicon.Found found = found("Salicoinal");
        assertThat(found.how()).isEqualTo(Confidence.SPELLING);
        assertThat(found.how().isSure()).isFalse();
        assertThat(found.kind().family()).isEqualTo(Family.STRING);
    }

    @Test
    void what_is_like_no_name_is_not_found() {
        assertThat(Lexicon.get().find("Kettlewick", NameContext.NONE)).isEqualTo(Optional.empty());
    }

    @Test
    void a_name_can_be_asked_for_its_sentence() {
        assertThat(Lexicon.describe("Stopped Diapason"))
                .hasValueSatisfying(sentence -> assertThat(sentence).contains("flute"));
        assertThat(Lexicon.describe("Kettlewick")).isEmpty();
    }
}
