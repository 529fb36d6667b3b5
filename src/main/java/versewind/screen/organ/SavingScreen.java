package versewind.screen.organ;

import versewind.screen.state.Effects;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;

/**
 * An organ that is saved in the background, with the plans that know its parts by other names.
 *
 * @param plans how many have been looked at
 * @param of how many there are; 0 as long as that is not known
 */
public record SavingScreen(int plans, int of) implements Screen {

    public static final KeyTable<SavingScreen> KEYS = KeyTable.<SavingScreen>under("While an organ is saved")
            .key(
                    "Esc, q",
                    "stop; the other plans follow when they are saved",
                    (screen, state) -> state.wants(Effects::stopSaving));

    private static final String TITLE = "Saving";
    private static final int WIDTH = 76;

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public String name(State state) {
        return TITLE;
    }

    @Override
    public void paint(Frame frame, State state) {
        Box box = Box.open(frame, TITLE, WIDTH, 4);
        String progress = of == 0
                ? "Looking for the plans of this organ."
                : plans + " of " + of + (of == 1 ? " plan is" : " plans are") + " up to date.";
        frame.write(box.x(), box.y() + 1, progress, Style.TEXT);
        KEYS.hints(frame, box, "Esc");
    }
}
