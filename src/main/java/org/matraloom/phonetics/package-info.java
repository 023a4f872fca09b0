/**
 * What sollus sound like in any mouth, by the consonant and the vowel they begin with. One enters
 * by {@link org.matraloom.phonetics.AnyMouth}. Likelihoods are natural logarithms; the colours of
 * sounds are cepstra without a unit.
 */
package org.matraloom.phonetics;
