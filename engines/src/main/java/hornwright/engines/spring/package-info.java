/**
 * Needle and flat springs as cantilevers: small and large deflection, stress, choice from standard sizes.
 *
 * <p>Main type: {@link hornwright.engines.spring.Spring}. Does not know keys, and takes the spring straight when free and
 * elastic throughout. Read first: K. E. Bisshopp and D. C. Drucker, Large deflection of cantilever beams, 1945.
 */
@NullMarked
package hornwright.engines.spring;

import org.jspecify.annotations.NullMarked;
