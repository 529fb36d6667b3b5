/**
 * What an experienced colleague would say: what has to be moved from verse to verse, how every verse of a plan stands.
 *
 * <p>Pure. Knows {@code organ}, {@code plan} and {@code sound}.
 */
package versewind.advice;
