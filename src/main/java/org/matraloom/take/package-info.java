/**
 * A recording measured: what was said when, against what the score asks for.
 *
 * <p>Times of a recording are seconds from its first frame ({@code double}) where they meet the
 * user, and frames ({@code long}) inside. Nothing here opens a sound device.
 */
package org.matraloom.take;
