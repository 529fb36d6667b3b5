/** The search for registrations, verse by verse and over a whole service. */
package versewind.proposal;
