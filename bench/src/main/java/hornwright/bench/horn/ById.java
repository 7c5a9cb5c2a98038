package hornwright.bench.horn;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An ordered, unchangeable collection whose members are found by their id. Order is that of the keywork file.
 */
public final class ById<T extends Identified> implements Iterable<T> {
    private final List<T> inOrder;
    private final Map<String, T> byId;

    private ById(List<T> inOrder) {
        this.inOrder = List.copyOf(inOrder);
        this.byId = HashMap.newHashMap(inOrder.size());
        for (T member : inOrder) {
            if (byId.put(member.id(), member) != null) {
                throw new IllegalArgumentException("the id " + member.id() + " stands twice");
            }
        }
    }

    public static <T extends Identified> ById<T> of(List<T> members) {
        return new ById<>(members);
    }

    public Optional<T> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public T get(String id) {
        return find(id).orElseThrow(() -> new NoSuchElementException("nothing here is called " + id));
    }

    public boolean contains(String id) {
        return byId.containsKey(id);
    }

    public List<T> list() {
        return inOrder;
    }

    public List<T> where(Predicate<T> test) {
        return inOrder.stream().filter(test).toList();
    }

    public Stream<T> stream() {
        return inOrder.stream();
    }

    public int size() {
        return inOrder.size();
    }

    @Override
    public Iterator<T> iterator() {
        return inOrder.iterator();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ById<?> that && inOrder.equals(that.inOrder);
    }

    @Override
    public int hashCode() {
        return inOrder.hashCode();
    }

    @Override
    public String toString() {
        return inOrder.toString();
    }
}
