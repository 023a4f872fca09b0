/**
 * Commands to practise with: render, play, record, breaths and the drills.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints. A drill is made
 * as a {@link org.matraloom.app.practise.MadeDrill}, which is written or played. Entry classes:
 * {@link org.matraloom.app.practise.PlayCommand} and {@link
 * org.matraloom.app.practise.DrillCommand}.
 */
package org.matraloom.app.practise;
