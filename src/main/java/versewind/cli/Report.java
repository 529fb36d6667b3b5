package versewind.cli;

/** A result that can be written as text for people and as JSON for programs. */
interface Report {

    void print(Page page);

    Json json();
}
