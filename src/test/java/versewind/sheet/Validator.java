package versewind.sheet;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import nu.validator.client.EmbeddedValidator;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** The Nu HTML Checker, on a thread with the deep stack that its grammar needs; the grammar is read once. */
final class Validator {

    private static final long STACK_BYTES = 256L << 20;

    private final List<String> complaints = new ArrayList<>();
    private final SimpleDocumentValidator checker;

    private Validator(SimpleDocumentValidator checker) {
        this.checker = checker;
    }

    static Validator open() throws InterruptedException {
        return onDeepStack(() -> {
            Validator validator = new Validator(new SimpleDocumentValidator(false, false, false));
            validator.checker.setUpMainSchema(EmbeddedValidator.SCHEMA_URL, validator.new Listener());
            validator.checker.setUpValidatorAndParsers(validator.new Listener(), false, false);
            return validator;
        });
    }

    /** What it has to say about a page, errors and warnings alike. */
    List<String> complaints(String html) throws InterruptedException {
        return onDeepStack(() -> {
            complaints.clear();
            checker.checkHtmlInputSource(new InputSource(new StringReader(html)));
            return List.copyOf(complaints);
        });
    }

    private static <T> T onDeepStack(Callable<T> work) throws InterruptedException {
        FutureTask<T> task = new FutureTask<>(work);
        new Thread(null, task, "validator", STACK_BYTES).start();
        try {
            return task.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        }
    }

    private final class Listener implements ErrorHandler {
        @Override
        public void warning(SAXParseException complaint) {
            complaints.add(complaint.getLineNumber() + ": " + complaint.getMessage());
        }

        @Override
        public void error(SAXParseException complaint) {
            warning(complaint);
        }

        @Override
        public void fatalError(SAXParseException complaint) {
            warning(complaint);
        }
    }
}
