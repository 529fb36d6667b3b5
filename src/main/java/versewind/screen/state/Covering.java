package versewind.screen.state;

/** A screen that covers all of the frame, but under a window the ground beneath is seen. */
public interface Covering extends Screen {
    @Override
    default Layer layer() {
        return Layer.SHEET;
    }
}
