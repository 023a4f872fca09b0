/**
 * The page for a phone: a sheet that follows its sound, in one file that works offline.
 *
 * <p>Sounds are short clips that the page places itself, in frames of a clip and exact beats of the
 * piece. Entry classes: {@link org.matraloom.page.PhonePage} and {@link
 * org.matraloom.page.PageSoundMaker}; {@code page.js} lies beside them among the resources.
 */
package org.matraloom.page;
