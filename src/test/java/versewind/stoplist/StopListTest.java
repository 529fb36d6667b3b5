package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Golden;
import versewind.organ.Family;

/** Lists of invented organs, written as lists are published. What each name means is common practice, no source. */
class StopListTest {

    private static final Path LISTS = Path.of("src/test/resources/stoplists");

    static List<String> lists() throws IOException {
        try (Stream<Path> files = Files.list(LISTS)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    private static StopList read(String name) throws IOException {
        return StopList.read(Files.readString(LISTS.resolve(name)));
    }

    private static ReadStop only(String text) {
        List<ReadStop> stops = StopList.read(text).stops().toList();
        assertThat(stops).as(text).hasSize(1);
        return stops.get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "Open Diapason I 8, 2",
        "Open Diapason No. 1 8, 2",
        "Open Diapason 8, 0",
        "Open Diapason II 8, -2",
        "Open Diapason No. 2 8, -2",
        "Open Diapason III 8, -4",
        "Open Diapason (wood) 8, 0"
    })
    void of_several_open_diapasons_the_first_is_the_broadest(String text, double strengthDb) {
        ReadStop stop = StopList.read("Great\n" + text + "\nPrincipal 4\nFifteenth 2")
                .stops()
                .findFirst()
                .orElseThrow();
        assertThat(stop.strengthDb()).isEqualTo(strengthDb);
        assertThat(stop.ranks()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Six general pistons | 6 | {}",
                "Six thumb pistons (generals); drei Setzer zum Pedal | 6 | {Pedal=3}",
                "Three pistons to each of Great and Pedal | 0 | {Great=3, Pedal=3}",
                "8 generals; four pistons to Great | 8 | {Great=4}",
                "Pistons: Great 1, 2, 3, 4; Pedal 1, 2, 3 | 0 | {Great=4, Pedal=3}",
                "4 pistons to each manual, 3 to Pedal | 0 | {Great=4, Pedal=3}",
                "4 pistons to each manual | 0 | {Great=4}",
                "4 pistons to each division | 0 | {Great=4, Pedal=4}"
            })
    void numbers_of_pistons_are_read_in_words_too(String text, int generals, String divisionals) {
        StopList list =
                StopList.read("Great\nOpen Diapason 8\nPrincipal 4\nPedal\nBourdon 16\nBass Flute 8\n\n" + text);
        assertThat(list.pistons().generals()).isEqualTo(generals);
        assertThat(list.pistons().divisionals()).hasToString(divisionals);
    }

    /** "french.txt", after which the lists of one country or kind are called. */
    static List<String> countries() throws IOException {
        return lists().stream()
                .map(name -> name.substring(name.lastIndexOf('-') + 1))
                .distinct()
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("countries")
    void every_list_of_a_country_reads_as_it_is_meant(String country) throws IOException {
        StringBuilder readings = new StringBuilder();
        for (String name : lists()) {
            if (name.endsWith("-" + country)) {
                readings.append("== ").append(name).append('\n').append(ReadingText.of(read(name)));
            }
        }
        Golden.check("stoplist/" + country, readings.toString());
    }

    @Test
    void every_country_has_its_readings() throws IOException {
        assertThat(Golden.names("stoplist")).isEqualTo(countries());
    }

    @ParameterizedTest
    @MethodSource("lists")
    void an_instrument_can_be_made_of_every_list_with_all_its_stops_and_whole_couplers(String name) throws IOException {
        StopList list = read(name);
        NewInstrument made = NewInstrument.of(list, "New").orElseThrow();
        assertThat(made.instrument().stops()).hasSize((int) list.stops().count());
        assertThat(made.instrument().couplers()).hasSize((int)
                list.couplers().stream().filter(ReadCoupler::isWhole).count());
    }

    @ParameterizedTest
    @MethodSource("lists")
    void no_line_is_dropped_in_silence(String name) throws IOException {
        StopList list = read(name);
        List<String> lines = Files.readAllLines(LISTS.resolve(name));
        for (int i = 0; i < lines.size(); i++) {
            int line = i + 1;
            String text = lines.get(i);
            LineReader.Readings readings = new LineReader.Readings(ListStyle.PLAIN);
            boolean heading = Grid.rows(PageText.lines(text), readings).stream()
                    .flatMap(row -> row.groups().stream())
                    .allMatch(group -> readings.isHeading(group.text())
                            || readings.part(group.text()).isPresent());
            boolean told = list.stops().anyMatch(stop -> stop.line() == line)
                    || list.couplers().stream().anyMatch(coupler -> coupler.line() == line)
                    || list.tremulants().stream().anyMatch(tremulant -> tremulant.line() == line)
                    || list.pistons().lines().contains(line)
                    || (!list.title().isEmpty() && Spelling.spelled(text).contains(Spelling.spelled(list.title())))
                    || list.notUnderstood().stream().anyMatch(unread -> unread.line() == line);
            assertThat(heading || told)
                    .as(name + ", line " + line + ": " + text)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "8;8",
                "8';8",
                "8\u2032;8",
                "8 ft;8",
                "8 ft.;8",
                "8-foot;8",
                "8 Fu\u00df;8",
                "8 voet;8",
                "8 pieds;8",
                "\uff18\u2032;8",
                "16\u2019;16"
            })
    void a_unison_is_read_however_it_is_written(String written, String feet) {
        assertThat(only("Great\nOpen Diapason " + written).feet()).isEqualTo(feet);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2 2/3;2 2/3",
                "2\u2154;2 2/3",
                "2-2/3';2 2/3",
                "2.66;2 2/3",
                "2,67';2 2/3",
                "22/3';2 2/3",
                "2 2\u20443\u2032;2 2/3",
                "5 1/3;5 1/3",
                "1.6;1 3/5",
                "1\u2157';1 3/5",
                "1.1/3';1 1/3",
                "11/3';1 1/3"
            })
    void a_fraction_is_read_however_it_is_written(String written, String feet) {
        ReadStop stop = only("Great\nQuint " + written);
        assertThat(stop.feet()).isEqualTo(feet);
        assertThat(stop.family()).isEqualTo(Family.MUTATION);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "Mixture III;3;''",
                "Mixtur 4f;4;''",
                "Mixtur 4 fach;4;''",
                "Fourniture 3 rgs;3;''",
                "Mixture 4 ranks;4;''",
                "Mixtur III-V;5;''",
                "Mixture IV 1 1/3;4;1 1/3",
                "Mixtur 4-5f. 1 1/3';5;1 1/3",
                "Mixtuur 3-4 sterk;4;''",
                "Lleno IV;4;''",
                "Ripieno 5 file;5;''",
                "Mixture (15.19.22);3;''",
                "III Mixture;3;''"
            })
    void ranks_are_read_however_they_are_written(String written, int ranks, String feet) {
        ReadStop stop = only("Great\n" + written);
        assertThat(stop.ranks()).isEqualTo(ranks);
        assertThat(stop.feet()).isEqualTo(feet);
        assertThat(stop.family()).isEqualTo(Family.MIXTURE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"Doublette;2", "Superoctave;2", "Nasard;2 2/3", "Swell Trumpet;8", "Larigot;1 1/3", "Bourdon;8"})
    void a_stop_without_a_pitch_takes_the_usual_one_and_says_so(String name, String feet) {
        ReadStop stop = only("Grand-Orgue\n" + name);
        assertThat(stop.feet()).isEqualTo(feet);
        assertThat(stop.supposed()).isTrue();
    }

    @Test
    void a_principal_without_a_pitch_is_four_feet_in_an_english_great_and_eight_in_a_german_one() {
        assertThat(only("Great Organ\nPrincipal").feet()).isEqualTo("4");
        assertThat(only("Hauptwerk\nPrincipal").feet()).isEqualTo("8");
    }

    @Test
    void a_cornet_is_a_compound_stop_but_in_a_pedal_at_two_feet_a_reed() {
        assertThat(only("Grand-Orgue\nCornet V").family()).isEqualTo(Family.CORNET);
        StopList list = StopList.read("Hoofdwerk\nPrestant 8'\nPedaal\nCornet 2'");
        assertThat(list.stops().map(ReadStop::family)).containsExactly(Family.PRINCIPAL, Family.SOLO_REED);
    }

    @Test
    void a_stop_prepared_for_is_left_out_and_said_so() {
        StopList list = StopList.read("Great\nOpen Diapason 8\nTrumpet 8 (prepared for)");
        assertThat(list.stops()).hasSize(1);
        assertThat(list.notUnderstood()).singleElement().satisfies(unread -> {
            assertThat(unread.line()).isEqualTo(3);
            assertThat(unread.why()).contains("prepared for");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "The Trumpet 8 was added in 1950 by the builder", "Wind pressure 3 1/2 inches", "Total: 23 stops",
                "Chimes 25 tubes", "Zimbelstern", "61 notes"
            })
    void what_is_no_stop_is_not_made_one(String text) {
        StopList list = StopList.read("Great\nOpen Diapason 8\n" + text);
        assertThat(list.stops().map(ReadStop::name)).containsExactly("Open Diapason");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "Swell to Great;1",
                "Swell to Great 16, 8, 4;3",
                "II/I;1",
                "Sw-Gt 4;1",
                "II/I, I/P, II/P;3",
                "Swell Sub Octave;1",
                "Swell 16' - UO - 4';3",
                "Tirasses I, II;2",
                "Koppel II-I;1",
                "Sub II/I, Super II/I;2",
                "Sub-Oktavkoppel II;1",
                "Unison Off;1",
                "octaves graves;1",
                "Great to Pedal;1",
                "Manual-Coppel;1",
                "Manual Koppel;1",
                "Pedal-Coppel;1",
                "Sw/Ped;1",
                "Swell to Great & Pedal;2"
            })
    void every_coupler_is_counted_once(String text, int count) {
        String organ = "Great\nOpen Diapason 8\nSwell\nOboe 8\nPedal\nBourdon 16\n\nCouplers:\n";
        List<ReadCoupler> couplers = StopList.read(organ + text).couplers();
        assertThat(couplers).hasSize(count);
        assertThat(couplers).allSatisfy(coupler -> assertThat(coupler.isWhole()).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "Principa1 8, Principal",
        "PRINCIPAI 8, PRINCIPAL",
        "FIute 8, Flute",
        "0pen Diapas0n 8, Open Diapason",
        "Rohrf1\u00f6te 8, Rohrfl\u00f6te",
        "Clar1net 8, Clarinet",
        "Comopean 8, Cornopean",
        "FluteII 8, Flute II",
        "McIntyre 8, McIntyre"
    })
    void a_letter_that_a_scan_read_wrongly_is_mended_where_that_gives_a_known_word(String scanned, String printed) {
        assertThat(only("Great\n" + scanned).name()).isEqualTo(printed);
    }

    @Test
    void a_number_in_brackets_names_the_stop_that_lends_its_pipes() {
        StopList list = StopList.read("""
            GREAT
            1 Open Diapason 8   2 Principal 4   3 Trombone 16
            PEDAL
            4 Open Wood 16   5 Open Metal (from 1) 8   6 Ophicleide (3, ext.) 16   7 Trombone (3) 16
            8 Double Open Wood (ext. 4) 32   9 Mixture (15.19.22) III
            """);
        assertThat(list.divisions().get(1).stops())
                .extracting(stop -> String.join("; ", stop.remarks()))
                .satisfiesExactly(
                        own -> assertThat(own).isEmpty(),
                        open -> assertThat(open).contains("from Open Diapason"),
                        ophicleide -> assertThat(ophicleide).contains("from Trombone, ext."),
                        trombone -> assertThat(trombone).contains("from Trombone"),
                        wood -> assertThat(wood).contains("ext. Open Wood"),
                        mixture -> assertThat(mixture).contains("15.19.22"));
    }

    @ParameterizedTest
    @CsvSource({
        "Vox Ang 8, CELESTE",
        "Vox h. 8, SOLO_REED",
        "Baarp. 8, FLUTE",
        "Baz. 16, CHORUS_REED",
        "Crem. 8, SOLO_REED"
    })
    void a_name_of_words_cut_short_is_known_where_all_that_it_can_mean_is_alike(String text, Family family) {
        ReadStop stop = only("Great\n" + text);
        assertThat(stop.family()).isEqualTo(family);
        assertThat(stop.how().isSure()).isTrue();
    }

    @Test
    void stops_that_clash_get_names_of_their_own_in_the_instrument_and_it_is_said() {
        NewInstrument made = NewInstrument.of(StopList.read("Great\nFlute 8\nFlute 8"), "Two")
                .orElseThrow();
        assertThat(made.instrument().stops().stream().map(knob -> knob.name().label()))
                .containsExactly("Flute 8", "Flute (2) 8");
        assertThat(made.remarks()).anyMatch(remark -> remark.contains("two stops called Flute 8"));
    }

    @Test
    void an_old_quint_of_three_feet_sounds_two_and_two_thirds() {
        StopList list = StopList.read("Hoofdwerk\nPrestant 8 voet\nQuint 3 voet");
        assertThat(list.stops().map(ReadStop::feet)).containsExactly("8", "3");
        assertThat(NewInstrument.of(list, "Old")
                        .orElseThrow()
                        .instrument()
                        .stops()
                        .get(1)
                        .name()
                        .label())
                .isEqualTo("Quint 2 2/3");
    }

    @Test
    void nothing_is_made_of_nothing() {
        assertThat(StopList.read("").divisions()).isEmpty();
        assertThat(NewInstrument.of(StopList.read("Dear friends of the organ,\nthank you."), "None"))
                .isEmpty();
    }

    @Test
    void no_text_breaks_the_reading() throws IOException {
        Random random = new Random(7);
        List<String> pieces = lists().stream()
                .flatMap(name -> Stream.of(uncheckedText(name).split("(?<=\\s)|(?=[,:./'|])", -1)))
                .collect(Collectors.toList());
        for (int i = 0; i < 80; i++) {
            StringBuilder text = new StringBuilder();
            for (int j = 0; j < 60; j++) {
                text.append(pieces.get(random.nextInt(pieces.size())));
            }
            StopList list = StopList.read(text.toString());
            everyTextIsTakenInOrLeftOut(text.toString());
            NewInstrument.of(list, "Any")
                    .ifPresent(made -> assertThat(made.instrument().stops()).isNotEmpty());
        }
    }

    private static void everyTextIsTakenInOrLeftOut(String text) {
        List<PageText.Numbered> lines = PageText.lines(text);
        LineReader.Readings readings = new LineReader.Readings(
                ListStyle.of(lines.stream().map(PageText.Numbered::text).toList()));
        List<Grid.Row> rows = Grid.rows(lines, readings);
        assertThat(LineReader.of(rows, readings).entries())
                .isGreaterThanOrEqualTo(
                        rows.stream().mapToInt(row -> row.groups().size()).sum());
    }

    @Test
    @Timeout(180)
    void long_lists_and_long_lines_are_read_in_time_that_grows_with_their_length() {
        int many = 2000;
        for (String line :
                List.of("Flute 8\n", "Tremulant\n", "Swell to Great\n", "6 generals\n", "Great:\n", "Zorgel 8'\n")) {
            StopList.read("Great\nOpen Diapason 8\nSwell\nOboe 8\n" + line.repeat(many));
        }
        for (String piece :
                List.of(" ", "(", "( ", ". ", "_ ", "- ", "1", "a", "'", "<", "8' ", "Flute 8, ", "I/II ", "\t")) {
            StopList.read("Great\nOpen Diapason 8\nFlute " + piece.repeat(many) + "x");
        }
    }

    @ParameterizedTest
    @Tag("slow")
    @Timeout(10)
    @ValueSource(
            strings = {
                "x",
                "1",
                "[[",
                "<td>",
                "8' ",
                "I/II ",
                "Flute 8, ",
                "Swell to Great\n\n",
                "Zorgel 8'\n",
                "Not known here\n",
                "from tenor C\n",
                "Division,Stop,Pitch\nGreat,Flute,8\n",
                "Great I\nFlute 8\n",
                "Great: Flute 8, Great: Flute 8, Great: Flute 8\n"
            })
    void the_longest_text_that_is_read_is_read_within_seconds(String piece) {
        String text = "Great\nOpen Diapason 8\n" + piece.repeat(490_000 / piece.length());
        String longest = text.lines().limit(5_000).collect(Collectors.joining("\n"));
        assertThat(StopList.read(longest).stops()).isNotEmpty();
    }

    @Test
    void a_line_that_no_list_has_is_in_doubt_and_a_text_that_no_list_is_is_refused() {
        StopList list = StopList.read("Great\nOpen Diapason 8\n" + "8' ".repeat(2000));
        assertThat(list.doubts()).singleElement().satisfies(doubt -> assertThat(doubt.line())
                .isEqualTo(3));
        assertThat(list.stops()).hasSize(1);
        assertThat(StopList.refusal("Flute 8\n".repeat(5_000))).isEmpty();
        assertThat(StopList.refusal("Flute 8\n".repeat(5_001))).isPresent();
        assertThat(StopList.refusal("x".repeat(5_000_000))).isPresent();
    }

    private static String uncheckedText(String name) {
        try {
            return Files.readString(LISTS.resolve(name));
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static List<String> told(String text) {
        return StopList.read(text).divisions().stream()
                .map(division -> division.name() + ": "
                        + division.stops().stream()
                                .map(stop -> (stop.name() + " " + stop.feet()).strip())
                                .collect(Collectors.joining(", ")))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '\0',
            value = {
                "Flauta 8' (ab c', Diskant); Flauta Diskant",
                "Fagott 8' (Bass, C-h); Fagott Bass",
                "Flauta 8' (Diskant); Flauta Diskant",
                "Flauta 8' (Bass aus Holz); Flauta"
            })
    void the_half_of_the_keyboard_that_a_remark_tells_stays_with_the_name(String stop, String name) {
        assertThat(only("Hauptwerk\n" + stop).name()).isEqualTo(name);
    }

    @Test
    void what_a_remark_says_of_the_kind_of_pipe_is_more_than_the_usual() {
        assertThat(only("Grand'Organo\nVoce umana 8'").family()).isEqualTo(Family.CELESTE);
        assertThat(only("Grand'Organo\nVoce umana 8' (ancia)").family()).isEqualTo(Family.SOLO_REED);
        assertThat(only("Grand'Organo\nVoce umana 8' (ancia)").pipe().isReed()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '\0',
            value = {
                "Cornet Treble     3 ranks, metal (12.15.17); Cornet Treble 3 [metal, 12.15.17]",
                "Flute             8   metal, from c1; Flute 1 [metal, from c1]",
                "Flute, metal .    .     8   \u201e; Flute 1 [metal]",
                "Sesquialtera      (2 ranks, metal); Sesquialtera 2 [metal]",
                "Unda Maris (8 ft, from tenor C); Unda Maris 1 [from tenor C]"
            })
    void a_column_of_remarks_keeps_its_brackets_and_is_no_loan(String row, String read) {
        ReadStop stop = only("Great\n" + row);
        assertThat(stop.name() + " " + stop.ranks() + " " + stop.remarks()).isEqualTo(read);
    }

    @Test
    void wood_makes_an_open_diapason_of_the_pedal_broader() {
        assertThat(only("Pedal\nOpen Diapason (wood) 16").strengthDb())
                .isGreaterThan(only("Pedal\nOpen Diapason 16").strengthDb());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "OP. DIAP. FRONT, 8 FT; PRINCIPAL 8",
                "OP. DIAP. NO. 2 TO GAMUT G, 8 FT; PRINCIPAL 8",
                "CREM., 8 FT; SOLO_REED 8",
                "CLAR. FROM MID. C, 8 FT; SOLO_REED 8"
            })
    void a_pitch_behind_a_comma_belongs_to_a_name_cut_short(String text, String read) {
        ReadStop stop = only("GT. ORGAN\n" + text);
        assertThat(stop.family() + " " + stop.feet()).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Stemming: Ritterhoff III",
                "Flaut travers 8 Fu\u00df, halb, durch die 2. obern Octaven",
                "Octave      8'   zinc",
                "2 COMPN. PEDALS."
            })
    void no_stop_is_made_of_what_is_said_beside_one(String line) {
        assertThat(StopList.read("Hauptwerk\nPrincipal 8'\n" + line + "\nTrompete 8'")
                        .stops()
                        .map(ReadStop::name))
                .containsAnyOf("Principal", "Trompete")
                .isSubsetOf("Principal", "Flaut travers", "Octave", "Trompete");
    }

    @ParameterizedTest
    @CsvSource({"B, A", "(B), (A)"})
    void a_letter_behind_the_stop_of_a_unit_organ_names_the_rank_whose_pipes_it_uses(String flute, String diapason) {
        StopList list = StopList.read("RANKS\nA  Diapason   8'  73 pipes\nB  Gedeckt   16'  97 pipes\n\nGREAT\n"
                + "8  Diapason  " + diapason + "\n8  Gedeckt  " + flute + "\n4  Octave  " + diapason
                + "\n\nPEDAL\n16  Bourdon  " + flute);
        assertThat(list.stops()
                        .map(stop -> stop.name() + " " + stop.feet() + " "
                                + stop.remarks().stream().findFirst().orElse("")))
                .containsExactly("Diapason 8 ", "Gedeckt 8 ", "Octave 4 from Diapason", "Bourdon 16 from Gedeckt");
    }

    @Test
    void names_alone_stand_left_and_right_in_a_table() {
        StopList list = StopList.read("""
            <table><tr><th>Mão esquerda (m.e.)</th><th>Mão direita (m.d.)</th></tr>
            <tr><td>Flauta de 6 tapada</td><td>Voz humana (ondulante)</td></tr>
            <tr><td>Cheio de 22&ordf;, 3 filas</td><td>Quinzena</td></tr></table>
            """);
        assertThat(list.stops().map(stop -> stop.name() + " " + stop.feet() + " " + stop.family()))
                .containsExactly(
                        "Flauta de 6 tapada Mão esquerda 4 FLUTE",
                        "Voz humana Mão direita 8 CELESTE",
                        "Cheio de 22ª Mão esquerda  MIXTURE",
                        "Quinzena Mão direita 2 PRINCIPAL");
    }

    @Test
    void stops_above_every_heading_and_a_pitch_behind_another_are_in_doubt() {
        assertThat(StopList.read("Bourdon 16\nDiapason 8\n\nSWELL\nOboe 8\nGamba 8")
                        .doubts())
                .isNotEmpty();
        assertThat(only("Great\nOctave 4 16'").how().isSure()).isFalse();
        assertThat(told("Pedal\nContras de 26 palmos, 8 notas")).containsExactly("Pedal: Contras 16");
    }
}
