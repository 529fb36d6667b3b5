package versewind;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Two threads that make classes ready at once wait for each other for ever if one class waits for another, and that one
 * for it. What a class waits for is seen from the calls in its static initialiser and in what that calls, lambdas left
 * out.
 */
class ClassCirclesTest {

    private final Map<JavaClass, Set<JavaClass>> waiting = new HashMap<>();

    @Test
    void no_class_waits_in_a_circle_for_itself_to_be_made_ready() {
        List<String> circles = new ArrayList<>();
        int initialised = 0;
        for (JavaClass each : ArchitectureTest.CLASSES) {
            initialised += each.getStaticInitializer().isPresent() ? 1 : 0;
            if (reached(each).contains(each)) {
                circles.add(each.getName());
            }
        }
        assertThat(initialised).as("classes that have something to make ready").isGreaterThan(300);
        assertThat(circles).isEmpty();
    }

    /** All classes for which one waits, directly or through others. */
    private Set<JavaClass> reached(JavaClass from) {
        Set<JavaClass> reached = new LinkedHashSet<>();
        Deque<JavaClass> todo = new ArrayDeque<>(waitsFor(from));
        while (!todo.isEmpty()) {
            JavaClass next = todo.pop();
            if (reached.add(next)) {
                todo.addAll(waitsFor(next));
            }
        }
        return reached;
    }

    private Set<JavaClass> waitsFor(JavaClass from) {
        return waiting.computeIfAbsent(from, ClassCirclesTest::directly);
    }

    private static Set<JavaClass> directly(JavaClass from) {
        Set<JavaClass> others = new HashSet<>(from.getAllRawSuperclasses());
        Set<JavaCodeUnit> seen = new HashSet<>();
        Deque<JavaCodeUnit> todo =
                new ArrayDeque<>(from.getStaticInitializer().stream().toList());
        while (!todo.isEmpty()) {
            JavaCodeUnit code = todo.pop();
            if (!seen.add(code)) {
                continue;
            }
            for (JavaAccess<?> access : code.getAccessesFromSelf()) {
                Optional<? extends JavaMember> member = ((AccessTarget) access.getTarget()).resolveMember();
                if (access.isDeclaredInLambda() || member.isEmpty()) {
                    continue;
                }
                JavaClass owner = member.get().getOwner();
                if (access instanceof JavaConstructorCall
                        || member.get().getModifiers().contains(JavaModifier.STATIC)) {
                    others.add(owner);
                    others.addAll(owner.getAllRawSuperclasses());
                }
                if (member.get() instanceof JavaCodeUnit called) {
                    todo.add(called);
                }
            }
        }
        others.remove(from);
        others.removeIf(other -> other.getStaticInitializer().isEmpty());
        return others;
    }
}
