/**
 * What could lie at a place instead of what the maker put there, and what each would change: the plan, the cushion and the
 * action engine run again with the other material.
 *
 * <p>Main type: {@link hornwright.bench.plan.instead.InsteadChapter}. It decides nothing and orders nothing. Read {@code
 * docs/method/materials.md} first.
 */
@NullMarked
package hornwright.bench.plan.instead;

import org.jspecify.annotations.NullMarked;
