package hornwright.bench.survey;

import java.time.Instant;

/**
 * A removed original that is kept in a bag.
 *
 * @param place where on the horn it was
 * @param what it is, in words
 * @param store where the bag lies: a drawer, a box, the case
 * @param when it was put there
 */
public record StoredPart(String place, String what, String store, Instant when) {}
