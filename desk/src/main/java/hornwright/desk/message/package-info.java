/**
 * The texts of the pages by key, in the language of the shop.
 *
 * <p>Main type: {@link hornwright.desk.message.Messages}. It keeps words and puts parts into them; it knows no page, no
 * number and no locale of figures. Source: files of properties as {@link java.util.Properties} reads them, in UTF-8.
 */
@NullMarked
package hornwright.desk.message;

import org.jspecify.annotations.NullMarked;
