/** Pages as a browser, or somebody pretending to be one, meets them over the wire. Main type: {@code Wire}. */
@NullMarked
package hornwright.desk.web;

import org.jspecify.annotations.NullMarked;
