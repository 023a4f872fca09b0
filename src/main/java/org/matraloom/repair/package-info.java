/**
 * Ways to make a written piece land, and to take it over into another nadai or tala.
 *
 * <p>A repair is a list of {@link org.matraloom.score.Edit}, kept only if the changed piece lands
 * when it is laid out. Entry classes: {@link org.matraloom.repair.Repairs} and {@link
 * org.matraloom.repair.Conversion}.
 */
package org.matraloom.repair;
