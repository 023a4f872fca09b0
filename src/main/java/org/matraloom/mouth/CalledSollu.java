package org.matraloom.mouth;

import java.util.OptionalDouble;

/**
 * A sollu that a cue sheet says was spoken.
 *
 * @param sollu the lexicon's name of its sound
 * @param line the line of the sheet, from 1
 * @param opensRow whether it is the first of its line
 * @param opensWord whether it is the first of its word
 * @param seconds when it was spoken, if the sheet says so
 */
record CalledSollu(
    String sollu, int line, boolean opensRow, boolean opensWord, OptionalDouble seconds) {}
