/**
 * The terminal: keys in, frames out, its modes restored at the end.
 *
 * <p>The only package that knows Lanterna, and of Lanterna only the decoding of keys. Its screen is not used: it writes
 * five times the bytes that {@code Emitter} does. What styles look like stands in
 * {@code Palette} only.
 */
package versewind.terminal;
