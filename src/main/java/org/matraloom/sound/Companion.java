package org.matraloom.sound;

import java.util.function.IntFunction;
import org.matraloom.schedule.Timeline;
import org.matraloom.voice.SolluVoice;

/**
 * Something that sounds beside the voice: a second reciter, or a drum.
 *
 * @param part under which name it is loud, muted and panned
 * @param timeline whose sollus it says or plays, with the origin and tempo of the passage
 * @param voice makes what sounds, for a rate in frames a second
 */
public record Companion(MixPart part, Timeline timeline, IntFunction<? extends SolluVoice> voice) {}
