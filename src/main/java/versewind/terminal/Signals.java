package versewind.terminal;

import java.lang.reflect.Proxy;
import java.util.function.IntConsumer;

/** Unix signals, by reflection, since {@code sun.misc.Signal} does not compile without a warning. */
final class Signals {

    private Signals() {}

    /** Runs an action in its own thread whenever a signal arrives, with its number; nothing on a Java without it. */
    static void on(String name, IntConsumer action) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object proxy = Proxy.newProxyInstance(
                    handler.getClassLoader(), new Class<?>[] {handler}, (self, method, arguments) -> {
                        if (method.getName().equals("handle")) {
                            action.accept(
                                    (Integer) signal.getMethod("getNumber").invoke(arguments[0]));
                        }
                        return null;
                    });
            signal.getMethod("handle", signal, handler)
                    .invoke(null, signal.getConstructor(String.class).newInstance(name), proxy);
        } catch (ReflectiveOperationException | IllegalArgumentException unknownHere) {
            // Without signals, resizes and stops go unnoticed.
            return;
        }
    }

    /** Has a signal arrive at this program. */
    static void raise(String name) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            signal.getMethod("raise", signal)
                    .invoke(null, signal.getConstructor(String.class).newInstance(name));
        } catch (ReflectiveOperationException | IllegalArgumentException unknownHere) {
            return;
        }
    }
}
