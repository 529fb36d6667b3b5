package versewind.screen;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import versewind.screen.Command.Where;

/** Which key means which command, made from the table of commands. */
final class KeyMap {

    private static final Map<Where, Map<Key, Command>> MEANINGS = meanings();

    private KeyMap() {}

    /** What a key means where it was pressed, if it means something there. */
    static Optional<Command> meaning(Where where, Key key) {
        return Optional.ofNullable(MEANINGS.get(where).get(key));
    }

    private static Map<Where, Map<Key, Command>> meanings() {
        Map<Where, Map<Key, Command>> meanings = new EnumMap<>(Where.class);
        for (Where where : Where.values()) {
            Map<Key, Command> here = new HashMap<>();
            for (Command command : Command.values()) {
                if (where.answersTo(command.where())) {
                    command.keys().forEach(key -> here.put(key, command));
                }
            }
            meanings.put(where, here);
        }
        return meanings;
    }
}
