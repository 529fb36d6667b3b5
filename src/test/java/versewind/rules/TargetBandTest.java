package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.Thresholds;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;

class TargetBandTest {

    private static OpenPlan plan(String name) throws BadFile {
        return new Library(Path.of("")).openPlan(name);
    }

    private static Estimate estimate(Instrument organ, Verse verse, int people) {
        return OrganSound.open(organ).estimate(verse, people, OptionalInt.empty());
    }

    private static Instrument louder(Instrument organ, double byDb) {
        return new Instrument(
                organ.name(),
                organ.place(),
                organ.action(),
                organ.trimDb() + byDb,
                organ.divisions(),
                organ.couplers(),
                organ.tremulants(),
                organ.pistons(),
                organ.room());
    }

    /** The organ is made as much softer as the band says, and its margin is then that of the threshold. */
    @ParameterizedTest
    @ValueSource(strings = {"harvest-festival", "ordinary-sunday"})
    void an_organ_as_loud_as_the_low_end_only_just_leads(String name) throws BadFile {
        OpenPlan open = plan(name);
        int people = open.plan().heading().people();
        int checked = 0;
        for (Hymn hymn : open.plan().hymns()) {
            for (Verse verse : hymn.verses()) {
                Estimate now = estimate(open.instrument(), verse, people);
                if (verse.mode() != Mode.CONGREGATION
                        || !verse.isSung()
                        || now.margin().db().isEmpty()) {
                    continue;
                }
                TargetBand band = TargetBand.of(verse.mode(), now).orElseThrow();
                double toLow = band.lowDba().orElseThrow() - now.organDba().orElseThrow();
                Estimate then = estimate(louder(open.instrument(), toLow), verse, people);
                assertThat(then.margin().db().orElseThrow()).isCloseTo(Thresholds.LEAD.goodDb(), within(1.5));
                assertThat(band.highDba() - band.lowDba().orElseThrow())
                        .isCloseTo(
                                Thresholds.LEAD.tooStrongDb().orElseThrow() - Thresholds.LEAD.goodDb(), within(1e-9));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(5);
    }

    @Test
    void under_a_voice_there_is_a_highest_level_and_no_lowest() throws BadFile {
        OpenPlan open = plan("wedding");
        int people = open.plan().heading().people();
        Verse verse = open.plan().hymns().get(0).verses().stream()
                .filter(Verse::isSung)
                .findFirst()
                .orElseThrow()
                .withMode(Mode.SOLO_VOICE);
        Estimate estimate = estimate(open.instrument(), verse, people);
        TargetBand band = TargetBand.of(Mode.SOLO_VOICE, estimate).orElseThrow();
        assertThat(band.lowDba()).isEmpty();
        assertThat(band.highDba() - estimate.organDba().orElseThrow())
                .isCloseTo(estimate.margin().db().orElseThrow() - Thresholds.SOLOIST_WORDS.goodDb(), within(1e-9));
    }

    @Test
    void alone_the_organ_has_no_band() throws BadFile {
        OpenPlan open = plan("wedding");
        Verse verse = open.plan().hymns().get(0).verses().get(0).withKind(VerseKind.INTERLUDE);
        Estimate estimate = estimate(open.instrument(), verse.withMode(Mode.CONGREGATION), 100);
        assertThat(TargetBand.of(Mode.CONGREGATION, estimate)).isEqualTo(Optional.empty());
    }
}
