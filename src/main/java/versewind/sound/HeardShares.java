package versewind.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import versewind.plan.HeardAs;
import versewind.plan.Mode;

/**
 * What was heard by the singers of a verse, by strength of the organ: what is stronger than one that was too strong,
 * or hardly weaker, is felt too strong as well, and what is weaker than one that was too soft, or hardly stronger, too
 * soft.
 *
 * <p>"Too strong" holds for singers who are no more and sing no more strongly than those who were led so, "too soft"
 * for those who are no fewer; "right" speaks against either where it was said of something stronger, or weaker. Each of
 * these answers tells of the verse as one on itself would, see {@link FeltLevel}: how far organists judge in order of
 * strength is an estimate.
 *
 * <p>Checked against: {@code HeardSharesTest}.
 */
final class HeardShares {

    /** Nothing was heard. */
    static final HeardShares NONE = new HeardShares(Mode.CONGREGATION, List.of());

    /** Less than this is no difference that would change a judgement: a step of the order, about. An estimate. */
    private static final double A_STEP = 0.03;

    /** A share that is felt beyond the edge of a verdict lies this far beyond it at least. An estimate. */
    private static final double BEYOND = 0.03;

    private final Mode mode;
    private final List<Heard> all;

    /**
     * A registration that was heard.
     *
     * @param share its share in the verse that is asked for
     * @param answers what was said of it
     * @param byMore whether those who were led so were as many and sang as strongly, or more
     * @param byFewer whether they were as many or fewer
     */
    private record Heard(double share, List<HeardAs> answers, boolean byMore, boolean byFewer) {}

    private HeardShares(Mode mode, List<Heard> all) {
        this.mode = mode;
        this.all = all;
    }

    /**
     * What was heard that bears on a verse.
     *
     * @param felt all that was heard on the organ
     * @param singers of the verse
     * @param shares prepared for the verse
     */
    static HeardShares of(FeltVerses felt, FeltVerses.Singers singers, ClearShare shares) {
        List<Heard> all = new ArrayList<>();
        for (FeltVerses.Felt each : felt.comparableTo(singers)) {
            all.add(new Heard(
                    shares.of(each.drawn(), each.hands()),
                    each.answers(),
                    each.singers().areAtLeast(singers),
                    singers.areAtLeast(each.singers())));
        }
        return new HeardShares(singers.by().mode(), all);
    }

    /** The answers that hold for a share too; none where nothing was heard that does, or answers deny each other. */
    List<HeardAs> answers(double share) {
        List<HeardAs> found = new ArrayList<>();
        int rightThoughStronger = 0;
        int rightThoughSofter = 0;
        for (Heard each : all) {
            boolean isNoStronger = isNoStronger(each.share(), share);
            boolean isNoSofter = isNoStronger(share, each.share());
            for (HeardAs answer : each.answers()) {
                switch (answer) {
                    case TOO_STRONG -> add(isNoStronger && each.byMore(), answer, found);
                    case TOO_SOFT -> add(isNoSofter && each.byFewer(), answer, found);
                    case RIGHT -> {
                        rightThoughStronger += isNoSofter && each.byFewer() ? 1 : 0;
                        rightThoughSofter += isNoStronger && each.byMore() ? 1 : 0;
                    }
                }
            }
        }
        boolean isStrong = found.contains(HeardAs.TOO_STRONG);
        if (found.isEmpty() || (isStrong && found.contains(HeardAs.TOO_SOFT))) {
            return List.of();
        }
        found.addAll(Collections.nCopies(isStrong ? rightThoughStronger : rightThoughSofter, HeardAs.RIGHT));
        return found;
    }

    private static void add(boolean holds, HeardAs answer, List<HeardAs> found) {
        if (holds) {
            found.add(answer);
        }
    }

    /** True if the organ is no stronger, by more than a step, where the one share is than where the other is. */
    private boolean isNoStronger(double one, double other) {
        return isOfWords() ? one >= other - A_STEP : one <= other + A_STEP;
    }

    private boolean isOfWords() {
        return Balance.Kind.of(mode) == Balance.Kind.VOICE;
    }

    /**
     * A share as it will be felt: beyond the edge of the verdict where most answers that hold for it say so, and the
     * farther the farther it is from there.
     */
    double felt(double share) {
        if (all.isEmpty()) {
            return share;
        }
        List<HeardAs> answers = answers(share);
        long beyond = answers.stream().filter(each -> each != HeardAs.RIGHT).count();
        if (2 * beyond <= answers.size()) {
            return share;
        }
        boolean isStrong = answers.contains(HeardAs.TOO_STRONG);
        double right = Verdict.right(mode).from(mode);
        if (isStrong && !isOfWords()) {
            double edge = Verdict.TOO_STRONG.from(mode) + BEYOND;
            double weakest = said(HeardAs.TOO_STRONG).min().orElse(share);
            return Math.max(share, 1 - (1 - edge) * (1 - share) / (1 - weakest));
        }
        if (isStrong || !isOfWords()) {
            double most =
                    said(isStrong ? HeardAs.TOO_STRONG : HeardAs.TOO_SOFT).max().orElse(share);
            return most > 0 ? Math.min(share, (right - BEYOND) * share / most) : share;
        }
        return share;
    }

    private DoubleStream said(HeardAs answer) {
        return all.stream()
                .filter(each -> each.answers().contains(answer))
                .filter(each -> answer == HeardAs.TOO_STRONG ? each.byMore() : each.byFewer())
                .mapToDouble(Heard::share);
    }
}
