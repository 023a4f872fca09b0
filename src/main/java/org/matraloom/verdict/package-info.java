/**
 * What is said of a take: what went well, what went wrong and what to practise next.
 *
 * <p>Faults are told the worst first, in sentences for a reciter; a practice is a value that the
 * command line puts into words. Tempi are whole beats a minute. Entry classes: {@link
 * org.matraloom.verdict.Judgement}, {@link org.matraloom.verdict.Faults} and {@link
 * org.matraloom.verdict.CleanerTake}, which compares two takes.
 */
package org.matraloom.verdict;
