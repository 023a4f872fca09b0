package org.matraloom.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.Ratio;

/**
 * A sheet as MusicXML 4.0: one staff of sollus and one of the hand, a measure an avartana.
 *
 * <p>A beat is a quarter. Durations are whole numbers of divisions, so every measure adds up
 * exactly; a nadai that is not a power of two is written with time-modification (MusicXML 4.0,
 * w3.org/2021/06/musicxml40). The sheet must be cut by avartana.
 */
public final class MusicXml {

  private static final String INDENT = "\n";

  private final Sheet sheet;
  private final SheetWords words;
  private final Avartana avartana;
  private final List<StaffNote> notes;
  private final long divisions;
  private final XMLStreamWriter xml;

  private MusicXml(Sheet sheet, XMLStreamWriter xml) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().avartana();
    this.notes = StaffNotes.of(sheet.rows());
    this.divisions =
        notes.stream().mapToLong(note -> note.beats().den()).reduce(1, MusicXml::commonMultiple);
    this.xml = xml;
  }

  /**
   * Writes a sheet.
   *
   * @param sheet a sheet with one row an avartana
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, OutputStream out) throws IOException {
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out, "UTF-8");
      new MusicXml(sheet, xml).write();
      xml.close();
    } catch (XMLStreamException e) {
      throw e.getNestedException() instanceof IOException io
          ? io
          : new IOException("the MusicXML file could not be written", e);
    }
  }

  private static long commonMultiple(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return Math.multiplyExact(a / x, b);
  }

  private void write() throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    open("score-partwise");
    xml.writeAttribute("version", "4.0");
    open("work");
    element("work-title", words.title());
    close();
    open("identification");
    open("encoding");
    element("software", "Matraloom");
    close();
    open("miscellaneous");
    field("tala", words.setting());
    field("sum", words.sum());
    field("landing", words.landing());
    close();
    close();
    open("part-list");
    part("P1", "Sollus");
    part("P2", "Hand");
    close();
    open("part");
    xml.writeAttribute("id", "P1");
    sollus();
    close();
    open("part");
    xml.writeAttribute("id", "P2");
    for (Row row : sheet.rows()) {
      measure(row);
      attributes(row);
      new MusicXmlHand(xml, divisions).write(row);
      close();
    }
    close();
    close();
    xml.writeEndDocument();
  }

  private void field(String name, String text) throws XMLStreamException {
    open("miscellaneous-field");
    xml.writeAttribute("name", name);
    xml.writeCharacters(clean(text));
    close();
  }

  private void part(String id, String name) throws XMLStreamException {
    open("score-part");
    xml.writeAttribute("id", id);
    element("part-name", name);
    close();
  }

  private void measure(Row row) throws XMLStreamException {
    open("measure");
    xml.writeAttribute("number", Integer.toString(row.number()));
  }

  private void attributes(Row row) throws XMLStreamException {
    Avartana tala = avartana.goingOnAt(row.startBeat());
    if (row.number() > 1) {
      turn(row, tala);
      return;
    }
    open("attributes");
    element("divisions", Long.toString(divisions));
    time(tala);
    open("clef");
    element("sign", "percussion");
    close();
    open("staff-details");
    element("staff-lines", "1");
    close();
    close();
  }

  /** The time of another tala, in the measure with which it begins. */
  private void turn(Row row, Avartana tala) throws XMLStreamException {
    boolean begins =
        avartana.turns().stream().anyMatch(turn -> Ratio.of(turn.beat()).equals(row.startBeat()));
    if (begins) {
      open("attributes");
      time(tala);
      close();
    }
  }

  private void time(Avartana tala) throws XMLStreamException {
    open("time");
    element("beats", beats(tala));
    element("beat-type", "4");
    close();
  }

  /** The angas as a sum, such as 4+2+2. */
  private static String beats(Avartana avartana) {
    return avartana.tala().angas().stream()
        .map(Anga::aksharas)
        .map(aksharas -> Integer.toString(aksharas * avartana.kalai()))
        .collect(Collectors.joining("+"));
  }

  private void sollus() throws XMLStreamException {
    int next = 0;
    MusicXmlSollus staff = new MusicXmlSollus(xml, divisions);
    for (Row row : sheet.rows()) {
      measure(row);
      attributes(row);
      if (row.number() == 1) {
        tempo();
      }
      int from = next;
      while (next < notes.size() && notes.get(next).beat().compareTo(row.endBeat()) < 0) {
        next++;
      }
      staff.write(row, notes.subList(from, next), words);
      close();
    }
  }

  private void tempo() throws XMLStreamException {
    Ratio tempo = sheet.performance().composition().tempo().beatsPerMinute();
    open("direction");
    xml.writeAttribute("placement", "above");
    open("direction-type");
    open("metronome");
    element("beat-unit", "quarter");
    element("per-minute", tempo.toMixed());
    close();
    close();
    xml.writeEmptyElement("sound");
    xml.writeAttribute("tempo", Double.toString(tempo.toDouble()));
    close();
  }

  private void open(String name) throws XMLStreamException {
    xml.writeCharacters(INDENT);
    xml.writeStartElement(name);
  }

  private void close() throws XMLStreamException {
    xml.writeEndElement();
  }

  private void element(String name, String text) throws XMLStreamException {
    open(name);
    xml.writeCharacters(clean(text));
    close();
  }

  /** A text without what XML cannot hold. */
  static String clean(String text) {
    return text.replaceAll("[\\p{Cc}\\p{Cs}\\ufffe\\uffff]", " ");
  }
}
