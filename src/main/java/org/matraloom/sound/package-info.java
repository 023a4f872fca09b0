/**
 * Turns events into samples: the parts of the mix, and tracks of one or more passages.
 *
 * <p>Samples are floats, full scale at 1.0, in frames counted from the origin of the timeline. A
 * stroke begins at exactly the frame of its event, and the size of the blocks that are asked for
 * never changes a sample. Levels are in dB against the clap. Entry classes: {@link
 * org.matraloom.sound.TrackWriter} for a whole file, {@link org.matraloom.sound.Renderer} for
 * blocks.
 */
package org.matraloom.sound;
