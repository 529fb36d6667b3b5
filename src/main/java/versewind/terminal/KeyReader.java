package versewind.terminal;

import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import versewind.screen.Event;

/** Reads keys and pastes from the bytes that a terminal sends. */
final class KeyReader {

    private final InputDecoder decoder;

    KeyReader(InputStream bytes, Charset charset) {
        decoder = new InputDecoder(new EscapeTimeoutReader(new InputStreamReader(bytes, charset)));
        decoder.addProfile(KeyPattern.ALL);
    }

    /** Waits for the next input. When the bytes end, or the line breaks, that is a hangup. */
    Event next() {
        try {
            while (true) {
                KeyStroke stroke = decoder.getNextCharacter(true);
                if (stroke instanceof KeyPattern.Decoded decoded) {
                    return decoded.input();
                }
                if (stroke != null && stroke.getKeyType() == KeyType.EOF) {
                    return new Event.Hangup();
                }
            }
        } catch (IOException lineBroken) {
            return new Event.Hangup();
        }
    }
}
