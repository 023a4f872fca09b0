package org.matraloom.exchange;

import java.util.Optional;
import org.matraloom.sheet.Mark;
import org.matraloom.time.Ratio;

/**
 * A note or a rest inside one beat.
 *
 * @param beat where it begins, in beats of the performance
 * @param beats how long it is, at most a beat
 * @param value how it is drawn; nothing where no note value has its length
 * @param sounds whether it is a note
 * @param tiedBefore whether it goes on from the note before
 * @param tiedAfter whether the note after it goes on
 * @param begins the sollu that begins with it
 */
record StaffNote(
    Ratio beat,
    Ratio beats,
    Optional<NoteValue> value,
    boolean sounds,
    boolean tiedBefore,
    boolean tiedAfter,
    Optional<Mark.Said> begins) {

  StaffNote tiedOn() {
    return new StaffNote(beat, beats, value, sounds, tiedBefore, true, begins);
  }

  Ratio endBeat() {
    return beat.plus(beats);
  }
}
