/**
 * Commands that hand a piece on: sheets, pages, sets of tracks, tables of events, exchange files.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints. Entry classes:
 * {@link org.matraloom.app.handon.SheetCommand}, {@link org.matraloom.app.handon.ExportCommand} and
 * {@link org.matraloom.app.handon.PackCommand}.
 */
package org.matraloom.app.handon;
