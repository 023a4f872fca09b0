/**
 * The scores of a folder as files: by name only, saved whole, with their versions and a bin.
 *
 * <p>It knows nothing of what stands in them. A stamp stands for a text; two texts with one stamp
 * are the same. Entry class: {@link org.matraloom.shelf.ScoreFolder}.
 */
package org.matraloom.shelf;
