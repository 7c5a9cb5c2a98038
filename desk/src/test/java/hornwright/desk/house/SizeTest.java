package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Long methods and long files are where a reader gets lost: hard stops of 60 and 500 code lines, templates 100. */
final class SizeTest {
    private static final int METHOD = 60;
    private static final int FILE = 500;
    private static final int TEMPLATE = 100;

    @Test
    void no_method_is_longer_than_sixty_lines() throws IOException {
        List<Path> files = Checkout.javaFiles("main");
        var compiler = ToolProvider.getSystemJavaCompiler();
        var fileManager = compiler.getStandardFileManager(null, Locale.ROOT, null);
        JavacTask task = (JavacTask)
                compiler.getTask(null, fileManager, null, null, null, fileManager.getJavaFileObjectsFromPaths(files));
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        List<String> tooLong = new ArrayList<>();
        List<Long> lengths = new ArrayList<>();
        for (CompilationUnitTree unit : task.parse()) {
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethod(MethodTree method, Void none) {
                    BlockTree body = method.getBody();
                    if (body != null) {
                        long lines = line(unit, positions.getEndPosition(unit, body))
                                - line(unit, positions.getStartPosition(unit, body))
                                - 1;
                        lengths.add(lines);
                        if (lines > METHOD) {
                            tooLong.add(unit.getSourceFile().getName() + " " + method.getName() + " " + lines);
                        }
                    }
                    return super.visitMethod(method, null);
                }
            }.scan(unit, null);
        }
        assertThat(tooLong).isEmpty();
        lengths.sort(null);
        assertThat(lengths.get((int) (lengths.size() * 0.95)))
                .as("95th percentile of method length")
                .isLessThanOrEqualTo(25);
    }

    @Test
    void no_file_holds_more_than_five_hundred_lines_of_code() {
        assertThat(Checkout.javaFiles("main"))
                .allSatisfy(
                        file -> assertThat(codeLines(file)).as(file.toString()).isLessThanOrEqualTo(FILE));
    }

    @Test
    void no_template_is_longer_than_a_hundred_lines() {
        assertThat(Checkout.files(Checkout.root().resolve("desk/src/main/jte"), ".jte"))
                .allSatisfy(file -> assertThat(Checkout.text(file).lines().count())
                        .as(file.toString())
                        .isLessThanOrEqualTo(TEMPLATE));
    }

    private static long line(CompilationUnitTree unit, long position) {
        return unit.getLineMap().getLineNumber(position);
    }

    private static long codeLines(Path file) {
        return Checkout.text(file)
                .lines()
                .map(String::strip)
                .filter(line ->
                        !line.isEmpty() && !line.startsWith("//") && !line.startsWith("*") && !line.startsWith("/*"))
                .count();
    }
}
