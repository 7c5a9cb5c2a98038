/** Tests of what is proposed once new material has packed. */
@org.jspecify.annotations.NullMarked
package hornwright.bench.plan.settled;
