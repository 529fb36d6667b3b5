package versewind.bench;

import java.io.IOException;

/** What every time and size is held against; with an argument it waits for a byte before it ends. */
public final class HelloWorld {

    private HelloWorld() {}

    public static void main(String[] arguments) throws IOException {
        System.out.println("Hello, world");
        if (arguments.length > 0) {
            System.in.read();
        }
    }
}
