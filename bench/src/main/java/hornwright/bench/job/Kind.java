package hornwright.bench.job;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The fixed word and version under which an edit is kept. The word is never a class name, so a class may be renamed;
 * the version goes up when a field with a default is added, and a record reads every version up to its own.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Kind {
    String word();

    int version() default 1;
}
