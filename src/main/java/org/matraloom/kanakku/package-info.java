/**
 * The arithmetic of a composition: whether it lands, what would make it land, and its shapes.
 *
 * <p>All lengths are exact. A composition lands when its start, its rounds and its silences
 * together come to the eduppu in whole cycles of the tala; the sollu or song that follows belongs
 * to the eduppu and is not part of the length. Entry class for a written piece: {@link
 * org.matraloom.kanakku.Landing}.
 */
package org.matraloom.kanakku;
