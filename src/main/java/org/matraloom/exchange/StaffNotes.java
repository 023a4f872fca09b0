package org.matraloom.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.sheet.Cell;
import org.matraloom.sheet.Mark;
import org.matraloom.sheet.Row;
import org.matraloom.time.Ratio;

/**
 * Turns the marks of a sheet into notes and rests that never cross a beat.
 *
 * <p>A karvai is tied to its sollu; the time before the piece begins and after it has ended is a
 * rest.
 */
final class StaffNotes {

  private record Piece(
      Ratio from, Ratio to, int matrasPerBeat, boolean sounds, Optional<Mark.Said> said) {}

  private final List<Piece> pieces = new ArrayList<>();
  private final List<StaffNote> notes = new ArrayList<>();

  private StaffNotes() {}

  /** The notes of whole avartanas, in order and without gaps. */
  static List<StaffNote> of(List<Row> avartanas) {
    StaffNotes staff = new StaffNotes();
    Ratio reached = avartanas.get(0).startBeat();
    for (Row row : avartanas) {
      for (Cell cell : row.cells()) {
        for (Mark mark : cell.marks()) {
          staff.rest(reached, mark.beat());
          staff.add(mark);
          reached = mark.endBeat();
        }
      }
    }
    staff.rest(reached, avartanas.get(avartanas.size() - 1).endBeat());
    staff.pieces.forEach(staff::write);
    return List.copyOf(staff.notes);
  }

  private void rest(Ratio from, Ratio to) {
    cut(from, to, 1, false, Optional.empty());
  }

  private void add(Mark mark) {
    Optional<Mark.Said> begins =
        mark instanceof Mark.Said said ? Optional.of(said) : Optional.empty();
    boolean sounds = !(mark instanceof Mark.Silent);
    cut(mark.beat(), mark.endBeat(), mark.matrasPerBeat(), sounds, begins);
  }

  /** Cuts a length at the beats and joins what can be one note with the piece before. */
  private void cut(
      Ratio from, Ratio to, int matrasPerBeat, boolean sounds, Optional<Mark.Said> said) {
    Ratio at = from;
    Optional<Mark.Said> opening = said;
    while (at.compareTo(to) < 0) {
      Ratio nextBeat = Ratio.of(at.floor() + 1);
      Ratio end = nextBeat.compareTo(to) < 0 ? nextBeat : to;
      Optional<Piece> before = last().filter(piece -> joins(piece, sounds, matrasPerBeat));
      if (opening.isEmpty() && before.isPresent() && !at.isWhole()) {
        Piece piece = pieces.remove(pieces.size() - 1);
        pieces.add(new Piece(piece.from(), end, matrasPerBeat, sounds, piece.said()));
      } else {
        pieces.add(new Piece(at, end, matrasPerBeat, sounds, opening));
      }
      opening = Optional.empty();
      at = end;
    }
  }

  private Optional<Piece> last() {
    return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(pieces.size() - 1));
  }

  private static boolean joins(Piece piece, boolean sounds, int matrasPerBeat) {
    return piece.sounds() == sounds && piece.matrasPerBeat() == matrasPerBeat;
  }

  private void write(Piece piece) {
    Ratio length = piece.to().minus(piece.from());
    List<NoteValue> values = NoteValue.of(length, piece.matrasPerBeat());
    if (values.isEmpty()) {
      note(piece, piece.from(), length, Optional.empty());
    }
    Ratio at = piece.from();
    for (NoteValue value : values) {
      note(piece, at, value.beats(), Optional.of(value));
      at = at.plus(value.beats());
    }
  }

  private void note(Piece piece, Ratio at, Ratio beats, Optional<NoteValue> value) {
    boolean begins = at.equals(piece.from()) && piece.said().isPresent();
    boolean goesOn = piece.sounds() && !begins;
    if (goesOn) {
      notes.add(notes.remove(notes.size() - 1).tiedOn());
    }
    notes.add(
        new StaffNote(
            at,
            beats,
            value,
            piece.sounds(),
            goesOn,
            false,
            begins ? piece.said() : Optional.empty()));
  }
}
