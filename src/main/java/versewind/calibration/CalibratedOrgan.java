package versewind.calibration;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;

/**
 * The sound of an organ together with what it rests on.
 *
 * @param sound what estimates are made with
 * @param calibration the readings used
 * @param experience what its organist knows without a meter
 * @param contradictions what of this does not agree with the rest
 * @param last what the answers after the last service changed
 */
public record CalibratedOrgan(
        OrganSound sound,
        Calibration calibration,
        Experience experience,
        List<Contradiction> contradictions,
        LastHeard last) {

    public CalibratedOrgan {
        contradictions = List.copyOf(contradictions);
    }

    /**
     * An organ with all that is known of it.
     *
     * @param before the organ as its readings leave it
     */
    public static CalibratedOrgan of(OrganSound before, Calibration calibration, Experience experience) {
        FeedbackUpdate heard = new FeedbackUpdate(before, experience.all());
        OrganSound sound = heard.sound();
        LastHeard last = experience
                .lastService()
                .map(service -> LastHeard.of(() -> effect(service, before, sound, experience)))
                .orElseGet(LastHeard::none);
        return new CalibratedOrgan(sound, calibration, experience, heard.contradictions(), last);
    }

    private static HeardEffect effect(String service, OrganSound before, OrganSound after, Experience experience) {
        List<HeardRegistration> last = experience.answersOn(service);
        List<HeardRegistration> others =
                experience.all().stream().filter(each -> !last.contains(each)).toList();
        return HeardEffect.of(service, new FeedbackUpdate(before, others).sound(), after, last);
    }

    /** What the answers after the last service changed, if there are any. */
    public Optional<HeardEffect> lastHeard() {
        return last.effect();
    }

    /**
     * The day of the last service that was answered, where the answers are why a verse of an earlier service wants
     * attention now.
     */
    public Optional<String> changedVerdicts(Plan plan) {
        Optional<String> answered = experience.lastDay();
        return answered.filter(day -> plan.heading()
                        .date()
                        .filter(date -> date.toString().compareTo(day) < 0)
                        .isPresent()
                && lastHeard().filter(effect -> isWorse(effect.before(), plan)).isPresent());
    }

    private boolean isWorse(OrganSound before, Plan plan) {
        return plan.places().stream()
                .anyMatch(place -> wantsAttention(sound, plan, place) && !wantsAttention(before, plan, place));
    }

    private static boolean wantsAttention(OrganSound sound, Plan plan, VersePlace place) {
        return sound.estimate(
                        plan.verse(place),
                        plan.heading().people(),
                        plan.hymn(place).tempo())
                .balance()
                .estimated()
                .wantsAttention();
    }

    /** What a judgement contradicts, if it does. */
    public Optional<Contradiction> contradiction(HeardRegistration heard) {
        return contradictions.stream()
                .filter(each -> each.answer().equals(heard))
                .findFirst();
    }

    /**
     * What the answers after the last service changed, worked out when it is first asked for: an organ opens without
     * it. Belongs to one thread, as the sound does that it is worked out with.
     */
    public static final class LastHeard {

        private Optional<Supplier<HeardEffect>> work;
        private Optional<HeardEffect> effect = Optional.empty();

        private LastHeard(Optional<Supplier<HeardEffect>> work) {
            this.work = work;
        }

        /** No answers. */
        public static LastHeard none() {
            return new LastHeard(Optional.empty());
        }

        /** The effect that is worked out so. */
        static LastHeard of(Supplier<HeardEffect> work) {
            return new LastHeard(Optional.of(work));
        }

        /** The effect, if there are answers. */
        Optional<HeardEffect> effect() {
            if (work.isPresent()) {
                effect = work.map(Supplier::get);
                work = Optional.empty();
            }
            return effect;
        }
    }
}
