/**
 * The fields of instruments and plans: name, kind, limits, default and hint of each, once. Files, spreadsheets and
 * forms are read and written by these tables.
 * An {@code OrganDraft} is an instrument as rows of these fields, as they are typed, right or wrong. No file is opened
 * here, and no JSON library is known.
 */
package versewind.schema;
