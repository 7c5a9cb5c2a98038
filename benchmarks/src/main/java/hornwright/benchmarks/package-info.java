/**
 * How fast, as ratios against a baseline of the same run. One class a question; run with
 * {@code java -cp 'benchmarks/target/benchmarks-0.1.0.jar:benchmarks/target/lib/*' org.openjdk.jmh.Main NAME}.
 */
@NullMarked
package hornwright.benchmarks;

import org.jspecify.annotations.NullMarked;
