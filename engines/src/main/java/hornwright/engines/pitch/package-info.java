/**
 * Notes in recorded sound: where each begins and ends, its pitch, how far that wandered.
 *
 * <p>Main types: {@link hornwright.engines.pitch.Pitch}, {@link hornwright.engines.pitch.Recording} and
 * {@link hornwright.engines.pitch.Heard}. It does not record, reads no file and transposes nothing. Read A. de Cheveigné
 * and H. Kawahara, YIN, a fundamental frequency estimator for speech and music, 2002, first.
 */
@NullMarked
package hornwright.engines.pitch;

import org.jspecify.annotations.NullMarked;
