/* Paints screens with ncurses, the next one after each byte read: what the bytes of the editor are held against.
   A screen is 24 lines of text and 24 of styles, by the letters of Style.java; colours as in Palette.java. */
#define _XOPEN_SOURCE_EXTENDED 1
#include <curses.h>
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>
#include <wchar.h>

#define ROWS 24
#define COLUMNS 80

static int read_screen(FILE *file, wchar_t text[ROWS][COLUMNS + 2], wchar_t look[ROWS][COLUMNS + 2]) {
    for (int y = 0; y < ROWS; y++)
        if (!fgetws(text[y], COLUMNS + 2, file)) return 0;
    for (int y = 0; y < ROWS; y++)
        if (!fgetws(look[y], COLUMNS + 2, file)) return 0;
    return 1;
}

/* Attributes of a style, and the pair of its colours. */
static attr_t attribute(wchar_t letter, short *pair) {
    static const struct { wchar_t letter; attr_t attribute; short front, back; } LOOKS[] = {
        {L'f', A_DIM, -1, -1}, {L's', A_BOLD, -1, -1}, {L'v', A_BOLD, -1, -1}, {L'k', A_BOLD, -1, -1},
        {L'm', A_BOLD, -1, -1}, {L'h', A_BOLD, COLOR_MAGENTA, -1}, {L'd', 0, COLOR_BLACK, COLOR_CYAN},
        {L'C', A_REVERSE, -1, -1}, {L'c', A_UNDERLINE, -1, -1}, {L'g', A_BOLD, COLOR_GREEN, -1},
        {L'n', 0, COLOR_BLACK, COLOR_YELLOW}, {L'b', A_BOLD, COLOR_WHITE, COLOR_RED}, {L'o', 0, COLOR_MAGENTA, -1},
        {L't', 0, COLOR_BLACK, COLOR_WHITE}};
    *pair = 0;
    for (int i = 0; i < (int) (sizeof LOOKS / sizeof LOOKS[0]); i++)
        if (LOOKS[i].letter == letter) {
            if (LOOKS[i].front >= 0) {
                *pair = i + 1;
                init_pair(*pair, LOOKS[i].front, LOOKS[i].back);
            }
            return LOOKS[i].attribute;
        }
    return A_NORMAL;
}

int main(int count, char **arguments) {
    static wchar_t text[ROWS][COLUMNS + 2], look[ROWS][COLUMNS + 2];
    FILE *file = count == 2 ? fopen(arguments[1], "r") : NULL;
    if (!file) return 2;
    setlocale(LC_ALL, "");
    initscr();
    start_color();
    use_default_colors();
    raw();
    noecho();
    curs_set(0);
    while (read_screen(file, text, look)) {
        for (int y = 0; y < ROWS; y++)
            for (int x = 0; x < COLUMNS; x++) {
                cchar_t cell;
                wchar_t one[2] = {text[y][x], 0};
                short pair;
                attr_t looks = attribute(look[y][x], &pair);
                setcchar(&cell, one, looks, pair, NULL);
                if (y < ROWS - 1 || x < COLUMNS - 1) mvadd_wch(y, x, &cell);
            }
        refresh();
        char byte;
        if (read(0, &byte, 1) != 1) break;
    }
    endwin();
    return 0;
}
