/**
 * The command line: what was typed is read, the core is asked, words and exit status are given back.
 *
 * <p>One class a command. Stands on top: knows the core, {@code store} and {@code terminal}; writes nothing itself and
 * never ends the program.
 */
package versewind.cli;
