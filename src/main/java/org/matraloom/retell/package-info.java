/**
 * A take given back: drawn against its own pulse, and slowed for listening.
 *
 * <p>Lengths on paper are points, moments seconds, positions in sound frames ({@code long}). Entry
 * classes: {@link org.matraloom.retell.DeviationPicture} and {@link
 * org.matraloom.retell.SlowedTake}.
 */
package org.matraloom.retell;
