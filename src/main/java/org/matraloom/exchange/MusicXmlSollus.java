package org.matraloom.exchange;

import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.matraloom.score.Notice;
import org.matraloom.sheet.RoundPart;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.Ratio;

/** Writes the notes of one measure of sollus. */
final class MusicXmlSollus {

  private final XMLStreamWriter xml;
  private final long divisions;

  MusicXmlSollus(XMLStreamWriter xml, long divisions) {
    this.xml = xml;
    this.divisions = divisions;
  }

  void write(Row row, List<StaffNote> notes, SheetWords words) throws XMLStreamException {
    for (int index = 0; index < notes.size(); index++) {
      StaffNote note = notes.get(index);
      directions(row, note, words);
      boolean first = index == 0 || !sameTuplet(notes.get(index - 1), note);
      boolean last = index + 1 == notes.size() || !sameTuplet(note, notes.get(index + 1));
      boolean breathes = !row.breathsIn(note.beat(), note.endBeat()).isEmpty();
      note(note, first, last, breathes && note.sounds());
    }
  }

  /** Notes of one ratio inside one beat stand under one bracket. */
  private static boolean sameTuplet(StaffNote a, StaffNote b) {
    return a.beat().floor() == b.beat().floor() && ratio(a).equals(ratio(b));
  }

  private static Ratio ratio(StaffNote note) {
    return note.value().map(value -> Ratio.of(value.actual(), value.normal())).orElse(Ratio.ZERO);
  }

  private void directions(Row row, StaffNote note, SheetWords words) throws XMLStreamException {
    for (Notice notice : words.notices()) {
      if (notice.words().isPresent() && within(notice.beat(), note)) {
        direction("words", notice.words().get());
      }
    }
    for (RoundPart part : row.parts()) {
      if (part.opensHere() && within(part.from(), note)) {
        direction("rehearsal", "Round " + part.round());
      }
    }
    for (Row.NadaiTurn turn : row.turns()) {
      if (within(turn.beat(), note)) {
        direction("words", words.nadai(turn.matrasPerBeat()));
      }
    }
  }

  private static boolean within(Ratio beat, StaffNote note) {
    return beat.compareTo(note.beat()) >= 0 && beat.compareTo(note.endBeat()) < 0;
  }

  private void direction(String kind, String text) throws XMLStreamException {
    xml.writeStartElement("direction");
    xml.writeAttribute("placement", "above");
    xml.writeStartElement("direction-type");
    text(kind, text);
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private void note(StaffNote note, boolean first, boolean last, boolean breathes)
      throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement("note");
    if (note.sounds()) {
      xml.writeStartElement("unpitched");
      text("display-step", "B");
      text("display-octave", "4");
      xml.writeEndElement();
    } else {
      xml.writeEmptyElement("rest");
    }
    text("duration", Long.toString(note.beats().times(divisions).num()));
    tie("tie", note);
    text("voice", "1");
    Optional<NoteValue> value = note.value();
    if (value.isPresent()) {
      value(value.get());
    }
    boolean bracketed = value.filter(NoteValue::inTuplet).isPresent() && (first || last);
    if (note.tiedBefore() || note.tiedAfter() || bracketed || breathes) {
      xml.writeStartElement("notations");
      tie("tied", note);
      if (bracketed) {
        tuplet(first, last);
      }
      if (breathes) {
        xml.writeStartElement("articulations");
        xml.writeEmptyElement("breath-mark");
        xml.writeEndElement();
      }
      xml.writeEndElement();
    }
    if (note.begins().isPresent()) {
      xml.writeStartElement("lyric");
      text("syllabic", "single");
      text("text", note.begins().get().text());
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private void value(NoteValue value) throws XMLStreamException {
    text("type", value.type());
    for (int dot = 0; dot < value.dots(); dot++) {
      xml.writeEmptyElement("dot");
    }
    if (value.inTuplet()) {
      xml.writeStartElement("time-modification");
      text("actual-notes", Integer.toString(value.actual()));
      text("normal-notes", Integer.toString(value.normal()));
      xml.writeEndElement();
    }
  }

  private void tie(String name, StaffNote note) throws XMLStreamException {
    if (note.tiedBefore()) {
      xml.writeEmptyElement(name);
      xml.writeAttribute("type", "stop");
    }
    if (note.tiedAfter()) {
      xml.writeEmptyElement(name);
      xml.writeAttribute("type", "start");
    }
  }

  private void tuplet(boolean first, boolean last) throws XMLStreamException {
    if (first) {
      xml.writeEmptyElement("tuplet");
      xml.writeAttribute("type", "start");
      xml.writeAttribute("bracket", "yes");
    }
    if (last) {
      xml.writeEmptyElement("tuplet");
      xml.writeAttribute("type", "stop");
    }
  }

  private void text(String name, String text) throws XMLStreamException {
    xml.writeStartElement(name);
    xml.writeCharacters(MusicXml.clean(text));
    xml.writeEndElement();
  }
}
