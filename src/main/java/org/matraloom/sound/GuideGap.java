package org.matraloom.sound;

/**
 * A silence that the device put into the guide of a take because it had nothing to play.
 *
 * @param atFrame how many frames of the guide were heard before it, from its beginning
 * @param frames how long it was
 */
public record GuideGap(long atFrame, long frames) {}
