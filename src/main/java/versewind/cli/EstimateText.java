package versewind.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.Margin;
import versewind.sound.StdDevs;
import versewind.sound.Verdict;

/** One registration's estimate as plain text: what is drawn, who sings, what comes of it. */
final class EstimateText {

    private static final int HEAD = 11;

    private final Page page;

    private EstimateText(Page page) {
        this.page = page;
    }

    static String of(Instrument instrument, int people, Assessment.OfVerse assessed, CharsetFallback lettering) {
        Page page = new Page(lettering);
        EstimateText text = new EstimateText(page);
        page.line(instrument.toString());
        page.blank();
        new RegistrationText(instrument)
                .parts(assessed.verse().registration())
                .forEach(part -> text.row(part.where(), part.text()));
        text.row("hands", hands(instrument, assessed.verse().hands()));
        text.row("singing", singing(assessed.verse(), assessed.estimate(), people));
        page.blank();
        text.levels(assessed.verse(), assessed.estimate());
        page.blank();
        page.paragraph(Caution.ESTIMATE);
        Caution.room(instrument.room()).ifPresent(page::paragraph);
        Caution.hearing(assessed.loudestDba()).ifPresent(page::paragraph);
        return page.text();
    }

    /** "four parts, on Great". */
    static String hands(Instrument instrument, HandsAndFeet hands) {
        String right = instrument.divisions().get(hands.right()).name();
        String left = instrument.divisions().get(hands.left()).name();
        return hands.layout().word() + (right.equals(left) ? ", on " + right : ", right " + right + ", left " + left);
    }

    private void row(String head, String text) {
        page.hanging(page.left(head, HEAD) + " ", text);
    }

    private static String singing(Verse verse, Estimate estimate, int people) {
        String how = ", " + verse.singing().word();
        return switch (verse.mode()) {
            case CONGREGATION -> "congregation" + how + "; " + estimate.singers() + " of " + people + " sing";
            case SMALL_CHOIR -> "small choir of " + estimate.singers() + how + "; " + people + " listen";
            case SOLO_VOICE -> "solo voice" + how + "; " + people + " listen";
            case MELODY_SOLOED -> "nobody; the melody is soloed, and " + people + " listen";
        };
    }

    private void levels(Verse verse, Estimate estimate) {
        StdDevs plusMinus = estimate.plusMinus();
        if (estimate.isSilent()) {
            row("organ", "silent: nothing drawn sounds");
        } else {
            row(
                    "organ",
                    LevelText.whole(estimate.organDba(), plusMinus.organDb()) + " dB(A), "
                            + estimate.dynamic().map(Dynamic::word).orElse(LevelText.NONE) + ", "
                            + LevelText.sone(estimate.sone()) + " sone, "
                            + LevelText.whole(estimate.phon(), plusMinus.organDb()) + " phon");
        }
        if (estimate.singersDba().isPresent()) {
            row("singers", LevelText.whole(estimate.singersDba(), plusMinus.singersDb()) + " dB(A)");
        }
        Margin margin = estimate.margin();
        String db = margin.db().isPresent() ? LevelText.signed(margin) + " dB, " : "";
        String others = margin.isSure()
                ? ""
                : "; or " + margin.perhaps().stream().map(Verdict::word).collect(Collectors.joining(" or "));
        row(head(margin.kind()), db + margin.words() + others);
        if (verse.isSung()) {
            String beats = estimate.lagBeats().isPresent()
                    ? String.format(
                            Locale.ROOT, ", %.2f of a beat", estimate.lagBeats().getAsDouble())
                    : "";
            row("lag", LevelText.whole(estimate.lagMs()) + " ms" + beats);
        }
    }

    private static String head(Margin.Kind kind) {
        return switch (kind) {
            case LEAD, ORGAN_ALONE -> "lead";
            case VOICE -> "words";
            case SOLO_LINE -> "melody";
        };
    }
}
