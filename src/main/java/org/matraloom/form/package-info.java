/**
 * Shapes of a composition: yatis, threefold endings, reductions, and the parts of a phrase.
 *
 * <p>Lengths are whole matras where lines are counted, and exact where a written phrase is read.
 * Entry classes: {@link org.matraloom.form.Structure} for what is written, {@link
 * org.matraloom.form.Joints} for where what is said falls into parts, {@link
 * org.matraloom.form.Endings} and {@link org.matraloom.form.YatiProposals} for what could be.
 */
package org.matraloom.form;
