package org.matraloom.follow;

/**
 * A sollu of the score as it was said.
 *
 * @param place its place among {@link Alignment#expected()}, from 0
 * @param run in which run of the take it was said, from 1; a restart or a slip begins another
 * @param onsetSeconds where its consonant was released, from the beginning of the recording
 * @param feltSeconds where its beat is felt: the onset and the {@linkplain FeltBeat lag} of its
 *     consonant
 * @param deviationSeconds how much later than the take's own pulse puts it; negative if earlier
 */
public record SaidSollu(
    int place, int run, double onsetSeconds, double feltSeconds, double deviationSeconds) {}
