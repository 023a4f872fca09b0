package org.matraloom.exchange;

import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.matraloom.score.Kriya;
import org.matraloom.sheet.Cell;
import org.matraloom.sheet.Row;

/** Writes the kriyas of one measure, a quarter each; a held hand is a rest. */
final class MusicXmlHand {

  private final XMLStreamWriter xml;
  private final long divisions;

  MusicXmlHand(XMLStreamWriter xml, long divisions) {
    this.xml = xml;
    this.divisions = divisions;
  }

  void write(Row row) throws XMLStreamException {
    for (Cell cell : row.cells()) {
      write(cell.kriya().orElse(new Kriya.Hold()));
    }
  }

  private void write(Kriya kriya) throws XMLStreamException {
    boolean sounds = !(kriya instanceof Kriya.Hold);
    xml.writeCharacters("\n");
    xml.writeStartElement("note");
    if (sounds) {
      xml.writeStartElement("unpitched");
      text("display-step", "B");
      text("display-octave", "4");
      xml.writeEndElement();
    } else {
      xml.writeEmptyElement("rest");
    }
    text("duration", Long.toString(divisions));
    text("voice", "1");
    text("type", "quarter");
    if (sounds) {
      text("notehead", head(kriya));
      xml.writeStartElement("lyric");
      text("syllabic", "single");
      text("text", kriya.words().replace(" finger", ""));
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private static String head(Kriya kriya) {
    if (kriya instanceof Kriya.Clap) {
      return "x";
    }
    return kriya instanceof Kriya.Wave ? "triangle" : "normal";
  }

  private void text(String name, String text) throws XMLStreamException {
    xml.writeStartElement(name);
    xml.writeCharacters(text);
    xml.writeEndElement();
  }
}
