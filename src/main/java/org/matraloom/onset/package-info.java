/**
 * Where sounds begin in a recording, and how loud it is at every moment.
 *
 * <p>The recording is cut into windows of 12 ms, their energies in bands of hearing go into small
 * networks, and the peaks of the answer are onsets. Moments are seconds from the beginning of the
 * recording ({@code double}), levels decibels above the recording's own floor. Entry class: {@link
 * org.matraloom.onset.OnsetCurve}.
 */
package org.matraloom.onset;
