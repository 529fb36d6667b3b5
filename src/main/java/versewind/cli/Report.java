package versewind.cli;

/** Something to be told, as text for people and as JSON for programs. */
interface Report {

    void print(Page page);

    Json json();
}
