package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class NamesTest {

    private static Names names(String... names) {
        return new Names("The Great has no stop", "It has", List.of(names));
    }

    @Test
    void a_name_is_found_as_it_is_written() throws NotationException {
        assertThat(names("Open Diapason 8", "Principal 4").find("Principal 4")).isEqualTo(1);
    }

    @Test
    void capitals_accents_and_hyphens_make_no_difference() throws NotationException {
        assertThat(names("Bourdon 16", "Flûte à cheminée 8").find("flute A CHEMINEE 8"))
                .isEqualTo(1);
        assertThat(names("Open Diapason 8", "Spitz-Flöte 4").find("spitz flote 4"))
                .isEqualTo(1);
    }

    @Test
    void a_name_typed_with_its_accents_is_preferred_to_one_that_differs_in_them() throws NotationException {
        assertThat(names("Flute 8", "Flûte 8").find("Flûte 8")).isEqualTo(1);
        assertThat(names("Flute 8", "Flûte 8").find("Flute 8")).isZero();
    }

    @Test
    void feet_may_be_written_after_a_number() throws NotationException {
        Names names = names("Principal 4", "Twelfth 2 2/3");
        assertThat(names.find("Principal 4'")).isZero();
        assertThat(names.find("principal 4 ft")).isZero();
        assertThat(names.find("Principal 4ft.")).isZero();
        assertThat(names.find("Twelfth 2 2/3\u2032")).isEqualTo(1);
    }

    @Test
    void a_beginning_that_only_one_name_has_is_enough() throws NotationException {
        assertThat(names("Open Diapason 8", "Principal 4").find("op")).isZero();
    }

    @Test
    void words_may_be_left_out_and_shortened_where_only_one_name_is_meant() throws NotationException {
        assertThat(names("Open Diapason 8", "Open Flute 4").find("open 8")).isZero();
        assertThat(names("four parts", "manuals only", "melody soloed").find("soloed"))
                .isEqualTo(2);
    }

    @Test
    void a_whole_name_is_meant_even_if_others_begin_with_it() throws NotationException {
        assertThat(names("Flute 8 celeste 8", "Flute 8").find("flute 8")).isEqualTo(1);
    }

    @Test
    void a_beginning_is_meant_rather_than_a_later_word() throws NotationException {
        assertThat(names("Double Trumpet 16", "Trumpet 8").find("Trumpet")).isEqualTo(1);
    }

    @Test
    void numbers_are_not_shortened() {
        assertThatThrownBy(() -> names("Bourdon 16").find("Bourdon 1")).isInstanceOf(NotationException.class);
    }

    @Test
    void roman_numbers_are_not_shortened_either() throws NotationException {
        assertThat(names("Diapason II 8", "Diapason I 8").find("diapason i")).isEqualTo(1);
        assertThat(names("Viola 8", "Gamba 8").find("vi")).isZero();
    }

    @Test
    void of_several_that_fit_equally_none_is_meant() {
        assertThatThrownBy(() ->
                        names("Open Diapason 8", "Open Flute 4", "Principal 4").find("Open"))
                .hasMessage("\"Open\" may mean \"Open Diapason 8\" or \"Open Flute 4\". Write more of the name.");
    }

    @Test
    void a_name_that_is_wrong_by_a_letter_is_answered_with_the_nearest() {
        assertThatThrownBy(() -> names("Open Diapason 8", "Principal 4").find("Prinzipal 4"))
                .hasMessage("The Great has no stop \"Prinzipal 4\". Did you mean \"Principal 4\"?");
    }

    @Test
    void a_name_like_none_is_answered_with_all() {
        assertThatThrownBy(() -> names("Open Diapason 8", "Principal 4").find("Kazoo"))
                .hasMessage("The Great has no stop \"Kazoo\". It has \"Open Diapason 8\", \"Principal 4\".");
    }

    @Test
    void nothing_but_blanks_means_no_name() {
        assertThatThrownBy(() -> names("Open Diapason 8").find(" ")).isInstanceOf(NotationException.class);
    }
}
