package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Couplers in the styles of several countries: each read once, with its divisions and pitch. Common practice, no
 * source.
 */
class CouplerStylesTest {

    private static List<String> read(String manuals, String couplers) {
        return StopList.read(manuals + "\n\n" + couplers).couplers().stream()
                .map(each -> each.source() + ">" + each.keyboard() + " "
                        + each.kind().word())
                .toList();
    }

    @Test
    void a_table_of_couplers_has_a_column_for_each_pitch() {
        assertThat(read("Great\nOpen Diapason 8\nSwell\nOboe 8\nPedal\nBourdon 16", """
            COUPLERS
                                 16'     8'     4'
            Swell to Great        x      x      -
            Great to Pedal        -      x      -
            Swell to Swell        x     U.O.    x
            """))
                .containsExactlyInAnyOrder(
                        "Swell>Great sub-octave",
                        "Swell>Great unison",
                        "Great>Pedal unison",
                        "Swell>Swell sub-octave",
                        "Swell>Swell unison off",
                        "Swell>Swell octave");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "COUPLERS      16    8    4\nSw to Gt            x    x\nGt to Ped           x",
                "|COUPLERS|16|8|4|\n|Sw to Gt||x|x|\n|Gt to Ped| |x| |"
            })
    void a_blank_in_a_table_of_couplers_is_no_coupler(String table) {
        assertThat(read("Great\nOpen Diapason 8\nSwell\nOboe 8\nPedal\nBourdon 16", table))
                .containsExactly("Swell>Great unison", "Swell>Great octave", "Great>Pedal unison");
    }

    @Test
    void the_compass_beside_a_heading_is_no_coupler() {
        StopList list = StopList.read("SWELL ORGAN  CC-G, 56 notes (enclosed)\nOpen Diapason  8\nOboe  8\n"
                + "GREAT ORGAN  CC-G, 56 notes\nOpen Diapason  8\nPrincipal  4");
        assertThat(list.couplers()).isEmpty();
        assertThat(list.divisions())
                .extracting(each -> each.name() + " " + each.keys().orElse(0) + " " + each.enclosed())
                .containsExactly("Swell 56 true", "Great 56 false");
    }

    @Test
    void a_coupler_that_names_only_its_keyboard_takes_the_other_manual() {
        assertThat(read(
                        "Hauptmanual\nPrincipal 8'\nOberwerk\nGedackt 8'\nPedal\nSubbass 16'",
                        "Koppeln: Coppel zum Hauptmanual, Coppel zum Pedal"))
                .containsExactly("Oberwerk>Hauptmanual unison", "Hauptmanual>Pedal unison");
    }

    @Test
    void two_divisions_joined_by_and_are_a_coupler_among_couplers() {
        assertThat(read(
                        "Manuaal\nPrestant 8'\nRugpositief\nHolpijp 8'\nPedaal\nSubbas 16'",
                        "Koppelingen: Man. en Rugp., Ped. en Man."))
                .hasSize(2)
                .allMatch(each -> each.endsWith("unison") && !each.startsWith(">") && !each.contains("> "));
    }

    @Test
    void the_year_in_which_a_coupler_was_added_does_not_hide_it() {
        assertThat(read(
                        "Grand Orgue\nMontre 8\nR\u00e9cit\nHautbois 8",
                        "Accouplement \u00e0 tiroir R\u00c9CIT/G.O. ajout\u00e9 en 1936."))
                .containsExactly("R\u00e9cit>Grand Orgue unison");
    }

    @Test
    void a_sentence_that_speaks_of_couplers_is_in_doubt() {
        StopList list = StopList.read("Grand Orgue\nMontre 8\nR\u00e9cit\nHautbois 8\n\n"
                + "L'accouplement du r\u00e9cit au grand-orgue se fait par une p\u00e9dale ajout\u00e9e en 1936.");
        assertThat(list.couplers().isEmpty() && list.doubts().isEmpty()).isFalse();
    }

    private static final String ENGLISH = """
        GREAT
        Open Diapason 8
        Principal 4
        SWELL
        Gedackt 8
        Oboe 8
        CHOIR
        Dulciana 8
        Flute 4
        PEDAL
        Bourdon 16
        """;

    private static final String GERMAN = """
        I. Hauptwerk C-g3
        Prinzipal 8'
        Oktave 4'
        II. Oberwerk C-g3
        Gedackt 8'
        Rohrflöte 4'
        III. Schwellwerk C-g3
        Salicional 8'
        Oboe 8'
        Pedal C-f1
        Subbaß 16'
        """;

    private static final String FRENCH = """
        I. Grand-Orgue
        Montre 8
        Prestant 4
        II. Positif
        Bourdon 8
        Nazard 2 2/3
        III. Récit expressif
        Flûte harmonique 8
        Hautbois 8
        Pédale
        Soubasse 16
        """;

    private static final String DUTCH = """
        Hoofdwerk
        Prestant 8'
        Octaaf 4'
        Bovenwerk
        Roerfluit 8'
        Nasard 2 2/3'
        Pedaal
        Subbas 16'
        """;

    private static final String ITALIAN = """
        I Manuale - Grand'Organo
        Principale 8'
        Ottava 4'
        II Manuale - Espressivo
        Bordone 8'
        Viola 8'
        Pedale
        Subbasso 16'
        """;

    private static final String SPANISH = """
        I. Gran Órgano
        Flautado 8'
        Octava 4'
        II. Recitativo
        Violón 8'
        Oboe 8'
        Pedal
        Contras 16'
        """;

    private static final String DANISH = """
        Hovedværk
        Principal 8'
        Oktav 4'
        Svelleværk
        Gedakt 8'
        Salicional 8'
        Pedal
        Subbas 16'
        """;

    private static final String SWEDISH = """
        Huvudverk
        Principal 8'
        Oktava 4'
        Svällverk
        Gedackt 8'
        Salicional 8'
        Pedal
        Subbas 16'
        """;

    /** The couplers of a list with this under its stops, "Swell>Great", with the pitch behind where it is no unison. */
    private static List<String> couplers(String organ, String heading, String... lines) {
        return StopList.read(organ + "\n" + heading + "\n" + String.join("\n", lines) + "\n").couplers().stream()
                .map(each -> each.source() + ">" + each.keyboard()
                        + switch (each.kind()) {
                            case UNISON -> "";
                            case OCTAVE -> " 4";
                            case SUB_OCTAVE -> " 16";
                            case UNISON_OFF -> " off";
                        })
                .toList();
    }

    @Test
    void english_couplers_with_abbreviations_and_pitches() {
        assertThat(couplers(
                        ENGLISH,
                        "COUPLERS",
                        "Sw. to Gt. Sub",
                        "Sw. to Gt.",
                        "Sw. to Gt. Super",
                        "Ch. to Gt.",
                        "Great to Pedal",
                        "Sw. to Ped.",
                        "Swell Octave",
                        "Choir Unison Off"))
                .containsExactly(
                        "Swell>Great 16",
                        "Swell>Great",
                        "Swell>Great 4",
                        "Choir>Great",
                        "Great>Pedal",
                        "Swell>Pedal",
                        "Swell>Swell 4",
                        "Choir>Choir off");
    }

    @Test
    void american_couplers_with_their_pitches_behind_them() {
        assertThat(couplers(
                        ENGLISH,
                        "Couplers:",
                        "Swell to Great 16, 8, 4",
                        "Choir to Great 8",
                        "Great Unison Off",
                        "Great to Pedal 8, 4",
                        "Swell 16, UO, 4"))
                .containsExactlyInAnyOrder(
                        "Swell>Great 16",
                        "Swell>Great",
                        "Swell>Great 4",
                        "Choir>Great",
                        "Great>Great off",
                        "Great>Pedal",
                        "Great>Pedal 4",
                        "Swell>Swell 16",
                        "Swell>Swell off",
                        "Swell>Swell 4");
    }

    @Test
    void german_couplers_by_numbers_and_signs() {
        assertThat(couplers(GERMAN, "Koppeln:", "II/I", "III/I", "III/II", "I/P", "II/P", "Super III/I", "Sub III/I"))
                .containsExactly(
                        "Oberwerk>Hauptwerk",
                        "Schwellwerk>Hauptwerk",
                        "Schwellwerk>Oberwerk",
                        "Hauptwerk>Pedal",
                        "Oberwerk>Pedal",
                        "Schwellwerk>Hauptwerk 4",
                        "Schwellwerk>Hauptwerk 16");
        assertThat(couplers(GERMAN, "Koppeln", "II-I, III-I, II\u2013P, I\u2013P"))
                .containsExactly("Oberwerk>Hauptwerk", "Schwellwerk>Hauptwerk", "Oberwerk>Pedal", "Hauptwerk>Pedal");
    }

    @Test
    void german_couplers_in_words() {
        assertThat(couplers(
                        GERMAN,
                        "Nebenregister",
                        "Koppel OW an HW",
                        "HW-Ped",
                        "Koppel SW an HW",
                        "Pedalkoppel II",
                        "Superoktavkoppel III/I"))
                .containsExactly(
                        "Oberwerk>Hauptwerk",
                        "Hauptwerk>Pedal",
                        "Schwellwerk>Hauptwerk",
                        "Oberwerk>Pedal",
                        "Schwellwerk>Hauptwerk 4");
        assertThat(couplers(GERMAN, "Spielhilfen", "Manualkoppel", "Pedalkoppel I"))
                .containsExactly("Oberwerk>Hauptwerk", "Hauptwerk>Pedal");
        assertThat(couplers(GERMAN, "Koppeln", "Schiebekoppel II/I", "Pedalkoppel"))
                .containsExactly("Oberwerk>Hauptwerk", "Hauptwerk>Pedal");
        assertThat(couplers(GERMAN, "Koppeln", "Schiebekoppel")).containsExactly("Oberwerk>Hauptwerk");
    }

    @Test
    void french_couplers() {
        assertThat(couplers(
                        FRENCH,
                        "Accouplements",
                        "Pos/GO",
                        "Réc/GO",
                        "Réc/GO 16'",
                        "Réc/Pos",
                        "Octaves graves Récit",
                        "Tirasse GO/Pos/Réc"))
                .containsExactly(
                        "Positif>Grand-Orgue",
                        "Récit expressif>Grand-Orgue",
                        "Récit expressif>Grand-Orgue 16",
                        "Récit expressif>Positif",
                        "Récit expressif>Récit expressif 16",
                        "Grand-Orgue>Pédale",
                        "Positif>Pédale",
                        "Récit expressif>Pédale");
        assertThat(couplers(
                        FRENCH,
                        "Accessoires",
                        "Accouplement Récit au GO",
                        "Accouplement du Positif au Grand-Orgue",
                        "Tirasse Récit",
                        "Tirasse G.O."))
                .containsExactly(
                        "Récit expressif>Grand-Orgue",
                        "Positif>Grand-Orgue",
                        "Récit expressif>Pédale",
                        "Grand-Orgue>Pédale");
    }

    @Test
    void dutch_couplers() {
        assertThat(couplers(DUTCH, "Koppelingen", "Koppel HW-BW", "Koppel Ped-HW"))
                .containsExactly("Bovenwerk>Hoofdwerk", "Hoofdwerk>Pedaal");
        assertThat(couplers(DUTCH, "Werktuiglijke registers", "Manuaalkoppel", "Pedaalkoppel"))
                .containsExactly("Bovenwerk>Hoofdwerk", "Hoofdwerk>Pedaal");
        assertThat(couplers(DUTCH, "Koppels", "Hoofdwerk - Bovenwerk", "Pedaal - Hoofdwerk", "Pedaal - Bovenwerk"))
                .containsExactly("Bovenwerk>Hoofdwerk", "Hoofdwerk>Pedaal", "Bovenwerk>Pedaal");
    }

    @Test
    void italian_couplers() {
        assertThat(couplers(ITALIAN, "Unioni", "Unione I-P", "Unione II-P", "Unione II-I", "Ottava acuta II"))
                .containsExactly(
                        "Grand'Organo>Pedale",
                        "Espressivo>Pedale",
                        "Espressivo>Grand'Organo",
                        "Espressivo>Espressivo 4");
        assertThat(couplers(ITALIAN, "Accessori", "Unione II al I", "Unione I al Pedale", "Ottava grave II-I"))
                .containsExactly("Espressivo>Grand'Organo", "Grand'Organo>Pedale", "Espressivo>Grand'Organo 16");
    }

    @Test
    void spanish_couplers() {
        assertThat(couplers(SPANISH, "Acoplamientos", "Acoplamiento II-I", "I-P", "II-P"))
                .containsExactly("Recitativo>Gran Órgano", "Gran Órgano>Pedal", "Recitativo>Pedal");
        assertThat(couplers(
                        SPANISH, "Accesorios", "Enganche Recitativo al Gran Órgano", "Enganche Gran Órgano al Pedal"))
                .containsExactly("Recitativo>Gran Órgano", "Gran Órgano>Pedal");
    }

    @Test
    void scandinavian_couplers() {
        assertThat(couplers(DANISH, "Kopler", "Hovedværk/Pedal", "Svelleværk/Hovedværk", "Svelleværk/Pedal"))
                .containsExactly("Hovedværk>Pedal", "Svelleværk>Hovedværk", "Svelleværk>Pedal");
        assertThat(couplers(
                        SWEDISH, "Koppel", "Svällare till Huvudverk", "Huvudverk till Pedal", "Svällverk till Pedal"))
                .containsExactly("Svällverk>Huvudverk", "Huvudverk>Pedal", "Svällverk>Pedal");
    }

    @Test
    void catalan_couplers() {
        assertThat(couplers(
                        "Cadireta\nBordó 8'\nFlautat 4'\nOrgue Major\nFlautat 8'\nPedal\nContres 16'",
                        "Acoblaments: Cadireta a Orgue Major; Orgue Major a Pedal."))
                .containsExactly("Cadireta>Orgue Major", "Orgue Major>Pedal");
    }

    @Test
    void couplers_in_the_short_forms_of_players() {
        assertThat(couplers(ENGLISH, "Couplers:", "Sw 8ve to Gt", "Ch 8va", "Sw Sub 8ve", "Sw UO"))
                .containsExactlyInAnyOrder("Swell>Great 4", "Choir>Choir 4", "Swell>Swell 16", "Swell>Swell off");
        assertThat(couplers(ENGLISH, "COUPLERS", "9. Swell to Great, Unison.", "10. Swell to Choir, Super-octave."))
                .containsExactly("Swell>Great", "Swell>Choir 4");
        assertThat(couplers(ENGLISH, "COUPLERS.\u2014Swell to Great; Swell to Great, super-octave; Choir to Great."))
                .containsExactly("Swell>Great", "Swell>Great 4", "Choir>Great");
        assertThat(couplers(FRENCH, "", "Tirasses : G.O. - Pos."))
                .containsExactly("Grand-Orgue>Pédale", "Positif>Pédale");
        assertThat(couplers(GERMAN, "Koppeln:", "III 4/I", "III 4/P", "II/I"))
                .containsExactly("Schwellwerk>Hauptwerk 4", "Schwellwerk>Pedal 4", "Oberwerk>Hauptwerk");
        assertThat(couplers("HV: 1 Principal 8  2 Oktav 4\nSV: 3 Gedakt 8  4 Obo 8  5 SV 4'\nPed: 6 Subbas 16", ""))
                .containsExactly("SV>SV 4");
    }
}
