package org.matraloom.notation;

import java.util.List;
import org.matraloom.score.Sequence;

/**
 * A phrase as it is written.
 *
 * @param name its name
 * @param token where its name stands
 * @param sequence what it says
 * @param references the names of other phrases in it
 */
record Definition(String name, Token token, Sequence sequence, List<Token> references) {}
