package versewind;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(args.length);
    }
}
