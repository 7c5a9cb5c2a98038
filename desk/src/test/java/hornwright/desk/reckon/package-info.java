/** Engines asked in JSON: units in, units out, every fault at its place. */
@NullMarked
package hornwright.desk.reckon;

import org.jspecify.annotations.NullMarked;
