package org.matraloom.measure;

/**
 * Why a take cannot be judged.
 *
 * @param reason a sentence without a full stop, such as "the recording is silent"
 */
public record Doubt(String reason) {}
