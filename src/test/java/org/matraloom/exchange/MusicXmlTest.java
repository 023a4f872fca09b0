package org.matraloom.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.RandomScores;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.sheet.Sheets;
import org.matraloom.time.Ratio;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.w3c.dom.ls.LSInput;
import org.w3c.dom.ls.LSResourceResolver;
import org.xml.sax.SAXException;

/**
 * MusicXML against the W3C schema of MusicXML 4.0, as the package org.audiveris:proxymusic carries
 * it, and against what that copy does not check: every note has a duration, and a measure adds up.
 */
class MusicXmlTest {

  private final Schema schema = schema();

  @Test
  void everySampleIsValidAndItsMeasuresAddUp() throws Exception {
    int measures = 0;
    for (Path sample : Sheets.samples()) {
      measures += check(Sheets.read(sample));
    }
    assertTrue(measures > 60, "measures were added up: " + measures);
  }

  @Test
  void scoresOfEveryKindAreValidToo() throws Exception {
    RandomScores scores = new RandomScores(31);
    for (int count = 0; count < 60; count++) {
      check(scores.composition());
    }
  }

  @Test
  void theSchemaRefusesWhatIsWrong() {
    String wrong = "<score-partwise version=\"4.0\"><part-list/></score-partwise>";
    assertThrows(
        SAXException.class,
        () -> schema.newValidator().validate(new StreamSource(new StringReader(wrong))));
  }

  @Test
  void aQuintupletIsFiveInTheTimeOfFour() throws Exception {
    Composition five =
        Sheets.score(
            "tala adi\ntempo 60\nA = tadiginatom ta , digi , takadimi\nperform\nA nadai 5\n");
    Document document = parse(bytes(five));
    NodeList notes = document.getElementsByTagName("note");
    Element first = (Element) notes.item(0);
    assertEquals("1", text(first, "duration"));
    assertEquals("5", text(document.getDocumentElement(), "divisions"));
    assertEquals("16th", text(first, "type"));
    assertEquals("5", text(first, "actual-notes"));
    assertEquals("4", text(first, "normal-notes"));
    assertEquals("ta", text(first, "text"));
    Element held = (Element) notes.item(5);
    assertEquals("2", text(held, "duration"));
    assertEquals("eighth", text(held, "type"));
  }

  /** Durations with 1260 divisions a beat: 420, 252, 180, 140 for 3, 5, 7 and 9 in a beat. */
  @Test
  void everyNadaiDividesTheBeatExactly() throws Exception {
    int[][] nadais = {{3, 2}, {5, 4}, {7, 4}, {9, 8}, {6, 2}, {4, 1}};
    String[] types = {"eighth", "16th", "16th", "32nd", "16th", "16th"};
    int[] actual = {3, 5, 7, 9, 3, 1};
    for (int index = 0; index < nadais.length; index++) {
      List<NoteValue> values = NoteValue.of(Ratio.of(1, nadais[index][0]), nadais[index][0]);
      assertEquals(1, values.size());
      assertEquals(types[index], values.get(0).type());
      assertEquals(actual[index], values.get(0).actual());
      assertEquals(nadais[index][1], values.get(0).normal());
    }
  }

  private int check(Composition composition) throws Exception {
    byte[] file = bytes(composition);
    schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(file)));
    Document document = parse(file);
    long divisions = Long.parseLong(text(document.getDocumentElement(), "divisions"));
    long beats = composition.avartana().beats();
    NodeList measures = document.getElementsByTagName("measure");
    for (int index = 0; index < measures.getLength(); index++) {
      long sum = 0;
      NodeList notes = ((Element) measures.item(index)).getElementsByTagName("note");
      for (int note = 0; note < notes.getLength(); note++) {
        sum += Long.parseLong(text((Element) notes.item(note), "duration"));
      }
      assertEquals(beats * divisions, sum, "measure " + (index + 1));
    }
    assertEquals(lyrics(composition), lyrics(document));
    return measures.getLength();
  }

  private static List<String> lyrics(Composition composition) {
    List<String> lyrics = new ArrayList<>();
    for (Event event : ScoreTimeline.of(Performance.of(composition), 0)) {
      if (event instanceof Event.SolluSaid said) {
        lyrics.add(said.sollu().spelling());
      }
    }
    return lyrics;
  }

  private static List<String> lyrics(Document document) {
    List<String> lyrics = new ArrayList<>();
    Element sollus = (Element) document.getElementsByTagName("part").item(0);
    NodeList all = sollus.getElementsByTagName("lyric");
    for (int index = 0; index < all.getLength(); index++) {
      lyrics.add(text((Element) all.item(index), "text"));
    }
    return lyrics;
  }

  private static byte[] bytes(Composition composition) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MusicXml.write(Sheets.plain(composition), out);
    return out.toByteArray();
  }

  private static Document parse(byte[] file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(file));
  }

  private static String text(Element parent, String name) {
    return parent.getElementsByTagName(name).item(0).getTextContent();
  }

  private static Schema schema() {
    try {
      SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
      factory.setResourceResolver(new Stubs());
      return factory.newSchema(
          new StreamSource(
              MusicXmlTest.class.getResourceAsStream("/META-INF/jaxb/xsd/musicxml.xsd")));
    } catch (SAXException e) {
      throw new IllegalStateException("the MusicXML schema of the test cannot be read", e);
    }
  }

  /** Stands in for the two schemas that the MusicXML schema imports from the network. */
  private static final class Stubs implements LSResourceResolver {

    private static final String HEAD =
        "<xs:schema xmlns:xs=\"http://www.w3.org/2001/XMLSchema\" targetNamespace=\"";

    private static final String XML =
        HEAD
            + "http://www.w3.org/XML/1998/namespace\">"
            + "<xs:attribute name=\"lang\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"space\" type=\"xs:string\"/></xs:schema>";

    private static final String XLINK =
        HEAD
            + "http://www.w3.org/1999/xlink\">"
            + "<xs:attribute name=\"href\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"type\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"role\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"title\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"show\" type=\"xs:string\"/>"
            + "<xs:attribute name=\"actuate\" type=\"xs:string\"/></xs:schema>";

    @Override
    public LSInput resolveResource(
        String type, String namespace, String publicId, String systemId, String base) {
      return new TextInput(String.valueOf(namespace).contains("xlink") ? XLINK : XML, systemId);
    }
  }

  private static final class TextInput implements LSInput {
    private final String text;
    private final String systemId;

    TextInput(String text, String systemId) {
      this.text = text;
      this.systemId = systemId;
    }

    @Override
    public Reader getCharacterStream() {
      return new StringReader(text);
    }

    @Override
    public InputStream getByteStream() {
      return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String getStringData() {
      return text;
    }

    @Override
    public String getSystemId() {
      return systemId;
    }

    @Override
    public String getPublicId() {
      return "";
    }

    @Override
    public String getBaseURI() {
      return "";
    }

    @Override
    public String getEncoding() {
      return "UTF-8";
    }

    @Override
    public boolean getCertifiedText() {
      return false;
    }

    @Override
    public void setCharacterStream(Reader reader) {}

    @Override
    public void setByteStream(InputStream stream) {}

    @Override
    public void setStringData(String data) {}

    @Override
    public void setSystemId(String id) {}

    @Override
    public void setPublicId(String id) {}

    @Override
    public void setBaseURI(String uri) {}

    @Override
    public void setEncoding(String encoding) {}

    @Override
    public void setCertifiedText(boolean certified) {}
  }
}
