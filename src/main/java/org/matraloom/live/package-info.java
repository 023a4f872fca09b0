/**
 * A piece while it is played: tempo, mix and place may be changed under way.
 *
 * <p>A slow consumer of {@link org.matraloom.sound.Renderer}: one thread renders ahead into a ring,
 * another copies from the ring to the device and does nothing else. Positions are frames of the
 * rendering and beats of the piece; the device's count of heard frames is the only clock. Entry
 * class: {@link org.matraloom.live.LivePlayer}.
 */
package org.matraloom.live;
