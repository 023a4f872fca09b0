package org.matraloom.notation;

/** The word that begins a line of a second reciter. */
public final class SecondWord {

  /** As it is written. */
  public static final String WITH = "with";

  private SecondWord() {}
}
