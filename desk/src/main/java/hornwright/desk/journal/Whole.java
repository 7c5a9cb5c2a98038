package hornwright.desk.journal;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Looks through a record just read for something required that is missing. JSON that leaves a field out reads as null;
 * only a component that says it may be null may be so.
 */
final class Whole {
    private static final Map<Class<?>, List<RecordComponent>> COMPONENTS = new ConcurrentHashMap<>();

    private Whole() {}

    /** The name of the first required component that is missing, or null when the value is whole. */
    static @Nullable String missing(@Nullable Object value) {
        return switch (value) {
            case null -> null;
            case Record whole -> missingIn(whole);
            case Collection<?> many -> firstMissing(many);
            case Map<?, ?> map -> firstMissing(map.values());
            default -> null;
        };
    }

    private static @Nullable String missingIn(Record whole) {
        for (RecordComponent component : components(whole.getClass())) {
            Object part = read(whole, component);
            if (part == null && !component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                return component.getName();
            }
            String deeper = missing(part);
            if (deeper != null) {
                return component.getName() + "." + deeper;
            }
        }
        return null;
    }

    private static @Nullable String firstMissing(Collection<?> many) {
        for (Object one : many) {
            String found = missing(one);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static List<RecordComponent> components(Class<?> type) {
        return COMPONENTS.computeIfAbsent(
                type,
                t -> Arrays.stream(t.getRecordComponents())
                        .peek(component -> component.getAccessor().setAccessible(true))
                        .toList());
    }

    private static @Nullable Object read(Record whole, RecordComponent component) {
        try {
            return component.getAccessor().invoke(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
