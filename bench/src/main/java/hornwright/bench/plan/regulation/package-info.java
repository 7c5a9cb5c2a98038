/**
 * Regulation as part of the plan: what the feelers read becomes what to add or take at every contact, what a first assembly
 * would come to, and where links stand once their material has packed down.
 *
 * <p>Main type: {@link hornwright.bench.plan.regulation.RegulationChapter}. Nothing here is reckoned with the rest of the
 * plan: its page and its paper ask for it. Read {@code docs/method/regulation.md} first.
 */
@NullMarked
package hornwright.bench.plan.regulation;

import org.jspecify.annotations.NullMarked;
