/**
 * A set of practice tracks for students, made from one score in one go: which tracks, their names
 * and tags, the files themselves, and a list of what is there.
 *
 * <p>Every track is made on its own, so that tracks are rendered side by side and an interrupted
 * set is completed by making what is missing. Entry classes: {@link org.matraloom.pack.PackOrder}
 * and {@link org.matraloom.pack.PackMaker}.
 */
package org.matraloom.pack;
