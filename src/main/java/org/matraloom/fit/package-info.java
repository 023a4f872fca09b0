/**
 * What lands: lengths, waits, starts and plans of rounds found for what is known.
 *
 * <p>All sums are exact; lengths are matras or beats as the names say. An answer is tried out by
 * arithmetic of its own before it is given. Entry class: {@link org.matraloom.fit.FitSearch}, asked
 * a {@link org.matraloom.fit.FitProblem}.
 */
package org.matraloom.fit;
