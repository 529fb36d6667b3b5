package versewind.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** The Nu HTML Checker, on a thread with the deep stack that its grammar needs. */
final class Validator {

    private static final long STACK_BYTES = 256L << 20;

    private Validator() {}

    /** Its complaints, errors and warnings alike; blank if there are none. */
    static String complaints(String html) throws InterruptedException {
        FutureTask<String> checking = new FutureTask<>(() -> checked(html));
        new Thread(null, checking, "validator", STACK_BYTES).start();
        try {
            return checking.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        }
    }

    private static String checked(String html) throws IOException, SAXException {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        return validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }
}
