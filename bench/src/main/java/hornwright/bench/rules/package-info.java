/**
 * The shop's own rules: every default the plan leans on, with unit, range and where it comes from. All are editable and
 * all are labelled typical until the shop has set its own.
 *
 * <p>Main type: {@link hornwright.bench.rules.ShopRules}. It holds numbers and never reckons with them.
 */
@NullMarked
package hornwright.bench.rules;

import org.jspecify.annotations.NullMarked;
