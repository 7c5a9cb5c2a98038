package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The style sheets are joined into one, so a class named twice would dress a page that never asked for it. */
final class StyleSheetTest {
    private static final Path FOLDER = Path.of("src/main/resources/hornwright/web");
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern SELECTORS = Pattern.compile("(?:^|[{};])\\s*([^{};@]+?)\\s*\\{");
    private static final Pattern ONE_CLASS = Pattern.compile("\\.[\\w-]+");

    /** These say for any class how it looks on a narrow screen and on paper. */
    private static final Set<String> FOR_ALL = Set.of("narrow.css", "print.css");

    @Test
    void a_class_that_stands_alone_is_dressed_in_one_sheet_only() throws IOException {
        Map<String, Set<String>> sheets = new TreeMap<>();
        for (Path sheet : sheets()) {
            for (String name : dressed(Files.readString(sheet))) {
                sheets.computeIfAbsent(name, first -> new TreeSet<>())
                        .add(sheet.getFileName().toString());
            }
        }
        sheets.values().removeIf(where -> where.size() == 1);
        assertThat(sheets).isEmpty();
    }

    @Test
    void a_class_is_found_alone_and_in_a_list_but_not_inside_another() {
        assertThat(dressed("/* .no {} */ .a { x: 1 } p, .b { y: 2 } .c .d { z: 3 } @media (w) { .e { x: 1 } }"))
                .containsExactly(".a", ".b", ".e");
    }

    private static List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".css"))
                    .filter(file -> !FOR_ALL.contains(file.getFileName().toString()))
                    .toList();
        }
    }

    private static List<String> dressed(String sheet) {
        return SELECTORS
                .matcher(COMMENT.matcher(sheet).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .flatMap(selectors -> Stream.of(selectors.split("[{};,]")))
                .map(String::strip)
                .filter(selector -> ONE_CLASS.matcher(selector).matches())
                .distinct()
                .sorted()
                .toList();
    }
}
