/**
 * Files that other programs open: MIDI, MusicXML, captions.
 *
 * <p>A beat is a quarter note; captions are in milliseconds. Writers get streams and never touch
 * files. Entry classes: {@link org.matraloom.exchange.MidiFile}, {@link
 * org.matraloom.exchange.MusicXml} and {@link org.matraloom.exchange.Captions}.
 */
package org.matraloom.exchange;
