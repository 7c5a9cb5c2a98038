/**
 * Plain double methods shared by the engines: roots, quadrature, small linear algebra.
 *
 * <p>Knows no physics and no units.
 */
@NullMarked
package hornwright.engines.numerics;

import org.jspecify.annotations.NullMarked;
