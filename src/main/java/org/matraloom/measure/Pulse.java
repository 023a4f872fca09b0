package org.matraloom.measure;

import java.util.OptionalDouble;
import org.matraloom.pulse.PulseLine;

/**
 * The pulse of a take.
 *
 * @param beatsPerMinute the tempo of the beat in the middle of the take
 * @param driftPercent the change of tempo from the first beat said to the last, in percent of the
 *     first; positive if the take grows faster
 * @param spreadSeconds how far sollus usually are from it: the median of the absolute deviations,
 *     times 1.4826 (the standard deviation, if the deviations are normal)
 * @param leadSeconds how much the whole take is after the guide that was heard; negative if it is
 *     ahead of it, empty if the take does not tell where the guide was. Ahead by some tens of
 *     milliseconds is usual (B. H. Repp, Psychon. Bull. Rev. 12 (2005) 969-992) and no fault
 * @param line where every beat falls
 */
public record Pulse(
    double beatsPerMinute,
    double driftPercent,
    double spreadSeconds,
    OptionalDouble leadSeconds,
    PulseLine line) {}
