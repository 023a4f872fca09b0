/**
 * Sitting at the machine: keys, screen and what a key does, to play or to record a take.
 *
 * <p>The state that is shown is one value; words and lines are made from it. Beats are beats of the
 * piece, levels dB. Entry classes: {@link org.matraloom.session.LiveSession} and {@link
 * org.matraloom.session.RecordSession}.
 */
package org.matraloom.session;
