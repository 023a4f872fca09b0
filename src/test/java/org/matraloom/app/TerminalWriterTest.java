package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** No title, remark or name steers the terminal (ISO 6429; Unicode UAX 9). */
class TerminalWriterTest {

  private static String shown(String text) {
    StringWriter shown = new StringWriter();
    PrintWriter out = new PrintWriter(new TerminalWriter(shown));
    out.print(text);
    out.flush();
    return shown.toString();
  }

  @Test
  void whatSteersATerminalBecomesAnUnknownSign() {
    assertEquals("a\uFFFD]0;pwned\uFFFDb", shown("a\u001B]0;pwned\u0007b"));
    assertEquals("\uFFFD\uFFFD\uFFFDx\uFFFD", shown("\u0000\u007F\u009Bx\b"));
    assertEquals("\uFFFD\uFFFDname\uFFFD", shown("\u202E\u2066name\u2069"));
  }

  @Test
  void whatIsToBeReadStays() {
    String text = "\tta di\r\n\u0BA4\u0BB2 \u0130de \u00E9 \u2018x\u2019 \uD83C\uDF27\u200D \u00A0";
    assertEquals(text, shown(text));
    assertEquals("", shown(""));
  }

  @Test
  void signsAreJudgedOneByOneToo() {
    StringWriter shown = new StringWriter();
    PrintWriter out = new PrintWriter(new TerminalWriter(shown));
    out.write('\u001B');
    out.write('a');
    out.write(new char[] {'b', '\u0085', 'c'}, 1, 2);
    out.flush();
    assertEquals("\uFFFDa\uFFFDc", shown.toString());
  }
}
