package exergue.fence;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** One of the program's own source files as the compiler reads it, for rules that the bytecode cannot prove. */
record SourceText(CompilationUnitTree tree, SourcePositions positions) {

    private static final Path HOME = Path.of("src/main/java");
    private static final List<SourceText> ALL = read();

    static List<SourceText> all() {
        return ALL;
    }

    private static List<SourceText> read() {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (Stream<Path> walk = Files.walk(HOME);
                StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            List<Path> sources = walk.filter(file -> file.toString().endsWith(".java")).sorted().toList();
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of(), null,
                    files.getJavaFileObjectsFromPaths(sources));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            List<SourceText> all = new ArrayList<>();
            for (CompilationUnitTree tree : task.parse()) {
                all.add(new SourceText(tree, positions));
            }
            return List.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** "measure" for everything in and below {@code exergue.measure}. */
    String room() {
        return House.room(tree.getPackageName().toString());
    }

    /** "Coin.java:17" */
    String place(Tree at) {
        return Path.of(tree.getSourceFile().getName()).getFileName() + ":" + line(positions.getStartPosition(tree, at));
    }

    /** From the first line of what is declared, its annotations and all, to the last. */
    long lines(Tree of) {
        return line(positions.getEndPosition(tree, of)) - line(positions.getStartPosition(tree, of)) + 1;
    }

    private long line(long position) {
        LineMap lines = tree.getLineMap();
        return lines.getLineNumber(position);
    }
}
