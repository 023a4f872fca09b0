/**
 * Commands that hear where it went wrong: takes measured, and the history of practice.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints; findings come
 * as text, JSON or pictures. Entry classes: {@link org.matraloom.app.hear.TakeCommand} and {@link
 * org.matraloom.app.hear.LogCommand}.
 */
package org.matraloom.app.hear;
