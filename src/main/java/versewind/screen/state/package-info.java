/**
 * What is open and what lies on it: the state, the screens as values with their keys, forms, lists to choose from and
 * questions, events and effects. Knows none of the screens of the packages beside it: they are reached through {@link
 * versewind.screen.state.Doors}.
 *
 * <h2>A screen is one file</h2>
 *
 * <p>A {@code Screen} is a record: its components are what it holds, its {@code KeyTable} says what the keys do, and
 * {@code paint} draws it. {@code FindingsScreen} and {@code ReadingsScreen} are good ones to read first. What is open
 * (the plan, the size of the terminal, what was last said) is in {@code State}, as is the stack of screens, whose top
 * has the keys. All are values: whoever changes something returns another state.
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
package versewind.screen.state;
