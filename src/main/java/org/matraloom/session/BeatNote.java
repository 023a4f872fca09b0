package org.matraloom.session;

/**
 * What there is to read about one beat of a piece.
 *
 * @param words the sollus that begin in it, karvais as commas, silence as dots, breaths as v
 * @param matrasPerBeat matras a beat at its beginning, kalam included; 0 where there is no count
 */
record BeatNote(String words, int matrasPerBeat) {

  static final BeatNote EMPTY = new BeatNote("", 0);
}
