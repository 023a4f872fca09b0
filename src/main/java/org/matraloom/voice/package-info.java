/**
 * The sollus spoken by formant synthesis, each exactly as long as its matras.
 *
 * <p>A voice answers a {@link org.matraloom.voice.SolluCue}, places in frames, with a {@link
 * org.matraloom.voice.SolluWave}, samples with full scale at 1.0; the answer depends on nothing but
 * the cues. Inside, times are seconds or milliseconds and frequencies hertz, as the names say.
 * Entry classes: {@link org.matraloom.voice.SolluVoice}, which others are handed, and {@link
 * org.matraloom.voice.FormantVoice}.
 */
package org.matraloom.voice;
