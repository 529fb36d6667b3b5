package versewind.rules;

import versewind.plan.Hymn;
import versewind.sound.OrganSound;

/**
 * The breath between verses, and what can be moved in it: each hand one knob after another, the boxes by foot at the
 * same time. Common practice, no source.
 */
public final class BetweenVerses {
    private BetweenVerses() {}

    /**
     * The breath in s, from the tempo and from how long the room rings.
     *
     * @param hymn a hymn
     * @param people number of people at the service
     * @param sound the instrument
     */
    public static double breathS(Hymn hymn, int people, OrganSound sound) {
        return breathBeats(beatS(hymn), isLiveRoom(people, sound)) * beatS(hymn);
    }

    /**
     * Time in s that movements need.
     *
     * @param knobs number of stops, couplers and tremulants that hands move
     * @param boxes number of boxes that the foot moves
     * @param moveS time in s for one of them
     */
    public static double neededS(int knobs, int boxes, double moveS) {
        int turns = (knobs + Practice.HANDS - 1) / Practice.HANDS;
        return Math.max(turns, boxes) * moveS;
    }

    /** What people need to breathe, and a beat more in a very live room; a bar at most. */
    static int breathBeats(double beatS, boolean isLiveRoom) {
        int beats = (int) Math.ceil(Practice.BREATH_S / beatS) + (isLiveRoom ? 1 : 0);
        return Math.min(Practice.LONGEST_BREATH_BEATS, beats);
    }

    /** Whether the room rings so long that the breath wants a beat more. */
    static boolean isLiveRoom(int people, OrganSound sound) {
        return sound.reverberationS(people) >= Practice.LIVE_ROOM_S;
    }

    static double beatS(Hymn hymn) {
        return 60.0 / hymn.tempo().orElse(Practice.USUAL_TEMPO);
    }
}
