/**
 * What can go wrong: for the horn and for the hands. Every piece of advice carries its cautions from here, and they
 * are the usual ones: local codes, data sheets and licensed practice come first.
 *
 * <p>Main types: {@link hornwright.bench.care.Hazard} and {@link hornwright.bench.care.AdhesiveRemoval}. It gives no
 * limits of exposure and no recipe. Read {@link hornwright.bench.care.Hazard} first.
 */
@NullMarked
package hornwright.bench.care;

import org.jspecify.annotations.NullMarked;
