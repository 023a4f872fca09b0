package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Voices are kept whole, read back as they were, and refused with a place and a reason. */
class KitShelfTest {

  @TempDir private Path folder;

  private KitShelf shelf() {
    return new KitShelf(folder.resolve("voices"));
  }

  private Path text() {
    return folder.resolve("voices/river/voice.txt");
  }

  @Test
  void aVoiceIsReadBackAsItWasKept() throws IOException {
    KitDraft draft = MadeMouth.draft(folder);
    shelf().put(draft);
    Kit kept = shelf().open("river");
    assertEquals(draft.kit().head(), kept.head());
    assertEquals(draft.kit().samples().size(), kept.samples().size());
    for (int i = 0; i < kept.samples().size(); i++) {
      KitSample before = draft.kit().samples().get(i);
      KitSample after = kept.samples().get(i);
      assertEquals(before.places(), after.places());
      assertEquals(before.after(), after.after());
      assertEquals(before.doubts(), after.doubts());
      assertEquals(before.loudnessLufs(), after.loudnessLufs(), 0.01);
    }
    assertEquals(List.of("river"), shelf().names());
  }

  @Test
  void anotherVoiceOfTheNameTakesItsPlaceAndNothingIsLeftBehind() throws IOException {
    KitDraft draft = MadeMouth.draft(folder);
    shelf().put(draft);
    Kit smaller = new Kit(draft.kit().head(), draft.kit().samples().subList(0, 2));
    shelf().put(new KitDraft(smaller, draft.sounds(), List.of()));
    assertEquals(2, shelf().open("river").samples().size());
    try (Stream<Path> inside = Files.list(folder.resolve("voices"))) {
      assertEquals(1, inside.count());
    }
    shelf().remove("river");
    assertEquals(List.of(), shelf().names());
    assertFalse(Files.exists(folder.resolve("voices/river")));
  }

  @Test
  void aVoiceThatStoodAsideWhenTheProgramWasEndedIsPutBack() throws IOException {
    shelf().put(MadeMouth.draft(folder));
    Path old = folder.resolve("voices/.old.17");
    Files.createDirectory(old);
    Files.move(folder.resolve("voices/river"), old.resolve("river"));
    assertEquals(List.of("river"), shelf().names());
    assertFalse(shelf().open("river").samples().isEmpty());
    assertFalse(Files.exists(old));
  }

  @Test
  void aVoiceThatWasReplacedDoesNotComeBack() throws IOException {
    shelf().put(MadeMouth.draft(folder));
    Path aside = folder.resolve("voices/.old.17/river");
    Files.createDirectories(aside);
    Files.writeString(aside.resolve("voice.txt"), "the voice before");
    assertTrue(shelf().has("river"));
    assertFalse(Files.readString(text()).startsWith("the voice before"));
    shelf().remove("river");
    assertFalse(shelf().has("river"));
    assertEquals(List.of(), shelf().names());
  }

  @Test
  void partsThatWereForsakenAreRemovedAndFreshOnesAreNot() throws IOException {
    Path forsaken = folder.resolve("voices/.river.17");
    Path fresh = folder.resolve("voices/.river.18");
    Files.createDirectories(forsaken);
    Files.createDirectories(fresh);
    Files.writeString(forsaken.resolve("ta.wav"), "half");
    Files.setLastModifiedTime(forsaken, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
    shelf().put(MadeMouth.draft(folder));
    assertFalse(Files.exists(forsaken));
    assertTrue(Files.exists(fresh));
  }

  /** A shelf may be any folder, such as one's own with all that programs hide in it. */
  @Test
  void whatOthersHideInAFolderIsLeftAlone() throws IOException {
    Path voices = Files.createDirectories(folder.resolve("voices"));
    FileTime past = FileTime.from(Instant.now().minus(Duration.ofDays(40)));
    List<Path> others = List.of(voices.resolve(".ssh"), voices.resolve(".cache.2024"));
    for (Path each : others) {
      Files.createDirectory(each);
      Files.writeString(each.resolve("key"), "kept");
      Files.setLastModifiedTime(each, past);
    }
    Path forsaken = Files.createDirectory(voices.resolve(".river.17"));
    Files.setLastModifiedTime(forsaken, past);
    assertFalse(shelf().has("river"));
    assertEquals(List.of(), shelf().names());
    assertTrue(Files.exists(forsaken), "who only looks removes nothing");
    shelf().put(MadeMouth.draft(folder));
    for (Path each : others) {
      assertEquals("kept", Files.readString(each.resolve("key")));
    }
    assertFalse(Files.exists(forsaken));
  }

  @Test
  void marksThatWereTakenOutAreFoundAnew() throws IOException {
    shelf().put(MadeMouth.draft(folder));
    Kit before = shelf().open("river");
    List<String> lines = Files.readAllLines(text());
    Files.write(text(), lines.stream().filter(line -> !line.startsWith("  marks")).toList());
    Kit after = shelf().open("river");
    assertEquals(before.samples().size(), after.samples().size());
    for (int i = 0; i < after.samples().size(); i++) {
      assertEquals(before.samples().get(i).pitchHz(), after.samples().get(i).pitchHz(), 3);
    }
  }

  @Test
  void aFaultIsToldWithItsLine() throws IOException {
    shelf().put(MadeMouth.draft(folder));
    String good = Files.readString(text());
    assertFault(good.replaceFirst("  vowel ", "  vowl "), "\"vowl\" is not known here");
    assertFault(good.replaceFirst("  end [0-9.]+", "  end soon"), "given \"soon\"");
    assertFault(good.replaceFirst("  end [0-9.]+\n", ""), "has no \"end\"");
    assertFault(good.replaceFirst("  end [0-9.]+", "  end 0.001"), "the beat is not between");
    assertFault(good.replaceFirst("  file .*", "  file ../secret.wav"), "is no name of a sample");
    assertFault(good.replaceFirst("name river", "name Two Rivers"), "cannot be the name");
    assertFault("name river\n", "no sollu is here");
  }

  private void assertFault(String text, String expected) throws IOException {
    Files.writeString(text(), text);
    KitException fault = assertThrows(KitException.class, () -> shelf().open("river"));
    assertTrue(fault.getMessage().contains(expected), fault.getMessage());
    assertTrue(fault.getMessage().matches("(?s).*voice\\.txt, line \\d+: .*"), fault.getMessage());
  }

  @Test
  void namesOfTheProgramsOwnVoicesAreNotTaken() {
    for (String name : List.of("low", "high", "../x", "", "Mira", "a b")) {
      assertThrows(IllegalArgumentException.class, () -> KitHead.requireName(name), name);
    }
  }

  @Test
  void aSharedVoiceCarriesOwnerAndTerms() throws IOException {
    KitDraft draft = MadeMouth.draft(folder);
    shelf().put(draft);
    Path zip = folder.resolve("river.zip");
    try (OutputStream out = Files.newOutputStream(zip)) {
      KitZip.write(shelf().open("river"), shelf().folderOf("river"), out);
    }
    assertTrue(KitZip.isZip(zip));
    KitDraft read = KitZip.read(zip, "delta");
    assertEquals("delta", read.kit().head().name());
    assertEquals("Mira of the Delta", read.kit().head().owner());
    assertEquals("for the class", read.kit().head().terms());
    String first = draft.kit().samples().get(0).file();
    assertArrayEquals(draft.sounds().get(first), read.sounds().get(first), 1e-6f);
  }

  @Test
  void aZipFileThatIsNoVoiceIsRefused() throws IOException {
    Path zip = folder.resolve("other.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      out.putNextEntry(new ZipEntry("../escaped.wav"));
      out.write(1);
    }
    KitException refused = assertThrows(KitException.class, () -> KitZip.read(zip, "delta"));
    assertTrue(refused.getMessage().contains("no part of a voice"), refused.getMessage());
    assertFalse(Files.exists(folder.getParent().resolve("escaped.wav")));
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      out.putNextEntry(new ZipEntry("ta-1.wav"));
      out.write(1);
    }
    refused = assertThrows(KitException.class, () -> KitZip.read(zip, "delta"));
    assertTrue(refused.getMessage().contains("there is no voice.txt"), refused.getMessage());
  }
}
