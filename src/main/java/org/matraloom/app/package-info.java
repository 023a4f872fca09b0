/**
 * The program: its commands by name, the demonstration, and the end of the process.
 *
 * <p>The commands themselves stand in rooms by what they are for: {@code write}, {@code prove},
 * {@code practise}, {@code hear}, {@code voices} and {@code handon}; what they share is in {@code
 * cli}. Only {@link org.matraloom.app.Main} ends the process.
 */
package org.matraloom.app;
