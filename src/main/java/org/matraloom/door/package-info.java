/**
 * A server for pages on this machine only: who may ask, how much, and what a page may load.
 *
 * <p>It knows nothing of music. Sizes are in bytes, times in milliseconds. Entry class: {@link
 * org.matraloom.door.Door}.
 */
package org.matraloom.door;
