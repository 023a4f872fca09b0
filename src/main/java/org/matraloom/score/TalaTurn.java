package org.matraloom.score;

/**
 * Where another tala begins.
 *
 * @param beat its first samam, a whole beat of the performance
 * @param avartana its cycle, which goes on until the next turn
 */
public record TalaTurn(long beat, Avartana avartana) {}
