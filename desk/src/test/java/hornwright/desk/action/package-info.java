/** The shipped keyworks as mechanisms: they must balance, close and open as their files say. */
@NullMarked
package hornwright.desk.action;

import org.jspecify.annotations.NullMarked;
