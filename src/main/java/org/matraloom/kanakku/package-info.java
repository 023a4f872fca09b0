/**
 * Whether a composition lands, and what a musician should be warned of.
 *
 * <p>All lengths are exact. A composition lands when its start, its rounds and its silences
 * together come to the eduppu in whole cycles of the tala; the sollu or song that follows belongs
 * to the eduppu and is not part of the length. Entry class: {@link org.matraloom.kanakku.Landing}.
 */
package org.matraloom.kanakku;
