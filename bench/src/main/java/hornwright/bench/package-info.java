/**
 * The words of the trade. Everything below is a pure function of its inputs: no clock, no file, no database.
 *
 * <p>Start at {@code horn} for what a saxophone is, {@code plan} for what is to be done to it.
 */
@NullMarked
package hornwright.bench;

import org.jspecify.annotations.NullMarked;
