/**
 * Where to breathe: the places where a performance leaves time for air, and the best choice among
 * them at its tempo.
 *
 * <p>A plan uses places: one sollu of the score in one nadai, everywhere it is said or nowhere. How
 * places are weighed stands in docs/breathing.md and, term by term, in {@link
 * org.matraloom.breath.PlanTerm}.
 *
 * <p>A karvai is a fifth shorter in five than in four, and a rest that is long enough at 60 may be
 * too short at 90, so every round is looked at on its own, at the tempo of the composition. Entry
 * classes: {@link org.matraloom.breath.BreathPlanner} and {@link org.matraloom.breath.BreathPlan}.
 */
package org.matraloom.breath;
