package org.matraloom.recording;

import java.util.List;
import java.util.Optional;
import net.sourceforge.jaad.mp4.boxes.Box;
import net.sourceforge.jaad.mp4.boxes.BoxTypes;
import net.sourceforge.jaad.mp4.boxes.impl.EditListBox;
import net.sourceforge.jaad.mp4.boxes.impl.MediaHeaderBox;
import net.sourceforge.jaad.mp4.boxes.impl.MovieHeaderBox;

/**
 * Which part of the decoded sound of an MP4 file was recorded (ISO/IEC 14496-12, edit list box).
 *
 * <p>An encoder tells with it how many samples it put before the sound.
 *
 * @param skipFrames samples to leave out at the beginning
 * @param lengthFrames samples that belong to the sound, {@link Long#MAX_VALUE} if not told
 */
record EditList(long skipFrames, long lengthFrames) {

  private static final EditList WHOLE = new EditList(0, Long.MAX_VALUE);
  private static final long EMPTY_EDIT = 0xFFFF_FFFFL;

  static EditList of(List<Box> boxes, int ratePerSecond) {
    for (Box movie : boxes) {
      if (movie.getType() != BoxTypes.MOVIE_BOX) {
        continue;
      }
      for (Box track : movie.getChildren(BoxTypes.TRACK_BOX)) {
        if (isSound(track)) {
          return of(movie, track, ratePerSecond);
        }
      }
    }
    return WHOLE;
  }

  private static boolean isSound(Box track) {
    return inside(track, BoxTypes.MEDIA_BOX)
        .flatMap(media -> inside(media, BoxTypes.MEDIA_INFORMATION_BOX))
        .flatMap(information -> inside(information, BoxTypes.SOUND_MEDIA_HEADER_BOX))
        .isPresent();
  }

  private static EditList of(Box movie, Box track, int ratePerSecond) {
    Optional<Box> list =
        inside(track, BoxTypes.EDIT_BOX).flatMap(edit -> inside(edit, BoxTypes.EDIT_LIST_BOX));
    Optional<Box> movieHeader = inside(movie, BoxTypes.MOVIE_HEADER_BOX);
    Optional<Box> mediaHeader =
        inside(track, BoxTypes.MEDIA_BOX)
            .flatMap(media -> inside(media, BoxTypes.MEDIA_HEADER_BOX));
    if (list.isEmpty() || movieHeader.isEmpty() || mediaHeader.isEmpty()) {
      return WHOLE;
    }
    EditListBox edits = (EditListBox) list.get();
    double movieScale = ((MovieHeaderBox) movieHeader.get()).getTimeScale();
    double mediaScale = ((MediaHeaderBox) mediaHeader.get()).getTimeScale();
    for (int i = 0; i < edits.getMediaTime().length; i++) {
      long start = edits.getMediaTime()[i];
      long length = edits.getSegmentDuration()[i];
      if (start >= 0 && start != EMPTY_EDIT && mediaScale > 0 && movieScale > 0) {
        return new EditList(
            Math.round(start / mediaScale * ratePerSecond),
            length > 0 ? Math.round(length / movieScale * ratePerSecond) : Long.MAX_VALUE);
      }
    }
    return WHOLE;
  }

  private static Optional<Box> inside(Box box, long type) {
    return box.hasChild(type) ? Optional.of(box.getChild(type)) : Optional.empty();
  }
}
