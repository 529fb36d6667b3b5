/**
 * The full-screen editor without a terminal: what it shows, what a key does, what is to be done outside.
 *
 * <p>Pure: {@code Update.step} takes a state and an event and returns a state and effects; a picture is a function from
 * a state to a {@link versewind.screen.Frame}. No files, no clock, no terminal, and no search.
 *
 * <h2>A screen is one file</h2>
 *
 * <p>A {@code Screen} is a record: its components are what it holds, its {@code KeyTable} says what the keys do, and
 * {@code paint} draws it. {@code FindingsScreen} and {@code ReadingsScreen} are good ones to read first. What is open
 * (the plan, the size of the terminal, what was last said) is in {@code State}, as is the stack of screens, whose top
 * has the keys. All are values: whoever changes something returns another state.
 *
 * <pre>{@code record ThingsScreen(ListBox<Thing> list) implements Screen { static final KeyTable<ThingsScreen> KEYS =
 * KeyTable.<ThingsScreen>under("Among the things")   // heading in the help .list("thing", (screen, by) -> new
 * ThingsScreen(screen.list.move(by)))               // Down, Tab, Up, Shift-Tab .key("x, Delete", "delete",
 * ThingsScreen::remove)       // keys as Key.name writes them, words, action .key("Esc, q", "close", (screen, state) ->
 * state.close());
 *
 *     private State remove(State state) { return state.show(new ThingsScreen(...)).wants(effects ->
 *         effects.save(...)).says("Taken out."); } public KeyTable<?> keys() { return KEYS; } public void paint(Frame
 *         frame, State state) { Box box = Box.open(frame, "Things", 76, list.size() + 2); list.paint(frame, box.rows(0,
 *         box.height() - 2), (thing, index, y) -> frame.write(box.x(), y, thing.name(), TEXT)); KEYS.hints(frame, box,
 *         "x", "Esc"); }
 * }
 * }</pre>
 *
 * <ul> <li>{@code state.open(screen)} lays a screen over the others, {@code close()} takes the top one away, {@code
 * show(screen)} puts another in its place, {@code closed()} goes back to the plan, {@code find} and {@code update}
 * reach a screen wherever it lies (for an event that comes while another is on top). <li>{@code says} and {@code warns}
 * say a sentence, {@code wants} has something done outside, {@code onWork} gives the open plan or says that none is.
 * <li>{@code Screen.layer}: a window lies over the nearest ground (the plan, the desk, an organ), which is painted
 * first; a sheet covers everything; a ground says the least size of the terminal. <li>Keys that are not in the table
 * come to {@code typed}, pasted text to {@code pasted}; a {@code TextLine} edits itself and paints itself. A row of the
 * table may be for one {@code mode} of the screen alone. <li>{@code FormBox.of(title, fields, kept)}: a form. What is
 * done with it reads the fields ({@code text}, {@code number}) and throws {@code FormBox.Wrong} with a field and a
 * sentence; {@code checkedBy} checks while it is being filled in. <li>{@code Chooser.of} is a list to choose from that
 * is narrowed down by typing, {@code Question} a question whose answers are functions of the state. <li>{@code
 * HelpScreen.TABLES} lists the tables: from it come the help, the README's keys and the test of clashes.
 * </ul>
 *
 * <p>An {@code Effect} is a call of one method of {@code Effects}, and an {@code Event} says itself what comes of it,
 * so that neither can go unanswered.
 */
package versewind.screen;
