/**
 * Whether a composition lands, and what a musician should be warned of.
 *
 * <p>All lengths are exact. A composition lands when its start, its rounds and its silences
 * together come to the eduppu in whole cycles of the tala; the sollu or song that follows belongs
 * to the eduppu and is not part of the length. A rhythm that was tapped is counted in matras here,
 * too. Entry classes: {@link org.matraloom.kanakku.Landing} and {@link
 * org.matraloom.kanakku.TappedRhythm}.
 */
package org.matraloom.kanakku;
