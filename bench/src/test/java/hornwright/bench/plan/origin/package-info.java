/** Tests of what may be said of originality. */
@org.jspecify.annotations.NullMarked
package hornwright.bench.plan.origin;
