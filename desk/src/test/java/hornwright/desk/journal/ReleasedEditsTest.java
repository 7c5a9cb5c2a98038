package hornwright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.archive.Means;
import hornwright.bench.horn.Word;
import hornwright.bench.job.Edit;
import hornwright.bench.job.Kind;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.desk.house.Checkout;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Every edit ever released lies in {@code edits} as it was written then, and is read for ever. A file there is never
 * changed; a new version of an edit gets new files beside the old ones.
 */
final class ReleasedEditsTest {
    private static final JsonMapper PLAIN = JsonMapper.shared();
    private static final Path FOLDER = Checkout.root().resolve("desk/src/test/resources/hornwright");

    record Fixture(String name, String kind, int version, ObjectNode edit) {
        Edit read() {
            return EditJson.known(kind, version, edit.toString());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Fixture> fixtures() {
        return Checkout.files(FOLDER.resolve("edits"), ".json").stream()
                .map(file -> {
                    JsonNode tree = PLAIN.readTree(Checkout.text(file));
                    return new Fixture(
                            String.valueOf(file.getFileName()),
                            tree.get("kind").stringValue(),
                            tree.get("version").intValue(),
                            (ObjectNode) tree.get("edit"));
                })
                .toList();
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void a_released_edit_is_read_and_written_as_it_was(Fixture fixture) {
        Edit edit = fixture.read();
        assertThat(edit.inWords()).isNotBlank().doesNotEndWith(".");
        if (EditJson.kindOf(edit).version() == fixture.version()) {
            assertThat(PLAIN.readTree(EditJson.write(edit))).isEqualTo(fixture.edit());
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void a_released_edit_with_one_field_too_many_is_damage(Fixture fixture) {
        ObjectNode more = fixture.edit().deepCopy();
        more.put("shine", 1);
        assertThatThrownBy(() -> EditJson.known(fixture.kind(), fixture.version(), more.toString()))
                .isInstanceOf(Unusable.class);
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void a_field_left_out_is_damage_unless_it_may_be_blank(Fixture fixture) {
        for (RecordComponent part : fixture.read().getClass().getRecordComponents()) {
            ObjectNode less = fixture.edit().deepCopy();
            assertThat(less.remove(part.getName())).as(part.getName()).isNotNull();
            boolean mayBeBlank = part.getAnnotatedType().isAnnotationPresent(Nullable.class);
            assertThat(reads(fixture, less)).as(part.getName()).isEqualTo(mayBeBlank);
        }
    }

    private static boolean reads(Fixture fixture, ObjectNode edit) {
        try {
            EditJson.known(fixture.kind(), fixture.version(), edit.toString());
            return true;
        } catch (Unusable damaged) {
            return false;
        }
    }

    @Test
    void every_kind_and_version_has_an_edit_of_its_time() {
        List<Fixture> all = fixtures();
        for (Kind kind : EditJson.kinds()) {
            for (int version = 1; version <= kind.version(); version++) {
                int wanted = version;
                assertThat(all)
                        .as(kind.word() + " " + version)
                        .anyMatch(fixture -> fixture.kind().equals(kind.word()) && fixture.version() == wanted);
            }
        }
    }

    @Test
    void every_shape_an_edit_can_hold_is_among_them() {
        Set<Class<?>> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        fixtures().forEach(fixture -> collect(fixture.read(), seen));
        for (Class<?> shape : List.of(Observed.class, Decision.class, Means.class)) {
            assertThat(seen).contains(shape.getPermittedSubclasses());
        }
    }

    @Test
    void every_word_ever_released_is_still_a_word() {
        Map<String, List<String>> now = words();
        Map<String, List<String>> released = new TreeMap<>();
        Checkout.text(FOLDER.resolve("released-words.txt"))
                .lines()
                .map(line -> line.split(": ", 2))
                .forEach(line -> released.put(line[0], List.of(line[1].split(", "))));
        released.forEach((choice, words) ->
                assertThat(now.getOrDefault(choice, List.of())).as(choice).containsAll(words));
        assertThat(released).as("a new word is added to released-words.txt").isEqualTo(now);
    }

    /** The words of every closed choice that an edit can hold. */
    private static Map<String, List<String>> words() {
        Map<String, List<String>> found = new TreeMap<>();
        Set<Type> seen = new java.util.HashSet<>();
        collectWords(Edit.class, found, seen);
        return found;
    }

    private static void collectWords(Type type, Map<String, List<String>> found, Set<Type> seen) {
        if (!seen.add(type)) {
            return;
        }
        if (type instanceof ParameterizedType of) {
            Stream.of(of.getActualTypeArguments()).forEach(part -> collectWords(part, found, seen));
        } else if (type instanceof Class<?> of && of.isEnum()) {
            found.put(
                    of.getSimpleName() + " of " + of.getPackage().getName().replaceFirst(".*\\.", ""),
                    Stream.of(of.getEnumConstants())
                            .map(one -> ((Word) one).word())
                            .sorted()
                            .toList());
        } else if (type instanceof Class<?> of && of.isRecord()) {
            Stream.of(of.getRecordComponents())
                    .forEach(component -> collectWords(component.getGenericType(), found, seen));
        } else if (type instanceof Class<?> of && of.isSealed()) {
            Stream.of(of.getPermittedSubclasses()).forEach(part -> collectWords(part, found, seen));
        }
    }

    private static void collect(Object value, Set<Class<?>> seen) {
        switch (value) {
            case Record whole -> {
                seen.add(whole.getClass());
                parts(whole).forEach(part -> collect(part, seen));
            }
            case Iterable<?> many -> many.forEach(one -> collect(one, seen));
            case Map<?, ?> map -> map.values().forEach(one -> collect(one, seen));
            default -> {}
        }
    }

    private static List<Object> parts(Record whole) {
        List<Object> parts = new ArrayList<>();
        for (RecordComponent component : whole.getClass().getRecordComponents()) {
            Object part = value(component, whole);
            if (part != null) {
                parts.add(part);
            }
        }
        return parts;
    }

    private static @Nullable Object value(RecordComponent component, Object whole) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
