/**
 * Everything that carries a material and is neither a pad nor a foot under a cup: links, levers' feet and bumpers, sleeves,
 * linings, springs, pad centres.
 *
 * <p>Main type: {@link hornwright.bench.plan.contacts.ContactChapter}. It claims no link thickness unless the space was
 * measured: links are cut full and sanded until both cups close. Read it first.
 */
@NullMarked
package hornwright.bench.plan.contacts;

import org.jspecify.annotations.NullMarked;
