package org.matraloom.score;

/**
 * One spoken rhythm syllable.
 *
 * @param spelling as the user writes it, kept for the sheet
 * @param sound the lexicon's name of the sound, one for all its spellings
 */
public record Sollu(String spelling, String sound) {}
