/**
 * What is known of how the factory built horns like this one: horns looked at, papers, people, and how far to trust them.
 *
 * <p>Main type: {@link hornwright.bench.archive.Archive}. Read first {@link hornwright.bench.archive.Grade}. Two measures
 * are kept apart and never said in one sentence: the grade says how good the evidence is, by rule; the probability says
 * what a change somewhere along the serial numbers leaves likely. Nothing here decides what is done to a horn.
 */
@NullMarked
package hornwright.bench.archive;

import org.jspecify.annotations.NullMarked;
