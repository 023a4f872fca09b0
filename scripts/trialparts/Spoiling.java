import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Spoils the bytes of a file, one to four times; texts also word by word, an archive also what is in it. */
class Spoiling {

  private static final Set<String> TEXTS = Set.of("loom", "jsonl", "lexicon", "class", "cue", "paste", "strokes");
  private static final int[] ODD = {0, 1, -1, 0x7FFFFFFF, 0x80000000, 0x0FFFFFFF, 0xFFFF, 0x10000, 255, 8};
  private static final String[] NUMBERS = {
    "0", "1", "2", "3", "5", "7", "9", "12", "16", "99", "1000", "-1", "0.5", "1/3", "1e9", "2147483648", "9".repeat(30)
  };
  private static final String[] WORDS = {
    "x999", "nadai 0", "tempo 1e9", "{5:", "}", "((((", "[", "]", "||", ";;;;", "99(99)99", "perform", "tala 3+2+2",
    "stroke", "\u0000", "\u202e", "\ud83d", "start 1/0", "kalai 2", "A = A", "x-1", "eduppu -1", "\n", "x3", "nadai 7",
    "{3:", "(2)", ",", "5*3", "[{last: ", "tom", "takadimi", "tala khanda triputa", "null", "\"", "1e999", "=1+1"
  };

  private final Random random;
  private final String kind;

  Spoiling(Random random, String kind) {
    this.random = random;
    this.kind = kind;
  }

  byte[] of(byte[] whole) throws IOException {
    if (kind.equals("zip") && random.nextInt(4) > 0) {
      return inside(whole);
    }
    return spoilt(whole, TEXTS.contains(kind));
  }

  private byte[] spoilt(byte[] whole, boolean isText) {
    byte[] bytes = whole;
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      bytes = isText && random.nextBoolean() ? reworded(bytes) : damaged(bytes);
    }
    return bytes;
  }

  private byte[] damaged(byte[] bytes) {
    int at = random.nextInt(Math.max(1, bytes.length));
    // Heads and indices lie at the ends.
    at = random.nextInt(3) == 0 ? Math.min(at, random.nextInt(256)) : at;
    int to = Math.min(bytes.length, at + 1 + random.nextInt(64));
    byte[] changed = bytes.clone();
    switch (random.nextInt(6)) {
      case 0 -> {
        if (changed.length > 0) {
          changed[at] ^= (byte) (1 << random.nextInt(8));
        }
      }
      case 1 -> changed = Arrays.copyOf(bytes, at);
      case 2 -> changed = joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, to, bytes.length));
      case 3 -> changed = joined(Arrays.copyOf(bytes, to), Arrays.copyOfRange(bytes, at, bytes.length));
      case 4 -> {
        if (changed.length >= at + 4) {
          ByteBuffer.wrap(changed).putInt(at, ODD[random.nextInt(ODD.length)]);
        }
      }
      default -> {
        for (int i = at; i < to; i++) {
          changed[i] = (byte) random.nextInt();
        }
      }
    }
    return changed;
  }

  /** A word is put in, taken out, doubled, or swapped with another; a number becomes another. */
  private byte[] reworded(byte[] bytes) {
    String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
    String[] words = text.split("(?<=\\s)|(?=\\s)");
    int at = random.nextInt(words.length);
    int other = random.nextInt(words.length);
    switch (random.nextInt(6)) {
      case 0 -> words[at] = " " + coded(WORDS[random.nextInt(WORDS.length)]) + " ";
      case 1 -> words[at] = "";
      case 2 -> words[at] = words[at] + " " + words[at];
      case 3 -> {
        String kept = words[at];
        words[at] = words[other];
        words[other] = kept;
      }
      case 4 -> words[at] = words[at] + " " + words[other];
      default -> {
        for (int tried = 0; tried < words.length && !words[at].matches(".*[0-9].*"); tried++) {
          at = (at + 1) % words.length;
        }
        words[at] = words[at].replaceFirst("[0-9]+", NUMBERS[random.nextInt(NUMBERS.length)]);
      }
    }
    return String.join("", words).getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
  }

  private static String coded(String word) {
    return new String(word.getBytes(java.nio.charset.StandardCharsets.UTF_8), java.nio.charset.StandardCharsets.ISO_8859_1);
  }

  /** One entry spoilt, left out, or under another name; the archive itself stays whole. */
  private byte[] inside(byte[] whole) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(whole))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        entries.put(entry.getName(), zip.readAllBytes());
      }
    }
    String[] names = entries.keySet().toArray(String[]::new);
    // The text is what has most to say.
    String name = names[random.nextInt(3) == 0 ? random.nextInt(names.length) : 0];
    byte[] old = entries.get(name);
    switch (random.nextInt(8)) {
      case 0 -> entries.remove(name);
      case 1 -> entries.put("../" + name, entries.remove(name));
      default -> entries.put(name, spoilt(old, name.endsWith(".txt")));
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> each : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(each.getValue());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }
}
