/**
 * Recording a voice row by row: which rows are asked for, what is asked for next, whether a row was
 * said well, and the rows that were kept.
 *
 * <p>Places in a row are seconds from its first clap, levels dB of full scale. Nothing here plays
 * or records. Entry classes: {@link org.matraloom.prompt.RowList}, {@link
 * org.matraloom.prompt.Asking}, {@link org.matraloom.prompt.SayJudge} and {@link
 * org.matraloom.prompt.RowFolder}.
 */
package org.matraloom.prompt;
