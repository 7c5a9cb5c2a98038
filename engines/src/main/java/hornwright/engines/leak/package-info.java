/**
 * Air through a leak: narrow slots, sharp-edged holes, and a volume that loses its pressure.
 *
 * <p>Main type: {@link hornwright.engines.leak.Leak}. Knows nothing of pads or keys; steady, nearly incompressible
 * flow only. Read first: Bird, Stewart and Lightfoot, Transport Phenomena, section 2 (flow between parallel plates).
 */
@NullMarked
package hornwright.engines.leak;

import org.jspecify.annotations.NullMarked;
