package org.matraloom.notation;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.score.Lexicon;

/** Reads a written score. Whatever the text is, the answer is a reading and never an exception. */
public final class ScoreReader {

  private static final int MOST_BYTES = 1_000_000;
  private static final String TOO_LARGE = "a score has at most 1 MB (1,000,000 bytes)";
  private static final String ENDING = ".loom";
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private ScoreReader() {}

  /**
   * Reads a score from a file; no more than the allowed size is ever read.
   *
   * @param file a UTF-8 text
   * @param lexicon the sollus to know
   * @return the composition, or all problems
   */
  public static Reading read(Path file, Lexicon lexicon) {
    Problems problems = new Problems(file.toString());
    Optional<PieceShelf> shelf = shelf(file, lexicon);
    Optional<String> text = text(file, problems);
    return text.isPresent()
        ? parsed(text.get(), problems, lexicon, shelf)
        : new Reading(Optional.empty(), problems.inOrder());
  }

  private static Optional<PieceShelf> shelf(Path file, Lexicon lexicon) {
    return PieceShelf.of(file, new PieceReader(lexicon));
  }

  /** Reads the scores that a score uses. */
  private record PieceReader(Lexicon lexicon) implements PieceShelf.PieceReading {

    @Override
    public Optional<PieceShelf.Piece> of(Path file, PieceShelf shelf, Problems problems) {
      Optional<String> text = text(file, problems);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      ScoreParser parser = new ScoreParser(lexicon, problems, Optional.of(shelf));
      takeLines(text.get(), parser);
      return parser.finish().map(piece -> new PieceShelf.Piece(piece, parser.namesTempo()));
    }
  }

  /** The text of a file; why there is none is told. */
  private static Optional<String> text(Path file, Problems problems) {
    if (Files.exists(file) && isPipe(file)) {
      return refused(problems, "this is a pipe or a device, not a file", "name a score");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (NoSuchFileException e) {
      return refused(problems, "there is no such file", whereItIs(file));
    } catch (AccessDeniedException e) {
      return refused(problems, "the file may not be read", "check its permissions");
    } catch (IOException e) {
      boolean folder = Files.isDirectory(file);
      return refused(
          problems,
          folder ? "this is a folder" : "the file cannot be read",
          folder ? "name a score inside it" : "check the disk");
    }
    if (bytes.length > MOST_BYTES) {
      return refused(problems, TOO_LARGE, "split it into several scores");
    }
    return decoded(bytes, problems);
  }

  /** A named pipe, which may never end; what the shell opens, as for {@code /dev/stdin}, does. */
  private static boolean isPipe(Path file) {
    return !Files.isRegularFile(file) && !Files.isDirectory(file) && !file.startsWith("/dev");
  }

  /**
   * Reads a score from a text.
   *
   * @param text the score
   * @param fileName its name, for messages
   * @param lexicon the sollus to know
   * @return the composition, or all problems
   */
  public static Reading read(String text, String fileName, Lexicon lexicon) {
    Problems problems = new Problems(fileName);
    if (text.length() > MOST_BYTES || text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      refused(problems, TOO_LARGE, "split it into several scores");
      return new Reading(Optional.empty(), problems.inOrder());
    }
    return parsed(text, problems, lexicon, Optional.empty());
  }

  /**
   * A text with all that it leaves out: the names and the tala of a piece that is nothing but lines
   * of sollus.
   *
   * <p>A score that uses others or fills in is written out.
   *
   * @param text a score
   * @param file where it is, for the scores that it uses; none if it is in no file
   * @param lexicon the sollus to know
   * @return a score that says the same; the text itself if it leaves nothing out
   */
  static String inFull(String text, Optional<Path> file, Lexicon lexicon) {
    Optional<PieceShelf> shelf = file.flatMap(path -> shelf(path, lexicon));
    ScoreParser parser = new ScoreParser(lexicon, new Problems(""), shelf);
    takeLines(text, parser);
    return parser.inFull(text);
  }

  private static Optional<String> decoded(byte[] bytes, Problems problems) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (!result.isError()) {
      return Optional.of(text);
    }
    int lineStart = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1;
    int number = (int) text.chars().filter(letter -> letter == '\n').count() + 1;
    SourceLine line = new SourceLine(number, text.substring(lineStart) + "\ufffd");
    int at = line.text().length() - 1;
    problems.error(
        line,
        at,
        at + 1,
        String.format("the file is not UTF-8 text: byte %02x", bytes[in.position()]),
        () -> Optional.of("save it as UTF-8 in the editor"));
    return Optional.empty();
  }

  private static Reading parsed(
      String text, Problems problems, Lexicon lexicon, Optional<PieceShelf> shelf) {
    ScoreParser parser = new ScoreParser(lexicon, problems, shelf);
    takeLines(text, parser);
    return new Reading(parser.finish(), problems.inOrder());
  }

  private static void takeLines(String text, ScoreParser parser) {
    int number = 1;
    int start = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
    while (start <= text.length()) {
      int end = lineEnd(text, start);
      parser.take(new SourceLine(number, text.substring(start, end)));
      boolean pair = end + 1 < text.length() && text.startsWith("\r\n", end);
      start = end + (pair ? 2 : 1);
      number++;
    }
  }

  private static int lineEnd(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private static String whereItIs(Path file) {
    Path name = file.getFileName();
    boolean forgotten = name != null && Files.exists(file.resolveSibling(name + ENDING));
    return forgotten ? "there is a " + name + ENDING : "check the name and the folder";
  }

  private static Optional<String> refused(Problems problems, String message, String help) {
    problems.error(message, Optional.of(help));
    return Optional.empty();
  }
}
