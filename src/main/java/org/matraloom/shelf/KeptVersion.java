package org.matraloom.shelf;

/**
 * A version of a score that was kept.
 *
 * @param id what it is asked for by
 * @param whenMs when it was begun, in milliseconds since 1970
 * @param bytes how long it is
 */
public record KeptVersion(String id, long whenMs, long bytes) {}
