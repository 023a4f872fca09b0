/**
 * Sollus in the letters of Roman and the Indian scripts.
 *
 * <p>The sound decides and not the spelling. Entry class: {@link
 * org.matraloom.script.SolluWriting}; a new script is a constant of {@link
 * org.matraloom.script.Script} with its {@link org.matraloom.script.ScriptLetters}.
 */
package org.matraloom.script;
