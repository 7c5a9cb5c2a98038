/**
 * Regulation worked backwards: from feeler readings under the cups of pressed keys to what each contact is wrong by, and
 * what to add or take at all of them at once; and how often a first assembly comes right.
 *
 * <p>Main types: {@link hornwright.bench.regulation.Regulation} and {@link hornwright.bench.regulation.FirstAssembly}.
 * Pads are taken as sealing alone and standing level: that comes before regulation. Read {@code
 * docs/method/regulation.md} first.
 */
@NullMarked
package hornwright.bench.regulation;

import org.jspecify.annotations.NullMarked;
