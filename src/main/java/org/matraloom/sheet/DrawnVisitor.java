package org.matraloom.sheet;

/**
 * Says something of a thing of each kind on a drawn page; a new kind is a new method for all.
 *
 * @param <R> what is said
 */
interface DrawnVisitor<R> {

  R text(Drawn.Text text);

  R rule(Drawn.Rule rule);

  R box(Drawn.Box box);

  R symbol(Drawn.Symbol symbol);
}
