/**
 * Recorded sound as files: reads WAV, writes nothing.
 *
 * <p>Main type: {@link hornwright.desk.sound.Wav}. It hears nothing; that is the pitch engine's. Source: Microsoft and
 * IBM, Multimedia Programming Interface and Data Specifications 1.0, 1991, and its later extensible form.
 */
@NullMarked
package hornwright.desk.sound;

import org.jspecify.annotations.NullMarked;
