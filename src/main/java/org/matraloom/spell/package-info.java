/**
 * How things of a score are spelled: pieces and steps written in one fixed form, talas and jatis by
 * their names both ways, what was meant by a word that is misspelled.
 *
 * <p>{@link org.matraloom.spell.ScorePrinter} writes a composition; {@link
 * org.matraloom.spell.TalaReader} reads the name or formula of a tala, with places as indices from
 * 0 into the text given. Places of the tala are in beats, those of a usual eduppu in aksharas.
 */
package org.matraloom.spell;
