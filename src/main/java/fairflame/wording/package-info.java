/**
 * What a customer reads, in the customer's language: which texts these are, and their words in other languages. May import
 * only the root. The program's own language is English; another language is a list of pairs of text, an English one and
 * the same in that language.
 */
@NullMarked
package fairflame.wording;

import org.jspecify.annotations.NullMarked;
