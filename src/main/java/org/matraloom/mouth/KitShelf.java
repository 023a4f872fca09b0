package org.matraloom.mouth;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.matraloom.wav.WholeText;

/** The folder in which the user's voices are, each in a folder of its name. */
public final class KitShelf {

  /** Longer than any sollu that is drawn out by hand. */
  static final int LONGEST_SAMPLE_SECONDS = 60;

  private static final int MOST_TEXT_BYTES = 8_000_000;

  private final Path folder;
  private final AsideVoices aside;

  /**
   * A shelf.
   *
   * @param folder where the voices are; it need not exist yet
   */
  public KitShelf(Path folder) {
    this.folder = folder;
    this.aside = new AsideVoices(folder);
  }

  /**
   * The voices that are here.
   *
   * @return their names, in order
   * @throws IOException if the folder cannot be read
   */
  public List<String> names() throws IOException {
    aside.settle();
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside
          .filter(each -> Files.isRegularFile(each.resolve(KitText.FILE)))
          .map(each -> each.getFileName().toString())
          .filter(name -> !name.startsWith("."))
          .sorted()
          .toList();
    }
  }

  /**
   * Where a voice is or would be.
   *
   * @param name its name
   * @return the folder
   * @throws IllegalArgumentException if it cannot be a name
   */
  public Path folderOf(String name) {
    KitHead.requireName(name);
    return folder.resolve(name);
  }

  /**
   * Whether a voice is here.
   *
   * @param name its name
   * @return true if it is
   * @throws IllegalArgumentException if it cannot be a name
   */
  public boolean has(String name) {
    Path text = folderOf(name).resolve(KitText.FILE);
    if (!Files.isRegularFile(text)) {
      aside.settle();
    }
    return Files.isRegularFile(text);
  }

  /**
   * Reads a voice; its samples are read when they are needed.
   *
   * @param name its name
   * @return the voice
   * @throws KitException if it is not here, or its text is wrong
   * @throws IOException if it cannot be read
   */
  public Kit open(String name) throws IOException {
    requireHere(name);
    Kit kit = read(folderOf(name));
    for (KitSample sample : kit.samples()) {
      Path file = folderOf(name).resolve(sample.file());
      if (!Files.isRegularFile(file)) {
        throw new KitException(
            file + " is not there, but voice.txt names it; delete its lines or bring it back");
      }
    }
    return kit;
  }

  private void requireHere(String name) throws IOException {
    if (!has(name)) {
      List<String> here = names();
      throw new KitException(
          "there is no voice "
              + name
              + "; "
              + (here.isEmpty()
                  ? "none has been made yet: see matraloom voice make --help"
                  : "there are " + String.join(", ", here)));
    }
  }

  /** Reads the voice in a folder. */
  static Kit read(Path place) throws IOException {
    Path file = place.resolve(KitText.FILE);
    if (Files.size(file) > MOST_TEXT_BYTES) {
      throw new KitException(file + " has more than 8 MB; that is no text of a voice");
    }
    String text;
    try {
      text = Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException other) {
      throw new KitException(file + " is no text in UTF-8; save it so");
    }
    return KitReader.read(text, file.toString(), sample -> found(place, sample));
  }

  private static List<Integer> found(Path place, String sample) throws KitException {
    Path file = place.resolve(sample);
    try {
      float[] sound = KitSounds.read(file, Kit.RATE, LONGEST_SAMPLE_SECONDS);
      return PitchMarks.of(sound, 0, sound.length, PitchMarks.usualPeriod(sound));
    } catch (IOException unreadable) {
      throw new KitException(file + " cannot be read: " + unreadable.getMessage());
    }
  }

  /**
   * Keeps a voice, in place of one of that name; it is there whole or not at all.
   *
   * @param draft the voice
   * @throws IOException if it cannot be written; what was there before stays
   */
  public void put(KitDraft draft) throws IOException {
    Path target = folderOf(draft.kit().head().name());
    Files.createDirectories(folder);
    aside.settle();
    aside.clear();
    Path part = Files.createTempDirectory(folder, "." + target.getFileName() + ".");
    try {
      for (Map.Entry<String, float[]> sound : draft.sounds().entrySet()) {
        KitSounds.write(part.resolve(sound.getKey()), sound.getValue());
      }
      WholeText.put(part.resolve(KitText.FILE), KitText.of(draft.kit()));
      aside.swap(part, target);
    } finally {
      AsideVoices.delete(part);
    }
  }

  /**
   * Removes a voice and all its samples.
   *
   * @param name its name
   * @throws KitException if it is not here
   * @throws IOException if a file cannot be removed
   */
  public void remove(String name) throws IOException {
    requireHere(name);
    AsideVoices.delete(folderOf(name));
    aside.forget(name);
  }
}
