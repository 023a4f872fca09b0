/**
 * A drum of two heads that plays what is said. One enters by {@link
 * org.matraloom.drum.StrokeTable}, which knows the strokes of every sollu, and {@link
 * org.matraloom.drum.DrumVoice}, which sounds them. Frequencies are in hertz, decays in seconds,
 * places in frames.
 */
package org.matraloom.drum;
