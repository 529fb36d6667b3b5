package versewind.screen.state;

/** The screens that lie in other packages than the one they are opened from, and the keys of every screen. */
public interface Doors {

    /** The keys of every screen; those that are characters only where no text is typed. */
    KeyTable<Screen> keys();

    /** The plan, under everything else. */
    Screen ground();

    /** The library over the plan, or over nothing. */
    State library(State state);

    /** The library to bring a hymn over from a plan in it. */
    State libraryToBring(State state);

    /** The organs of the library, one of them marked by its id; the first where there is no such. */
    State organs(State state, String marked);

    /** The box into which the stop list of a new organ is pasted. */
    State stopList(State state);

    /** The desk over the plan, at the current verse. */
    State desk(State state, PlanEdit work);
}
