/** Signatures held against what was decided and read, on graphs of no horn. */
@org.jspecify.annotations.NullMarked
package hornwright.bench.plan.order;
