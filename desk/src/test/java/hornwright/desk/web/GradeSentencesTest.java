package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Grade;
import hornwright.desk.use.OpenShop;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every sentence of every page that speaks of the archive: a grade and a probability never share one. */
@Tag("slow")
final class GradeSentencesTest extends ServedShop {
    private static final String HORN = "/horn/q-0001";

    /** "B · well supported", "contested". */
    private static final Pattern GRADE = Pattern.compile(Stream.of(Grade.values())
            .map(grade -> "\\b" + grade.letter() + " · |\\b" + grade.word() + "\\b")
            .collect(Collectors.joining("|")));

    /** "0.97", "97 %", "95 in 100", "probability". */
    private static final Pattern CHANCE =
            Pattern.compile("\\b0\\.\\d\\d+\\b(?! (?:mm|bit))|\\d ?%|\\d in 100\\b|\\bprobability\\b");

    /** An element that ends a sentence; what stands within a line does not. */
    private static final Pattern ENDS = Pattern.compile(
            "</?(?:p|li|ul|ol|td|th|tr|dt|dd|dl|div|h\\d|section|summary|details|title|desc|text|label|button|option|svg|table)\\b[^>]*>");

    GradeSentencesTest() {
        super(OpenShop.FirstRun.DEMO);
    }

    private static List<String> sentences(String page) {
        String text = page.replaceAll("(?s)<(script|style)\\b.*?</\\1>", " ");
        return Stream.of(ENDS.split(text))
                .flatMap(part -> Stream.of(part.replaceAll("<[^>]*>", "").split("\\.(?=\\s|$)")))
                .map(sentence -> sentence.replaceAll("\\s+", " ").strip())
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    private static boolean mixes(String sentence) {
        return GRADE.matcher(sentence).find() && CHANCE.matcher(sentence).find();
    }

    @Test
    void no_sentence_of_any_page_mixes_a_grade_with_a_probability() throws IOException {
        Set<String> pages = new LinkedHashSet<>(List.of(
                "/archive",
                HORN + "/as-built?show=1",
                HORN + "/keep",
                HORN + "/report",
                "/archive/as-built?voice=alto&serial=41207",
                "/archive/as-built?voice=alto&serial=45700",
                "/archive/as-built?voice=alto&serial=70000",
                "/archive/as-built?voice=tenor&serial=52110"));
        for (String page : List.copyOf(pages)) {
            Pattern.compile("href=\"(/archive/place[^\"]*)\"")
                    .matcher(wire.get(page).body())
                    .results()
                    .forEach(link -> pages.add(link.group(1).replace("&amp;", "&")));
        }
        List<String> mixed = new ArrayList<>();
        int graded = 0;
        int chances = 0;
        for (String page : pages) {
            for (String sentence : sentences(wire.get(page).body())) {
                graded += GRADE.matcher(sentence).find() ? 1 : 0;
                chances += CHANCE.matcher(sentence).find() ? 1 : 0;
                if (mixes(sentence)) {
                    mixed.add(page + ": " + sentence);
                }
            }
        }
        assertThat(mixed).isEmpty();
        assertThat(pages).hasSizeGreaterThan(300);
        assertThat(graded).isGreaterThan(500);
        assertThat(chances).isGreaterThan(500);
    }

    @Test
    void such_a_sentence_would_be_found() {
        assertThat(mixes(sentences("<p><b>B · well supported</b> with 0.97</p>").getFirst()))
                .isTrue();
        assertThat(sentences("<p>B · well supported</p><p>0.97 shellac</p>")).noneMatch(GradeSentencesTest::mixes);
        assertThat(sentences("<p>It is contested. A look shows it 95 times in 100.</p>"))
                .hasSize(2);
    }
}
