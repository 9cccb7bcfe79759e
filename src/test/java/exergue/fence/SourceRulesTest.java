package exergue.fence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;
import org.junit.jupiter.api.Test;

/** Rules of the house that only the source shows: lengths of methods, copies of lists, local figures that float. */
class SourceRulesTest {

    private static final int LONGEST_METHOD = 40;
    /** Rooms whose records go from stage to stage. */
    private static final Set<String> SHARED = Set.of("files", "finding", "measure", "dating", "legend", "model", "cite", "study", "photo",
            "edition", "exergue");
    private static final Set<String> EXACT = Set.of("measure", "dating", "legend", "model", "edition");
    private static final Set<TypeKind> FLOATING = Set.of(TypeKind.DOUBLE, TypeKind.FLOAT);

    @Test
    void enoughIsSeen() {
        assertTrue(SourceText.all().size() > 300, SourceText.all().size() + " source files");
    }

    @Test
    void methodsAreShort() {
        List<String> tooLong = new ArrayList<>();
        everyMethod((text, method) -> {
            if (text.lines(method) > LONGEST_METHOD) {
                tooLong.add(text.place(method) + " " + method.getName() + ": " + text.lines(method) + " lines");
            }
        });
        assertEquals(List.of(), tooLong);
    }

    @Test
    void recordsCopyWhatTheyAreGiven() {
        List<String> shared = new ArrayList<>();
        everyRecord((text, record) -> components(record).stream()
                .filter(component -> SHARED.contains(text.room()) && !record.getModifiers().getFlags().contains(Modifier.PRIVATE))
                .filter(component -> component.getType().toString().matches("(List|Set|Map|Collection|SortedMap|SortedSet)<.*"))
                .filter(component -> !copies(record, component.getName().toString()))
                .forEach(component -> shared.add(text.place(record) + " " + record.getSimpleName() + "." + component.getName())));
        assertEquals(List.of(), shared);
    }

    @Test
    void noLocalFigureFloats() {
        List<String> floating = new ArrayList<>();
        for (SourceText text : SourceText.all()) {
            if (EXACT.contains(text.room())) {
                text.tree().accept(new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitPrimitiveType(PrimitiveTypeTree type, Void nothing) {
                        if (FLOATING.contains(type.getPrimitiveTypeKind())) {
                            floating.add(text.place(type));
                        }
                        return super.visitPrimitiveType(type, nothing);
                    }

                    @Override
                    public Void visitLiteral(LiteralTree literal, Void nothing) {
                        if (literal.getKind() == Tree.Kind.DOUBLE_LITERAL || literal.getKind() == Tree.Kind.FLOAT_LITERAL) {
                            floating.add(text.place(literal));
                        }
                        return super.visitLiteral(literal, nothing);
                    }
                }, null);
            }
        }
        assertEquals(List.of(), floating);
    }

    /** In the compiler's eyes the components of a record are its fields that are not static. */
    private static List<VariableTree> components(ClassTree record) {
        return record.getMembers().stream().filter(VariableTree.class::isInstance).map(VariableTree.class::cast)
                .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC)).toList();
    }

    private static boolean copies(ClassTree record, String component) {
        String copy = "(?s).*\\b(this\\.)?" + component + " = [^;]*(copyOf|unmodifiable|toList\\(\\)|List\\.of)[^;]*;.*";
        return record.getMembers().stream().filter(MethodTree.class::isInstance).map(MethodTree.class::cast)
                .anyMatch(method -> method.getName().contentEquals("<init>") && method.toString().matches(copy));
    }

    private static void everyMethod(BiConsumer<SourceText, MethodTree> with) {
        for (SourceText text : SourceText.all()) {
            text.tree().accept(new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethod(MethodTree method, Void nothing) {
                    with.accept(text, method);
                    return super.visitMethod(method, nothing);
                }
            }, null);
        }
    }

    private static void everyRecord(BiConsumer<SourceText, ClassTree> with) {
        for (SourceText text : SourceText.all()) {
            text.tree().accept(new TreeScanner<Void, Void>() {
                @Override
                public Void visitClass(ClassTree declared, Void nothing) {
                    if (declared.getKind() == Tree.Kind.RECORD) {
                        with.accept(text, declared);
                    }
                    return super.visitClass(declared, nothing);
                }
            }, null);
        }
    }
}
