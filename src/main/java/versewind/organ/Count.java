package versewind.organ;

/** A number of things in words. */
public final class Count {

    private Count() {}

    /** "1 verse", "3 verses"; for things whose plural has an s. */
    public static String of(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
