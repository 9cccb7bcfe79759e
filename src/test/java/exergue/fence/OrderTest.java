package exergue.fence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Nothing goes through a map or set in an order that nobody has chosen: what is made without an order is only asked for
 * single things. A name counts as unordered in its file where it is given a hash map, a hash set or one of the fixed
 * maps and sets of Java, whose order changes from run to run.
 */
class OrderTest {

    private static final Pattern UNORDERED = Pattern.compile("(?s)(new (Hash|Identity|Weak)\\w*(Map|Set)<"
            + "|(Map|Set)\\.(of|copyOf|ofEntries)\\((?!\\))).*"
            + "|.*\\b(toSet\\(\\)|toUnmodifiableSet\\(\\)|(toMap|toUnmodifiableMap)\\([^;]*|groupingBy\\([^;]*)\\)");
    /** Of these, what can be gone through by its bare name. */
    private static final Pattern UNORDERED_SET = Pattern.compile("(?s)(new (Hash|Identity|Weak)\\w*Set<|Set\\.(of|copyOf)\\((?!\\))).*"
            + "|.*\\b(toSet|toUnmodifiableSet)\\(\\)\\)");
    private static final Pattern ORDERED_AFTER_ALL = Pattern.compile("(?s).*(LinkedHash|TreeMap|TreeSet|EnumMap|EnumSet).*");

    /** A step through everything there is. What only asks whether any or all are so, counts, or sorts, may be taken. */
    private static final Set<String> STEPS = Set.of("forEach", "stream", "keySet", "values", "entrySet", "iterator");
    private static final Pattern HARMLESS = Pattern.compile(
            "(?s).*\\.(anyMatch|allMatch|noneMatch|sorted|count|size|contains|containsAll|isEmpty|sum|min|max|removeAll|retainAll)\\(.*");

    @Test
    void nothingGoesThroughAnUnorderedMapOrSet() {
        List<String> through = new ArrayList<>();
        for (SourceText text : SourceText.all()) {
            new Walk(text, unordered(text, UNORDERED), unordered(text, UNORDERED_SET), through).scan(text.tree(), null);
        }
        assertEquals(List.of(), through);
    }

    @Test
    void unorderedOnesAreSeen() {
        assertTrue(SourceText.all().stream().mapToInt(text -> unordered(text, UNORDERED).size()).sum() > 20);
    }

    private static Set<String> unordered(SourceText text, Pattern kind) {
        Set<String> names = new TreeSet<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitVariable(VariableTree variable, Void nothing) {
                take(variable.getName().toString(), variable.getInitializer());
                return super.visitVariable(variable, nothing);
            }

            @Override
            public Void visitAssignment(AssignmentTree assignment, Void nothing) {
                take(assignment.getVariable().toString().replace("this.", ""), assignment.getExpression());
                return super.visitAssignment(assignment, nothing);
            }

            private void take(String name, ExpressionTree value) {
                if (value != null && kind.matcher(value.toString()).matches()
                        && !ORDERED_AFTER_ALL.matcher(value.toString()).matches()) {
                    names.add(name);
                }
            }
        }.scan(text.tree(), null);
        return names;
    }

    /** Everything in one file that goes through one of these names. */
    private static final class Walk extends TreeScanner<Void, Void> {

        private final SourceText text;
        private final Set<String> names;
        private final Set<String> sets;
        private final List<String> through;
        private boolean harmless;

        private Walk(SourceText text, Set<String> names, Set<String> sets, List<String> through) {
            this.text = text;
            this.names = names;
            this.sets = sets;
            this.through = through;
        }

        @Override
        public Void visitEnhancedForLoop(EnhancedForLoopTree loop, Void nothing) {
            if (loop.getExpression() instanceof IdentifierTree name && sets.contains(name.getName().toString())) {
                through.add(text.place(loop) + " " + loop.getExpression());
            }
            return super.visitEnhancedForLoop(loop, nothing);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            boolean before = harmless;
            harmless |= HARMLESS.matcher(call.toString()).matches();
            if (!harmless && call.getMethodSelect() instanceof MemberSelectTree member && STEPS.contains(member.getIdentifier().toString())
                    && names.contains(member.getExpression().toString().replace("this.", ""))) {
                through.add(text.place(call) + " " + call);
            }
            super.visitMethodInvocation(call, nothing);
            harmless = before;
            return null;
        }

        @Override
        public Void visitNewClass(NewClassTree made, Void nothing) {
            if (made.getIdentifier().toString().matches("(ArrayList|LinkedHashSet|LinkedHashMap|ArrayDeque)<.*")) {
                made.getArguments().stream().filter(argument -> sets.contains(argument.toString()))
                        .forEach(argument -> through.add(text.place(made) + " " + made));
            }
            return super.visitNewClass(made, nothing);
        }
    }
}
