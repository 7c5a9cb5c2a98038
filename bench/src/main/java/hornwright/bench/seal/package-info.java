/**
 * Where a horn can leak: every site, how it is tried, what was found there, and what may be said of the whole.
 *
 * <p>Main types: {@link hornwright.bench.seal.LeakSites} and {@link hornwright.bench.seal.LeakSheet}; on its page {@link hornwright.bench.seal.SealSheet}. It
 * reckons no flow; that is the leak engine's. A total reading hides where a leak sits, so the sheet never passes a horn on a sum
 * while a site is untried.
 */
@NullMarked
package hornwright.bench.seal;

import org.jspecify.annotations.NullMarked;
