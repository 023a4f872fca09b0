/**
 * The measures of a take: pulse, rounds, changes of nadai, habits, evenness, breaths, landing.
 *
 * <p>A measure is a class with one static method from expected and said sollus to a record. Moments
 * are seconds from the beginning of the recording, deviations seconds (positive is late) unless a
 * name says matras or percent. Entry class: {@link org.matraloom.measure.TakeFindings}.
 */
package org.matraloom.measure;
