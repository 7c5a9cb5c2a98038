/**
 * The work that does not undo itself: every piece of bench work as a step, what it must come after, what it rests on,
 * and which finished steps must be looked at again when something beneath them changes.
 *
 * <p>Main types: {@link hornwright.bench.steps.WorkGraph}, the steps in one good order, and
 * {@link hornwright.bench.steps.Progress}, how far they are. It plans no size and measures nothing; hours and prices
 * are elsewhere. Read {@link hornwright.bench.steps.BenchSteps} first: it is the order of work of a restoration.
 */
@NullMarked
package hornwright.bench.steps;

import org.jspecify.annotations.NullMarked;
