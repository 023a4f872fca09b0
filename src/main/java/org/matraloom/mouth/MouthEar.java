package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.recording.HeldRecording;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.voice.PhoneConsonant;
import org.matraloom.voice.PhoneSyllable;

/** What the ear may know of a mouth from its recorded sollus. */
public final class MouthEar {

  private static final int MOST_OF_EACH = 6;
  private static final int GAP_FRAMES = Kit.RATE / 5;
  private static final int LONGEST_FRAMES = Kit.RATE / 2;

  private MouthEar() {}

  /**
   * Listens to the samples of a voice, a few of each sollu; doubtful ones only where there is no
   * other. Sollus that begin with a murmur or a breath are left out: where they are heard to begin
   * in a take depends on what is before them, and so does their colour there.
   *
   * @param kit the voice
   * @param folder where its samples are
   * @param lexicon the phones of the sollus
   * @return what is known of the mouth
   * @throws IOException if a sample cannot be read
   */
  public static KnownSounds of(Kit kit, Path folder, Lexicon lexicon) throws IOException {
    List<KitSample> chosen = new ArrayList<>();
    for (String sollu : kit.sollus()) {
      if (!isReleased(sollu, lexicon)) {
        continue;
      }
      List<KitSample> all = kit.of(sollu);
      List<KitSample> sure = all.stream().filter(each -> each.doubts().isEmpty()).toList();
      (sure.isEmpty() ? all : sure).stream().limit(MOST_OF_EACH).forEach(chosen::add);
    }
    if (chosen.isEmpty()) {
      return KnownSounds.NONE;
    }
    float[] row = new float[chosen.size() * (LONGEST_FRAMES + GAP_FRAMES) + GAP_FRAMES];
    double[] releases = new double[chosen.size()];
    int at = GAP_FRAMES;
    for (int i = 0; i < releases.length; i++) {
      KitSample sample = chosen.get(i);
      float[] sound =
          KitSounds.read(folder.resolve(sample.file()), Kit.RATE, KitShelf.LONGEST_SAMPLE_SECONDS);
      int length = Math.min(sound.length, LONGEST_FRAMES);
      System.arraycopy(sound, 0, row, at, length);
      releases[i] = (double) (at + sample.places().release()) / Kit.RATE;
      at += length + GAP_FRAMES;
    }
    SoundLevels levels =
        OnsetCurve.of(new HeldRecording(Arrays.copyOf(row, at), Kit.RATE)).levels();
    List<KnownSounds.Heard> heard = new ArrayList<>();
    for (int i = 0; i < releases.length; i++) {
      KitSample sample = chosen.get(i);
      SamplePlaces places = sample.places();
      heard.add(
          new KnownSounds.Heard(
              sample.sollu(),
              levels.colour(releases[i]),
              (double) (places.beat() - places.release()) / Kit.RATE));
    }
    return KnownSounds.of(heard);
  }

  private static boolean isReleased(String sollu, Lexicon lexicon) {
    return lexicon
        .sound(new Sollu(sollu, sollu))
        .map(SolluSound::phones)
        .map(PhoneSyllable::of)
        .flatMap(PhoneSyllable::first)
        .map(PhoneConsonant::isReleased)
        .orElse(false);
  }
}
