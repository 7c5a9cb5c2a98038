/**
 * Draws a horn from its keywork alone: the tube opened along the back and laid flat, and single keys from the side. Main
 * types: {@link hornwright.desk.drawing.UnrolledHorn} and {@link hornwright.desk.drawing.Lever}. One geometry gives two
 * outputs, for the screen (classes, handles) and for print (resolved colours). It decides nothing: what state a place is
 * in comes from outside. Source: the laying out of a tapered tube on sheet metal, common practice.
 */
@NullMarked
package hornwright.desk.drawing;

import org.jspecify.annotations.NullMarked;
