/**
 * What the uncertainty of some inputs does to a result: first order, and by drawing.
 *
 * <p>Main type: {@link hornwright.engines.uncertainty.Uncertainty}. Does not know what the numbers mean, and takes the
 * inputs as independent. Read first: JCGM 100:2008 and JCGM 101:2008.
 */
@NullMarked
package hornwright.engines.uncertainty;

import org.jspecify.annotations.NullMarked;
