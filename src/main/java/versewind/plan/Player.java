package versewind.plan;

import versewind.organ.Worded;

/** Who plays the service: with the feet, or with the hands only. */
public enum Player implements Worded {
    WITH_PEDALS,
    /** A player, or an organ, without pedals: every verse is played with the hands. */
    MANUALS_ONLY;

    /** True if it is a way to play for this player. */
    public boolean plays(HandsAndFeet.Layout layout) {
        return layout == playing(layout);
    }

    /** The same hands, without the feet of a player who has no use for them. */
    HandsAndFeet playing(HandsAndFeet hands) {
        return plays(hands.layout()) ? hands : hands.withLayout(playing(hands.layout()));
    }

    private HandsAndFeet.Layout playing(HandsAndFeet.Layout layout) {
        return switch (this) {
            case WITH_PEDALS -> layout;
            case MANUALS_ONLY -> layout.withoutPedal();
        };
    }
}
