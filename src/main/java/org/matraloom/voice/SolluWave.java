package org.matraloom.voice;

/**
 * The samples of one sollu.
 *
 * @param samples one channel, peaks near 1.0 and never above, free of DC, quiet at both ends; may
 *     ring past the end of the sollu; never changed once handed over
 * @param leadFrames how many of them lie before the felt beat, from 0 to the voice's {@link
 *     SolluVoice#longestLeadFrames()}
 */
public record SolluWave(float[] samples, int leadFrames) {}
