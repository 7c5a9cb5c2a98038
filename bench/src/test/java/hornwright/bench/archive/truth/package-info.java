/**
 * Whether the archive can be believed: invented factories whose truth is known, invented witnesses who see a part of
 * it, and the count of how often what the archive says is so.
 */
@org.jspecify.annotations.NullMarked
package hornwright.bench.archive.truth;
