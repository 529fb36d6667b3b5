package versewind.terminal;

import java.lang.reflect.Proxy;

/**
 * Signals from outside. Java has no interface for them that compiles without a warning, so they are reached by
 * reflection; on a Java without them nothing is lost but what they tell.
 */
final class Signals {

    private Signals() {}

    /** Runs an action, in a thread of its own, whenever a signal arrives. */
    static void on(String name, Runnable action) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object proxy = Proxy.newProxyInstance(
                    handler.getClassLoader(), new Class<?>[] {handler}, (self, method, arguments) -> {
                        if (method.getName().equals("handle")) {
                            action.run();
                        }
                        return null;
                    });
            signal.getMethod("handle", signal, handler)
                    .invoke(null, signal.getConstructor(String.class).newInstance(name), proxy);
        } catch (ReflectiveOperationException | IllegalArgumentException unknownHere) {
            // The size is then asked for only at the start, and a stopped program comes back as it was.
            return;
        }
    }
}
