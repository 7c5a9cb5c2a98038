/**
 * Tuning as the bench asks about it: what heights can and cannot move, which leak a set of symptoms points to, what the
 * mouthpiece and the bore must be for a horn to sound as it does, what changed between two sessions.
 *
 * <p>Everything here is offered and never flows into a plan by itself: factory heights come first. It records no sound and
 * reckons no impedance; that is the air engine's. Read first: J. Chen, J. Smith and J. Wolfe, Saxophone acoustics,
 * Acoustics Australia 37, 2009.
 */
@NullMarked
package hornwright.bench.sound;

import org.jspecify.annotations.NullMarked;
