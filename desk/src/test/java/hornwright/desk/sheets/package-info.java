/** The bench sheets on the shipped horns. */
@org.jspecify.annotations.NullMarked
package hornwright.desk.sheets;
