/**
 * The terminal: keys in, frames out, and the line left as it was found.
 *
 * <p>The only package that knows Lanterna, and of Lanterna only the decoding of keys. Its screen is not used: it writes
 * five times the bytes that {@code Emitter} does. Nothing here knows what a frame means; that is the palette's one
 * table.
 */
package versewind.terminal;
