package hornwright.desk.web.page;

import hornwright.desk.message.Messages;
import hornwright.desk.web.view.Help;
import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Finds the help of a page by its address as it was declared. */
public final class Helps {
    private static final int MOST_WRONG = 3;

    private Helps() {}

    static Help at(Context context, Messages texts) {
        @Nullable Endpoint endpoint = context.endpoints().lastHttpEndpoint();
        return of(endpoint == null ? "" : endpoint.path, texts);
    }

    /** The help of that address, or of the nearest one above it, or what holds anywhere. */
    public static Help of(String address, Messages texts) {
        for (String name = name(address); !name.isEmpty(); name = above(name)) {
            Optional<Help> help = named(name, texts);
            if (help.isPresent()) {
                return help.get();
            }
        }
        return named("any", texts).orElseThrow();
    }

    public static Optional<Help> named(String name, Messages texts) {
        String key = "help." + name + ".";
        return texts.find(key + "question")
                .map(question ->
                        new Help(question, texts.say(key + "needs"), texts.say(key + "decides"), wrong(key, texts)));
    }

    /** {@code /horn/{id}/photos/{photo}} is called horn.photos.photo, and {@code /} is the shelf. */
    public static String name(String address) {
        return address.equals("/") || address.equals("/horns")
                ? "shelf"
                : Arrays.stream(address.split("/"))
                        .filter(word -> !word.isEmpty() && !word.equals("{id}"))
                        .map(word -> word.replaceAll("[{}]", ""))
                        .collect(Collectors.joining("."));
    }

    private static List<String> wrong(String key, Messages texts) {
        return IntStream.rangeClosed(1, MOST_WRONG)
                .mapToObj(at -> texts.find(key + "wrong." + at))
                .flatMap(Optional::stream)
                .toList();
    }

    private static String above(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(0, dot);
    }
}
