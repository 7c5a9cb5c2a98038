/**
 * A keywork as a mechanism: its keys, springs, cups, stops and links with a thickness at every contact, in the SI terms
 * of the linkage engine, for either state of the octave switch and with keys held out of the way.
 *
 * <p>Main type: {@link hornwright.bench.action.Action}. It only translates: no formula, no choice of a thickness. Read
 * {@code docs/method/linkage.md} first.
 */
@NullMarked
package hornwright.bench.action;

import org.jspecify.annotations.NullMarked;
