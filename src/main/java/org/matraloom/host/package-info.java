/**
 * The outside world: sound devices, the terminal and its keys, files of the user; and the live
 * playing that lies between them and the renderer.
 *
 * <p>What is live is a slow consumer of {@link org.matraloom.sound.Renderer}: one thread renders
 * ahead into a ring, another copies from the ring to the device and does nothing else. Positions
 * are frames of the rendering; the device's count of heard frames is the only clock. Entry class:
 * {@link org.matraloom.host.SoundDevices}.
 */
package org.matraloom.host;
