package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import versewind.Shipped;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.OrganSound;

/** What fixes do on verses that are drawn blindly, the same for the same organ. */
class FixesTest {

    private static final int VERSES = 40;
    private static final int MOST_FIXES = 12;
    private static final VersePlace HERE = new VersePlace(0, 0);

    private static <T> T any(Random random, T[] all) {
        return all[random.nextInt(all.length)];
    }

    private static Registration drawn(Instrument organ, Random random) {
        Registration drawn = Registration.silent(organ);
        for (int i = 0; i < 3 + random.nextInt(8); i++) {
            drawn = drawn.toggleStop(random.nextInt(organ.stops().size()));
        }
        for (int i = 0; i < 2; i++) {
            drawn = drawn.toggleCoupler(random.nextInt(organ.couplers().size()));
        }
        if (!organ.tremulants().isEmpty() && random.nextInt(4) == 0) {
            drawn = drawn.toggleTremulant(random.nextInt(organ.tremulants().size()));
        }
        for (int home = 0; home < organ.divisions().size(); home++) {
            BoxPosition position = any(random, BoxPosition.values());
            drawn = organ.divisions().get(home).isEnclosed() ? drawn.withBox(home, position) : drawn;
        }
        return drawn;
    }

    private static Plan blind(Instrument organ, Random random) {
        List<Integer> manuals = organ.manualDivisions();
        int right = manuals.get(random.nextInt(manuals.size()));
        int left = random.nextBoolean() ? right : manuals.get(random.nextInt(manuals.size()));
        Verse verse = Verses.blank(organ, VerseKind.VERSE)
                .withMode(any(random, Mode.values()))
                .withSinging(any(random, Singing.values()))
                .withMood(any(random, Mood.values()))
                .withHands(new HandsAndFeet(any(random, Layout.values()), right, left))
                .withRegistration(drawn(organ, random));
        Hymn hymn = new Hymn("1", "The first", "", "", "", OptionalInt.of(90), "", List.of(verse));
        return new Plan(new ServiceHeading("A service", Optional.empty(), 120, ""), "organ", List.of(hymn));
    }

    private static Map<ChorusRule, Integer> hard(ChorusFaults faults, Plan plan) {
        Map<ChorusRule, Integer> hard = new EnumMap<>(ChorusRule.class);
        Verse verse = plan.hymns().get(0).verses().get(0);
        faults.in(verse.registration(), verse.hands(), Company.of(plan, HERE)).stream()
                .filter(fault -> fault.severity() == Severity.CAUTION)
                .forEach(fault -> hard.merge(fault.rule(), 1, Integer::sum));
        return hard;
    }

    @ParameterizedTest
    @FieldSource("versewind.Shipped#ORGANS")
    void a_fix_removes_its_finding_breaks_nothing_and_is_undone_by_no_other(String name) {
        OrganSound sound = OrganSound.open(Shipped.instrument(name));
        Advice advice = Advice.on(sound);
        ChorusFaults faults = ChorusFaults.on(OrganFacts.of(sound));
        Random random = new Random(name.hashCode());
        int found = 0;
        int fixed = 0;
        for (int i = 0; i < VERSES; i++) {
            Plan plan = blind(sound.organ(), random);
            Set<String> done = new HashSet<>();
            for (int step = 0; step < MOST_FIXES; step++) {
                List<Finding> findings = advice.findings(plan, HERE);
                found += step == 0 ? findings.size() : 0;
                assertThat(findings)
                        .extracting(finding -> finding.rule() + " " + finding.sentence())
                        .noneMatch(done::contains);
                Optional<Finding> next = findings.stream()
                        .filter(finding -> finding.mend().isPresent())
                        .findFirst();
                if (next.isEmpty()) {
                    break;
                }
                Plan after = next.get().mend().orElseThrow().on(plan);
                Map<ChorusRule, Integer> before = hard(faults, plan);
                hard(faults, after).forEach((rule, count) -> assertThat(count)
                        .as("%s after %s", rule, next.get())
                        .isLessThanOrEqualTo(before.getOrDefault(rule, 0)));
                done.add(next.get().rule() + " " + next.get().sentence());
                plan = after;
                fixed++;
            }
        }
        assertThat(fixed).isGreaterThan(found / 2);
    }
}
