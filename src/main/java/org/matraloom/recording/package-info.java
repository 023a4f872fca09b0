/**
 * Sound files of all kinds, read once from the beginning as one channel of samples.
 *
 * <p>Samples are floats, full scale at 1.0; positions are frames ({@code long}), rates frames a
 * second. What a codec puts before the sound is taken off. A file that cannot be measured is a
 * {@link org.matraloom.recording.RecordingException} that names the fault and a way out. Entry
 * class: {@link org.matraloom.recording.Recordings}. A new kind of file is a {@link
 * org.matraloom.recording.Recording} and a line there.
 */
package org.matraloom.recording;
