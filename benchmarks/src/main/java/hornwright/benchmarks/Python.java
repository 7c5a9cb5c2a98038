package hornwright.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs a plain NumPy script on one core and reads numbers out of what it says. */
final class Python {
    private Python() {}

    static String run(Path script, String input) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder("python3", script.toString());
        // one core against one core
        builder.environment().putAll(Map.of("OMP_NUM_THREADS", "1", "OPENBLAS_NUM_THREADS", "1"));
        Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
        process.getOutputStream().write(input.getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("python3 with numpy is needed");
        }
        return answer;
    }

    static double number(String text, String name) {
        Matcher found = Pattern.compile("\"" + name + "\": ([0-9.e+-]+)").matcher(text);
        if (!found.find()) {
            throw new IllegalStateException("NumPy has said: " + text);
        }
        return Double.parseDouble(found.group(1));
    }

    /** The lists of numbers of that name, one after another; lists inside it each by itself. */
    static Matcher lists(String text, String name) {
        String from = text.substring(text.indexOf("\"" + name + "\""));
        return Pattern.compile("\\[([0-9., e+-]*)]").matcher(from);
    }

    static double[] list(Matcher lists) {
        if (!lists.find()) {
            throw new IllegalStateException("NumPy has answered too little");
        }
        String inside = lists.group(1);
        return inside.isBlank()
                ? new double[0]
                : java.util.Arrays.stream(inside.split(", "))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
    }
}
