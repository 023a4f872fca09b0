/**
 * A voice of one's own: recorded sollus, cut and placed, kept in a folder, and said in time.
 *
 * <p>Places in a sample are frames of {@link org.matraloom.mouth.Kit#RATE} from the beginning of
 * its file; in the text beside the samples they are seconds. Entry classes: {@link
 * org.matraloom.mouth.KitMaker}, which makes a kit of recordings, {@link
 * org.matraloom.mouth.KitShelf}, which keeps kits, and {@link org.matraloom.mouth.OwnVoice}, which
 * speaks with one.
 */
package org.matraloom.mouth;
