/**
 * Finding anything by the words on it: by beginnings of words, whatever the accents, sharps and flats.
 *
 * <p>Main type: {@link hornwright.desk.find.Shelves}. It holds texts in memory, so it answers alike on whichever database
 * they lie; it reads nothing itself and knows no horn. Source: the sorted word list with postings of C. Manning, P.
 * Raghavan, H. Schütze, Introduction to Information Retrieval, 2008, chapters 2 and 3; letters are taken apart by Unicode
 * Standard Annex 15.
 */
@NullMarked
package hornwright.desk.find;

import org.jspecify.annotations.NullMarked;
