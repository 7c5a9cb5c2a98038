package hornwright.engines;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import org.assertj.core.api.Assertions;
import org.assertj.core.data.Offset;

/** Expected values from outside, each file with its source and its (relative) tolerance. */
public final class Ref {
    private final String name;
    private final Properties values = new Properties();

    private Ref(String name) {
        this.name = name;
    }

    /** Reads {@code /hornwright/<name>.ref}; a file without source or tolerance is refused. */
    public static Ref read(String name) {
        Ref ref = new Ref(name);
        try (InputStream in = Ref.class.getResourceAsStream("/hornwright/" + name + ".ref")) {
            if (in == null) {
                throw new IllegalArgumentException("no reference file " + name);
            }
            ref.values.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ref.text("source");
        ref.number("tolerance");
        return ref;
    }

    /** The value of a key as text. */
    public String text(String key) {
        String value = values.getProperty(key);
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException(name + ".ref lacks " + key);
        }
        return value.strip();
    }

    /** The value of a key as a number. */
    public double number(String key) {
        return Double.parseDouble(text(key));
    }

    /** Asserts that what was computed equals the value under this key, times {@code unit}, within the tolerance. */
    public void check(String key, double computed, double unit) {
        double expected = number(key) * unit;
        String own = values.getProperty("tolerance." + key, text("tolerance"));
        double allowed = Math.abs(expected) * Double.parseDouble(own.strip());
        Assertions.assertThat(computed).as("%s of %s.ref", key, name).isCloseTo(expected, Offset.offset(allowed));
    }
}
