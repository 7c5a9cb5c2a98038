/**
 * The metal itself: pins set on the tube for dents, cracks, corrosion, old solder, lifted rings and missing stones, and
 * what the finish and the stamps tell of earlier work.
 *
 * <p>Main types: {@link hornwright.bench.body.BodySheet} and {@link hornwright.bench.body.FinishSheet}. It values
 * nothing and restores no finish. Read {@link hornwright.bench.body.PinRemedies} first.
 */
@NullMarked
package hornwright.bench.body;

import org.jspecify.annotations.NullMarked;
