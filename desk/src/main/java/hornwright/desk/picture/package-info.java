/**
 * Develops a photograph as it comes from a telephone: looks at its first bytes before anything is decoded, refuses what
 * would flood the memory, turns it upright, and writes it anew without a word about where and with what it was taken.
 *
 * <p>Main type: {@link hornwright.desk.picture.Darkroom}. It keeps nothing and knows no horn. Read first: OWASP ASVS
 * 5.0.0, 5.2.6 and 14.2.8.
 */
@NullMarked
package hornwright.desk.picture;

import org.jspecify.annotations.NullMarked;
