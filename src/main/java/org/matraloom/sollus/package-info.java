/**
 * The built-in list of sollus as a table: what {@code sollus.txt} says, drawn as a class.
 *
 * <p>Knows nothing of what its words mean; {@code score} makes a lexicon of it. Sizes are sollus.
 * Entry class: {@link org.matraloom.sollus.StandardSollus}.
 */
package org.matraloom.sollus;
