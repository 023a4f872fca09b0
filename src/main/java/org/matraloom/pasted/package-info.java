/**
 * Makes a score of a text as people send it: lines with numbers, bars, totals in brackets,
 * capitals, dashes.
 *
 * <p>What is not certain is guessed, and every guess is said. Lengths are in matras. Entry class:
 * {@link org.matraloom.pasted.PastedText}.
 */
package org.matraloom.pasted;
