package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.sound.OrganSound;

/** Something that happened outside and that the editor answers. */
public sealed interface Input {

    /** A key was pressed. */
    record Press(Key key) implements Input {}

    /** Text was pasted as one piece. */
    record Paste(String text) implements Input {}

    /** The terminal has another size now. */
    record Resize(int columns, int rows) implements Input {}

    /** Nobody listens any more: the line was dropped or the input ended. */
    record Hangup() implements Input {}

    /**
     * A plan was written.
     *
     * @param plan as it was written
     * @param then what is to be done now
     */
    record Saved(Plan plan, List<Effect> then) implements Input {}

    /**
     * A plan was not written, since its file has changed since it was read.
     *
     * @param plan as it was to be written
     * @param then what was to be done then
     */
    record SaveRefused(Plan plan, List<Effect> then) implements Input {}

    /** Something was done; the sentence says what and where. */
    record Done(String sentence) implements Input {}

    /** Something could not be done; the sentence says what, where and what to do. */
    record Failed(String sentence) implements Input {}

    /** The plans there are. */
    record PlansListed(List<Listed> plans) implements Input {}

    /** The instruments there are. */
    record InstrumentsListed(List<Listed> instruments) implements Input {}

    /**
     * A plan was opened.
     *
     * @param id name of its file without the ending
     * @param plan as it lies saved
     * @param instrument the instrument it is for
     * @param sound how that sounds
     * @param draft unsaved work on it that was found beside it
     */
    record PlanOpened(String id, Plan plan, Instrument instrument, OrganSound sound, Optional<Plan> draft)
            implements Input {}

    /**
     * A file in a list.
     *
     * @param id its name without the ending
     * @param title what it calls itself
     * @param detail date, place or what is wrong with it
     */
    record Listed(String id, String title, String detail) {}
}
