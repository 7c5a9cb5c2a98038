/**
 * Playing the horn: what was heard, what it calls for, and what a leak would do.
 *
 * <p>Main type: {@link hornwright.desk.web.sound.SoundPages}. It hears nothing: sound is read by the desk. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.sound;

import org.jspecify.annotations.NullMarked;
