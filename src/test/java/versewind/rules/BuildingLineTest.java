package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import versewind.Shipped;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;
import versewind.plan.Singing;
import versewind.rules.BuildingLine.Addition;
import versewind.rules.BuildingLine.Rung;
import versewind.sound.OrganSound;

/** Common practice, no source: the order in which a registration is built up. */
class BuildingLineTest {

    private static OrganFacts organ(String name) {
        return OrganFacts.of(OrganSound.open(Shipped.instrument(name)));
    }

    private static BuildingLine line(OrganFacts organ, Layout layout, int lead) {
        return new BuildingLine(organ, HandsAndFeet.on(layout, lead), IndexSet.EMPTY);
    }

    private static BuildingLine main(OrganFacts organ) {
        return line(organ, Layout.FOUR_PARTS, organ.organ().mainDivision());
    }

    private static Registration on(OrganFacts organ, Rung rung) {
        return Registration.silent(organ.organ()).withStops(rung.stops()).withCouplers(rung.couplers());
    }

    private static List<String> words(BuildingLine line) {
        return line.rungs().stream()
                .map(rung -> rung.number() + " " + rung.words())
                .toList();
    }

    private static List<String> names(OrganFacts organ, IndexSet stops) {
        return stops.stream()
                .mapToObj(stop -> organ.organ().stops().get(stop).name().toString())
                .toList();
    }

    @Test
    void an_english_parish_organ_goes_from_a_flute_to_full_organ() {
        assertThat(words(main(organ("st-tethwin"))))
                .containsExactly(
                        "1 flute 8",
                        "2 flutes 8 4",
                        "3 principal 8 with flute 4",
                        "4 principals 8 4",
                        "5 principals 8 4 2",
                        "5 principals 8 4 2 with the twelfth",
                        "6 Swell 8 4 coupled",
                        "6 Swell 8 4 2 coupled",
                        "7 Great mixture",
                        "7 Swell mixture",
                        "8 Swell oboe",
                        "8 the pedal’s heavy 16 ft",
                        "8 Swell reed 8",
                        "8 full Swell",
                        "8 full Swell and the pedal’s reed",
                        "9 Great reed 8",
                        "10 Great 16 ft");
    }

    @Test
    void a_village_organ_has_six_steps_and_a_ripieno_is_drawn_strictly_in_order() {
        assertThat(words(main(organ("little-corvening")))).endsWith("6 Manual flutes too");
        assertThat(words(main(organ("montefalda"))))
                .endsWith("4 ripieno to XIX", "4 ripieno to XXII", "4 ripieno to XXVI", "4 ripieno to XXIX");
    }

    @Test
    void flutes_that_come_back_count_as_added_only_over_the_principals_that_had_replaced_them() throws Exception {
        Instrument village = Shipped.instrument("little-corvening");
        BuildingLine line = main(OrganFacts.of(OrganSound.open(village)));
        RegistrationText text = new RegistrationText(village);
        assertThat(line.begun(text.parse("Manual: Stopped Diap 8, Flute 4; couplers: Manual to Pedal")))
                .extracting(BuildingLine.Addition::words)
                .containsExactly("flutes 8 4", "flute 8");
        assertThat(line.begun(text.parse("Manual: Open Diap 8, Stopped Diap 8, Principal 4"))
                        .get(0)
                        .words())
                .isEqualTo("Manual flutes too");
    }

    @Test
    void a_french_organ_draws_its_fonds_together_and_keeps_them() {
        OrganFacts organ = organ("ambrelow");
        List<Rung> rungs = main(organ).rungs();
        assertThat(rungs.get(3).words()).isEqualTo("fonds 8 with flute 4");
        assertThat(names(organ, rungs.get(5).stops()))
                .contains("Grand-Orgue: Montre 8", "Grand-Orgue: Bourdon 8", "Grand-Orgue: Gambe 8");
    }

    @Test
    void a_light_sixteen_that_is_borrowed_comes_before_an_open_one_of_its_own() {
        Instrument parish = Shipped.instrument("st-tethwin");
        Stop bourdon = Stop.of("Bourdon", "16", Family.FLUTE, Pipe.STOPPED);
        Division pedal = new Division(
                "Pedal",
                OptionalInt.empty(),
                30,
                Optional.empty(),
                List.of(
                        Stop.of("Open Diapason", "16", Family.PRINCIPAL, Pipe.OPEN),
                        bourdon.borrowing(new StopName("Great", bourdon.label()))));
        OrganFacts organ = OrganFacts.of(OrganSound.open(new Instrument(
                parish.name(),
                parish.place(),
                parish.action(),
                0,
                List.of(parish.divisions().get(0), parish.divisions().get(1), pedal),
                parish.couplers(),
                List.of(),
                parish.pistons(),
                parish.room())));

        assertThat(main(organ).rungs())
                .filteredOn(rung -> rung.step().compareTo(BuildingStep.ENCLOSED_REEDS) < 0)
                .isNotEmpty()
                .allSatisfy(rung -> assertThat(names(organ, rung.stops()))
                        .contains("Pedal: Bourdon 16")
                        .doesNotContain("Pedal: Open Diapason 16"));
        assertThat(names(
                        organ,
                        main(organ).rungs().get(main(organ).rungs().size() - 1).stops()))
                .contains("Pedal: Open Diapason 16");
    }

    @Test
    void without_the_pedal_nothing_of_it_is_drawn() {
        OrganFacts organ = organ("st-tethwin");
        int great = organ.organ().mainDivision();
        for (Layout layout : List.of(Layout.MANUALS_ONLY, Layout.PEDAL_BY_COUPLER)) {
            List<Rung> rungs = line(organ, layout, great).rungs();
            IndexSet drawn = rungs.get(rungs.size() - 1).stops();
            assertThat(drawn.meets(organ.allOf(organ.pedal()))).isFalse();
        }
    }

    @Test
    void a_stop_that_is_never_drawn_is_as_if_the_organ_had_it_not() {
        OrganFacts organ = organ("st-tethwin");
        IndexSet never = organ.allOf(1);
        BuildingLine line = new BuildingLine(
                organ, HandsAndFeet.on(Layout.FOUR_PARTS, organ.organ().mainDivision()), never);
        assertThat(line.stops().meets(never)).isFalse();
        assertThat(line.rungs()).extracting(Rung::step).doesNotContain(BuildingStep.SECOND_CHORUS);
    }

    @ParameterizedTest
    @FieldSource("versewind.Shipped#ORGANS")
    void every_rung_breaks_no_rule_of_choruses_and_is_known_again(String name) {
        OrganFacts organ = organ(name);
        ChorusFaults faults = ChorusFaults.on(organ);
        HandsAndFeet hands = HandsAndFeet.on(Layout.FOUR_PARTS, organ.organ().mainDivision());
        BuildingLine line = main(organ);
        Company people = new Company(Company.Who.CONGREGATION, Singing.STRONG, Mood.FESTAL);
        for (int i = 0; i < line.rungs().size(); i++) {
            Rung rung = line.rungs().get(i);
            Registration drawn = on(organ, rung);
            assertThat(faults.in(drawn, hands, people))
                    .as(rung.words())
                    .noneMatch(fault -> fault.severity() == Severity.CAUTION);
            assertThat(line.reached(drawn)).contains(rung);
            if (i > 0) {
                Registration below = on(organ, line.rungs().get(i - 1));
                Addition addition = line.additions().get(i);
                assertThat(line.next(below)).contains(addition);
                assertThat(BuildingLine.with(below, addition)).isEqualTo(drawn);
                assertThat(line.begun(drawn).get(0)).isEqualTo(addition);
            }
        }
    }
}
