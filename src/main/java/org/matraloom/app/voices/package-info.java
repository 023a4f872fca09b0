/**
 * Commands around recorded voices: making, hearing, checking, sharing and removing them.
 *
 * <p>Times that are printed are seconds or milliseconds, levels LUFS or dB, as they say. Entry
 * class: {@link org.matraloom.app.voices.VoiceCommand}.
 */
package org.matraloom.app.voices;
