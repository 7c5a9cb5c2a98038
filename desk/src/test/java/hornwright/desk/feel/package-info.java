/** The feel of the shipped horns, whose touch forces are stated in their files. */
@org.jspecify.annotations.NullMarked
package hornwright.desk.feel;
