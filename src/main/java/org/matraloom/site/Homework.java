package org.matraloom.site;

/**
 * What somebody practises.
 *
 * @param student who
 * @param piece the piece, by the name of its file
 * @param tempo how fast: beats a minute, or a share of the tempo with a percent sign
 * @param task what in particular; empty if nothing is said
 */
public record Homework(String student, String piece, String tempo, String task) {}
