package versewind.terminal;

import com.googlecode.lanterna.input.EscapeSequenceCharacterPattern;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;

/**
 * Lanterna's pattern of the sequences that begin with ESC, extended so that it takes each of them whole: those of keys
 * that it knows, pastes, and those that mean nothing here, which else would arrive as the letters they are written
 * with.
 *
 * <p>The decoder shows a pattern one character more at each call, beginning with one; so each is looked at once. A
 * letter after ESC begins no sequence: these are two keys, however close they come.
 *
 * <p>Source: ECMA-48, 5th edition, 5.4 (CSI), 5.6 (control strings) and 8.3.143 (SS3); key capabilities of VT100,
 * VT220, xterm, rxvt, screen, tmux and the Linux console in ncurses 6.4; xterm's control sequences, patch 379.
 */
final class EscapeSequence extends EscapeSequenceCharacterPattern {

    /** Milliseconds for which a sequence may pause after ESC alone: someone waits for the Escape key's effect. */
    static final int ESCAPE_MS = 40;

    /** The same further on, where no key is kept waiting and the rest is surely on its way. */
    private static final int SEQUENCE_MS = 400;

    private static final String PASTE_BEGINS = "\033[200~";
    private static final String PASTE_ENDS = "\033[201~";
    private static final String CONSOLE_KEYS = "\033[[";

    /** Characters of the longest key, ESC [ 24 ; 16 ~. */
    private static final int LONGEST_KEY = 8;

    private static final KeyStroke MEANINGLESS = new KeyStroke(KeyType.Unknown);

    /** How far a sequence has come. */
    private enum State {
        /** Not begun, or complete. */
        NONE,
        /** ESC alone: the Escape key, or the beginning of more. */
        ESCAPE,
        /** ESC [, after which parameters may come. */
        CSI,
        /** The same with a first digit, so that a dollar ends it: rxvt's keys with Shift. */
        CSI_NUMBER,
        /** The same with another first sign: the terminal's answers, which may have a dollar within. */
        CSI_MARKED,
        /** ESC [ [, after which one letter comes: the Linux console's F1 to F5. */
        CONSOLE,
        /** ESC O, after which digits and a letter come. */
        SS3,
        /** ESC ] or ESC P, which is an answer of the terminal only if a digit or a mark follows. */
        ANSWER,
        /** An answer, until BEL or ESC \. */
        STRING,
        /** ESC within an answer. */
        STRING_END,
        /** A paste, until its end mark. */
        PASTE,
        /** Not a control sequence, as it turns out. */
        BROKEN;

        boolean isOpen() {
            return this != NONE && this != BROKEN;
        }

        State after(char c) {
            return switch (this) {
                case NONE, BROKEN -> c == ESC ? ESCAPE : NONE;
                case ESCAPE -> c == '[' ? CSI : c == 'O' ? SS3 : c == ']' || c == 'P' ? ANSWER : BROKEN;
                case CSI -> c == '[' ? CONSOLE : isDigit(c) ? CSI_NUMBER : afterParameter(c, CSI_MARKED);
                case CSI_NUMBER -> c == '$' ? NONE : afterParameter(c, CSI_NUMBER);
                case CSI_MARKED -> afterParameter(c, CSI_MARKED);
                case CONSOLE -> isFinal(c) ? NONE : BROKEN;
                case SS3 -> isDigit(c) || c == ';' ? SS3 : c > ' ' && c < 0x7F ? NONE : BROKEN;
                case ANSWER -> isDigit(c) || "!>$+=?".indexOf(c) >= 0 ? STRING : BROKEN;
                case STRING -> c == BEL ? NONE : c == ESC ? STRING_END : STRING;
                case STRING_END -> c == '\\' ? NONE : BROKEN;
                case PASTE -> PASTE;
            };
        }

        private static State afterParameter(char c, State same) {
            return isFinal(c) ? NONE : c >= 0x20 && c < 0x40 ? same : BROKEN;
        }

        private static boolean isFinal(char c) {
            return c >= 0x40 && c < 0x7F;
        }

        private static boolean isDigit(char c) {
            return c >= '0' && c <= '9';
        }
    }

    private static final char ESC = 0x1B;
    private static final char BEL = 0x07;

    /** Ctrl-C. */
    static final char INTERRUPT = 0x03;

    private State state = State.NONE;
    private boolean interrupted;

    /** Lanterna's keys, and rxvt's Home and End and the keypad's Enter. ESC ESC [ A is Escape and an arrow. */
    EscapeSequence() {
        useEscEsc = false;
        stdMap.put(7, KeyType.Home);
        stdMap.put(8, KeyType.End);
        finMap.put('M', KeyType.Enter);
    }

    /** A pasted text as the decoder passes it on; line ends are LF. */
    static final class Pasted extends KeyStroke {

        private final String text;

        private Pasted(String text) {
            super(KeyType.Unknown);
            this.text = text.replace("\r\n", "\n").replace('\r', '\n');
        }

        String text() {
            return text;
        }
    }

    /** Whether a paste has begun and not ended. */
    boolean isPaste() {
        return state == State.PASTE;
    }

    /** How long the next character may take to come if it belongs to the sequence, in milliseconds. */
    int patienceMs() {
        return state == State.ESCAPE ? ESCAPE_MS : state.isOpen() ? SEQUENCE_MS : 0;
    }

    /** Takes the last character of a paste for the Ctrl-C of someone who waits for its end in vain. */
    void interrupt() {
        interrupted = true;
    }

    /** Takes the sequence for ended where it stands. */
    void giveUp() {
        state = State.NONE;
    }

    @Override
    public Matching match(List<Character> typed) {
        boolean begins = typed.size() == 1;
        if (!begins && !state.isOpen()) {
            return null;
        }
        state = (begins ? State.NONE : state).after(typed.get(typed.size() - 1));
        if (state == State.NONE && !begins && text(typed).equals(PASTE_BEGINS)) {
            state = State.PASTE;
        }
        return switch (state) {
            case NONE -> begins ? null : new Matching(complete(typed));
            case ESCAPE -> new Matching(true, new KeyStroke(KeyType.Escape));
            case CSI, CSI_NUMBER, CSI_MARKED, CONSOLE, SS3, STRING -> new Matching(true, MEANINGLESS);
            case ANSWER, STRING_END -> Matching.NOT_YET;
            case PASTE -> paste(typed);
            case BROKEN -> null;
        };
    }

    private KeyStroke complete(List<Character> typed) {
        if (typed.size() > LONGEST_KEY) {
            return MEANINGLESS;
        }
        String text = text(typed);
        int consoleKey = text.startsWith(CONSOLE_KEYS) ? text.charAt(text.length() - 1) - 'A' : -1;
        if (consoleKey >= 0 && consoleKey < 5) {
            return new KeyStroke(KeyType.values()[KeyType.F1.ordinal() + consoleKey]);
        }
        Matching key = super.match(typed);
        return key == null || key.fullMatch == null ? MEANINGLESS : key.fullMatch;
    }

    /**
     * The key of a sequence: ESC [ A, ESC O A, ESC [ 5 ~, or with Shift and Control ESC [ 1 ; 5 A. With Alt it is
     * another key, and none of ours. Lanterna itself would hear Control in ESC O A, which only means that the keypad is
     * on.
     */
    @Override
    protected KeyStroke getKeyStrokeRaw(char introducer, int number, int modifier, char last, boolean escEsc) {
        boolean plain = number == 0 && modifier == 0;
        boolean lettered = plain || (introducer == '[' && number == 1 && modifier > 0);
        boolean known =
                switch (last) {
                    case '~' -> introducer == '[' && stdMap.containsKey(number);
                    case 'M' -> introducer == 'O' && plain;
                    case 'Z' -> introducer == '[' && lettered;
                    default -> finMap.containsKey(last) && lettered;
                };
        int held = Math.max(0, modifier - 1);
        if (!known || (held & ~(SHIFT | CTRL)) != 0) {
            return MEANINGLESS;
        }
        return getKeyStroke(last == '~' ? stdMap.get(number) : finMap.get(last), held);
    }

    private Matching paste(List<Character> typed) {
        if (interrupted) {
            interrupted = false;
            state = State.NONE;
            return new Matching(new KeyStroke('c', true, false));
        }
        int end = typed.size() - PASTE_ENDS.length();
        if (end < PASTE_BEGINS.length()
                || !text(typed.subList(end, typed.size())).equals(PASTE_ENDS)) {
            return Matching.NOT_YET;
        }
        state = State.NONE;
        return new Matching(new Pasted(text(typed.subList(PASTE_BEGINS.length(), end))));
    }

    private static String text(List<Character> typed) {
        StringBuilder text = new StringBuilder(typed.size());
        for (char c : typed) {
            text.append(c);
        }
        return text.toString();
    }
}
