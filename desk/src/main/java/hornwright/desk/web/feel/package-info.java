/**
 * How the keys feel: touch, springs, bounce, how a pad closes, and a lever to scale.
 *
 * <p>Main type: {@link hornwright.desk.web.feel.FeelPages}. It reckons nothing. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.feel;

import org.jspecify.annotations.NullMarked;
