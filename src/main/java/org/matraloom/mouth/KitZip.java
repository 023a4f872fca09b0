package org.matraloom.mouth;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A voice as one file to hand on: its text, which names owner and terms, and its samples. */
public final class KitZip {

  private static final int MOST_FILES = 5_000;
  private static final long MOST_BYTES = 1_000_000_000;
  private static final int BLOCK = 65_536;

  private KitZip() {}

  /**
   * Whether a file is a zip file, by its first bytes.
   *
   * @param file the file
   * @return true if it begins like one
   * @throws IOException if it cannot be read
   */
  public static boolean isZip(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] head = in.readNBytes(4);
      return head.length == 4 && head[0] == 'P' && head[1] == 'K' && head[2] == 3 && head[3] == 4;
    }
  }

  /**
   * Writes a voice.
   *
   * @param kit the voice
   * @param folder where its samples are
   * @param out where it goes; it is closed by others
   * @throws IOException if a sample cannot be read or the disk fails
   */
  public static void write(Kit kit, Path folder, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    put(zip, KitText.FILE, KitText.of(kit).getBytes(StandardCharsets.UTF_8));
    for (KitSample sample : kit.samples()) {
      put(zip, sample.file(), Files.readAllBytes(folder.resolve(sample.file())));
    }
    zip.finish();
  }

  private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }

  /**
   * Reads a voice that was handed on.
   *
   * @param file the zip file
   * @param name what it is to be called here
   * @return the voice, with its owner, terms and consent as they were
   * @throws KitException if it holds no voice, or a voice with faults
   * @throws IOException if it cannot be read
   */
  public static KitDraft read(Path file, String name) throws IOException {
    Path folder = Files.createTempDirectory("matraloom-voice");
    try {
      unpack(file, folder);
      if (!Files.exists(folder.resolve(KitText.FILE))) {
        throw new KitException(file + " holds no voice: there is no " + KitText.FILE + " in it");
      }
      Kit kit = read(file, folder);
      KitHead head = kit.head();
      Map<String, float[]> sounds = new LinkedHashMap<>();
      for (KitSample sample : kit.samples()) {
        Path sound = folder.resolve(sample.file());
        if (!Files.exists(sound)) {
          throw new KitException(file + " lacks " + sample.file() + ", which its text names");
        }
        sounds.put(sample.file(), KitSounds.read(sound, Kit.RATE, KitShelf.LONGEST_SAMPLE_SECONDS));
      }
      KitHead here = new KitHead(name, head.owner(), head.terms(), head.consent());
      return new KitDraft(new Kit(here, kit.samples()), sounds, List.of());
    } finally {
      try (Stream<Path> inside = Files.walk(folder)) {
        for (Path each : inside.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  private static Kit read(Path file, Path folder) throws IOException {
    try {
      return KitShelf.read(folder);
    } catch (KitException faulty) {
      String inside = folder.resolve(KitText.FILE).toString();
      throw new KitException(faulty.getMessage().replace(inside, file + ", " + KitText.FILE));
    }
  }

  /** Takes out what a voice may hold, and nothing with a folder in its name. */
  private static void unpack(Path file, Path folder) throws IOException {
    long bytes = 0;
    int files = 0;
    byte[] block = new byte[BLOCK];
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName();
        if (!name.equals(KitText.FILE) && !KitSample.isFileName(name)) {
          throw new KitException(file + " holds \"" + name + "\", which is no part of a voice");
        }
        try (OutputStream out = Files.newOutputStream(folder.resolve(name))) {
          for (int count = zip.read(block); count > 0; count = zip.read(block)) {
            bytes += count;
            out.write(block, 0, count);
            if (bytes > MOST_BYTES) {
              throw new KitException(file + " holds more than 1 GB; that is no voice");
            }
          }
        }
        if (++files > MOST_FILES) {
          throw new KitException(file + " holds more than 5000 files; that is no voice");
        }
      }
    } catch (ZipException damaged) {
      throw new KitException(file + " is a damaged zip file: " + damaged.getMessage());
    }
  }
}
