package versewind.screen;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;

/**
 * An effect as a value: which of the {@link Effects} it calls, and with what.
 *
 * @param name of the method
 * @param arguments of the call; effects in them are such values, too
 */
public record Wanted(String name, List<Object> arguments) {

    /** Does what is wanted. */
    @FunctionalInterface
    interface Doing {
        List<Event> done(String name, Object[] arguments);
    }

    public static Wanted of(String name, Object... arguments) {
        return new Wanted(name, List.of(arguments));
    }

    public static Wanted of(Effect effect) {
        List<Wanted> calls = new ArrayList<>();
        effect.by(doneBy((name, arguments) -> {
            calls.add(
                    new Wanted(name, Arrays.stream(arguments).map(Wanted::value).toList()));
            return List.of();
        }));
        return calls.isEmpty() ? of("none") : calls.get(0);
    }

    /** The effects as a test does them. */
    static Effects doneBy(Doing doing) {
        return (Effects) Proxy.newProxyInstance(
                Effects.class.getClassLoader(),
                new Class<?>[] {Effects.class},
                (proxy, method, arguments) ->
                        doing.done(method.getName(), arguments == null ? new Object[0] : arguments));
    }

    private static Object value(Object argument) {
        return argument instanceof List<?> list
                ? list.stream()
                        .map(each -> each instanceof Effect effect ? of(effect) : each)
                        .toList()
                : argument;
    }

    boolean is(String other) {
        return name.equals(other);
    }

    /** An argument of the call. */
    public <T> T argument(int index, Class<T> kind) {
        return kind.cast(arguments.get(index));
    }
}
