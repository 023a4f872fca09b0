package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.voice.SolluWave;
import org.matraloom.voice.VoiceRequest;

/**
 * Says a sample in a given time: the consonant as it was spoken, the vowel and the nasal as long as
 * there is time for.
 */
final class SolluShape {

  private static final double MS = 1000;
  private static final double FADE_IN_SECONDS = 0.002;
  private static final double CLOSING_SECONDS = 0.008;
  private static final double DYING_SHARE = 0.5;
  private static final double RINGING_SHARE = 0.25;
  private static final double LONGEST_DYING_SECONDS = 0.400;

  /** Of a closure and a burst, at least this share of the time is for the closure. */
  private static final double HEARD_SHARE = 0.75;

  private static final double BURST_SECONDS = 0.010;
  private static final double SPLICE_SECONDS = 0.003;
  private static final double INTO_NASAL_SECONDS = 0.030;
  private static final double NASAL_STEADY = 0.7;

  private final DrawnSample sample;
  private final SamplePlaces places;
  private final int ratePerSecond;
  private final VoiceRequest request;

  SolluShape(DrawnSample sample, int ratePerSecond, VoiceRequest request) {
    this.sample = sample;
    this.places = sample.places();
    this.ratePerSecond = ratePerSecond;
    this.request = request;
  }

  /**
   * Says it.
   *
   * @param pitch the pitch against that of the recording, as a factor
   * @param lift how much higher it starts, as a factor
   * @return the sound before it is faded; its lead counts from the vowel onset
   */
  SolluWave say(double pitch, double lift) {
    int lead = Math.min(places.vowel(), heardLeadFrames());
    float[] out = new float[lead + frames(request.endMs() / MS)];
    consonant(out, lead);
    new PitchOverlap(sample, ratePerSecond, pitch, lift).write(out, lead, parts(out.length - lead));
    return new SolluWave(out, lead);
  }

  private int heardLeadFrames() {
    double lead = request.leadMs() / MS;
    boolean voiceless = request.syllable().first().map(each -> each.isVoiceless()).orElse(true);
    return frames(voiceless && !request.syllable().onset().isEmpty() ? HEARD_SHARE * lead : lead);
  }

  /**
   * The last of the consonant; if that would lose its burst, the burst and the last of the rest.
   */
  private void consonant(float[] out, int lead) {
    int sinceRelease = places.vowel() - places.release();
    if (sinceRelease <= lead) {
      System.arraycopy(sample.sound(), places.vowel() - lead, out, 0, lead);
      return;
    }
    int burst = Math.min(frames(BURST_SECONDS), lead / 2);
    int splice = Math.min(frames(SPLICE_SECONDS), burst);
    for (int i = 0; i < lead; i++) {
      double late = splice == 0 ? 1 : FadeShape.at(clip((double) (i - burst + splice) / splice));
      out[i] =
          (float)
              ((1 - late) * sample.at(places.release() + i)
                  + late * sample.at(places.vowel() - lead + i));
    }
  }

  private static double clip(double part) {
    return Math.max(0, Math.min(1, part));
  }

  private List<SoundedPart> parts(int frames) {
    boolean closes = places.nasal().isPresent() && request.syllable().closesIntoNasal();
    return closes ? closed(frames) : open(frames);
  }

  private List<SoundedPart> open(int frames) {
    int opening = places.steadyBegin() - places.vowel();
    int steady = places.steadyEnd() - places.steadyBegin();
    int dying = places.nasal().orElse(places.end()) - places.steadyEnd();
    boolean dies = request.following().isEmpty() && places.nasal().isEmpty();
    int tail = dies && frames >= opening + steady + dying ? dying : 0;
    List<SoundedPart> parts = new ArrayList<>();
    parts.add(new SoundedPart(places.vowel(), places.steadyBegin(), Math.min(opening, frames)));
    parts.add(
        new SoundedPart(
            places.steadyBegin(), places.steadyEnd(), Math.max(0, frames - opening - tail)));
    if (tail > 0) {
      parts.add(new SoundedPart(places.steadyEnd(), places.end(), tail));
    }
    return parts;
  }

  private List<SoundedPart> closed(int frames) {
    int nasal = places.nasal().getAsInt();
    int vowel = Math.min(frames, frames(request.timing().vowelSeconds(request.syllable())));
    int opening = Math.min(places.steadyBegin() - places.vowel(), (int) (0.6 * vowel));
    int closing = Math.min(nasal - places.steadyEnd(), vowel - opening);
    int hum = frames - vowel;
    int humBegin = nasal + Math.min(frames(INTO_NASAL_SECONDS), (places.end() - nasal) / 3);
    int humEnd = nasal + (int) (NASAL_STEADY * (places.end() - nasal));
    int into = Math.min(humBegin - nasal, hum);
    List<SoundedPart> parts = new ArrayList<>();
    parts.add(new SoundedPart(places.vowel(), places.steadyBegin(), opening));
    parts.add(new SoundedPart(places.steadyBegin(), places.steadyEnd(), vowel - opening - closing));
    parts.add(new SoundedPart(nasal - closing, nasal, closing));
    parts.add(new SoundedPart(nasal, humBegin, into));
    parts.add(new SoundedPart(humBegin, Math.max(humBegin + 1, humEnd), hum - into));
    return parts;
  }

  /** Fades where it meets silence or the sollu after it. */
  void fade(float[] out, int lead) {
    double end = request.endMs() / MS;
    double share = request.rings() ? RINGING_SHARE : DYING_SHARE;
    double closing =
        request.following().isPresent()
            ? CLOSING_SECONDS
            : Math.min(LONGEST_DYING_SECONDS, share * end);
    int in = Math.min(cutMurmur(lead), lead);
    int last = frames(Math.min(closing, 0.5 * end));
    for (int i = 0; i < in; i++) {
      out[i] *= (float) FadeShape.at((double) i / in);
    }
    for (int i = 0; i < last; i++) {
      out[out.length - 1 - i] *= (float) FadeShape.at((double) i / last);
    }
  }

  /**
   * A murmur that is cut short is faded in until the mouth opens, or it would be heard as the
   * vowel.
   */
  private int cutMurmur(int lead) {
    int murmur = lead - (places.vowel() - places.release());
    return lead < places.vowel() && murmur > 0 && !request.syllable().onset().isEmpty()
        ? Math.max(murmur, frames(FADE_IN_SECONDS))
        : Math.min(frames(FADE_IN_SECONDS), lead / 2);
  }

  private int frames(double seconds) {
    return (int) Math.round(seconds * ratePerSecond);
  }
}
