package org.matraloom.mouth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.loudness.StretchLoudness;
import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.PhoneSyllable;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;
import org.matraloom.voice.SpokenTicks;
import org.matraloom.voice.VoiceAccent;
import org.matraloom.voice.VoiceCache;
import org.matraloom.voice.VoicePerson;
import org.matraloom.voice.VoiceRequest;
import org.matraloom.voice.VoiceRequests;
import org.matraloom.voice.VoiceSettings;

/**
 * Speaks with recorded sollus, each exactly as long as its matras.
 *
 * <p>Places and times are those of every voice ({@link VoiceRequests}); where the recording has a
 * sollu after the same one, that sample is taken, else the samples take turns by their places. What
 * was not recorded is said by the nearest recorded sollu or, if none is near, by the synthesiser.
 * One voice serves one rendering at a time.
 */
public final class OwnVoice implements SolluVoice {

  /** About 16 MB of sounds. */
  private static final long MOST_SAMPLES = 4_000_000;

  private static final double LOUDNESS_SECONDS = 0.100;
  private static final double PEAK = 0.99;

  /** No sample may make all others softer than this, against the usual one; it is softer itself. */
  private static final double MOST_ROOM_DB = 6;

  /** Two cents: takes of one sample differ by less than is heard as another pitch. */
  private static final double TAKE_PITCH = 0.001;

  private static final double TAKE_DB = 0.3;
  private static final double HIGH_VOICE_HZ = 160;

  private record Saying(int sample, VoiceRequest request) {}

  private final int ratePerSecond;
  private final Path folder;
  private final Kit kit;
  private final VoiceSettings settings;
  private final KitChoice choice;
  private final VoiceRequests requests;
  private final FormantVoice standIn;
  private final Optional<SpokenTicks> ticks;
  private final VoiceCache<Saying> sounds;
  private final Map<Integer, DrawnSample> drawn = new HashMap<>();
  private final Map<String, String> instead = new TreeMap<>();
  private final double targetLufs;

  /**
   * A voice for one rate.
   *
   * @param ratePerSecond frames a second, 16000 or more
   * @param lexicon where the phones of a sollu are found
   * @param settings how the sollus are said; who speaks is not asked
   * @param kit the recorded voice
   * @param folder where its samples are
   * @param spokenTicks whether the synthesiser says the subdivision words in place of the ticks
   */
  public OwnVoice(
      int ratePerSecond,
      Lexicon lexicon,
      VoiceSettings settings,
      Kit kit,
      Path folder,
      boolean spokenTicks) {
    this.ratePerSecond = ratePerSecond;
    this.folder = folder;
    this.kit = kit;
    this.settings = settings.with(like(kit));
    this.choice = new KitChoice(kit, lexicon);
    this.requests = new VoiceRequests(ratePerSecond, lexicon, settings, this::consonantSeconds);
    this.standIn = new FormantVoice(ratePerSecond, lexicon, this.settings.withAccents(0));
    this.ticks =
        spokenTicks
            ? FormantVoice.withSpokenTicks(ratePerSecond, lexicon, this.settings).ticks()
            : Optional.empty();
    this.sounds = new VoiceCache<>(this::shaped, MOST_SAMPLES);
    double[] room =
        kit.samples().stream()
            .mapToDouble(sample -> sample.loudnessLufs() - sample.peakDb())
            .sorted()
            .toArray();
    this.targetLufs = Math.max(room[0], room[room.length / 2] - MOST_ROOM_DB);
  }

  /** The synthesised person who is most like a recorded voice. */
  private static VoicePerson like(Kit kit) {
    return kit.pitchHz() > HIGH_VOICE_HZ ? VoicePerson.HIGH : VoicePerson.LOW;
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int longestLeadFrames() {
    return requests.longestLeadFrames();
  }

  @Override
  public Optional<SpokenTicks> ticks() {
    return ticks;
  }

  /**
   * The synthesised person who is most like this voice.
   *
   * @return by the middle pitch
   */
  public VoicePerson like() {
    return settings.person();
  }

  /**
   * What had to be said by something else so far.
   *
   * @return by the name of the sollu that was asked for: the recorded sollu that was taken; empty
   *     text for the synthesiser
   */
  public Map<String, String> instead() {
    return Map.copyOf(instead);
  }

  /**
   * Shapes one sollu.
   *
   * @throws IllegalArgumentException if the lexicon does not know the sollu
   * @throws UncheckedIOException if a sample cannot be read
   */
  @Override
  public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    Optional<Integer> sample = sample(before, cue);
    VoiceRequest request = requests.of(before, cue, after);
    if (sample.isEmpty()) {
      instead.put(cue.said().sollu().sound(), "");
      SolluWave stood = standIn.say(before, cue, after);
      return levelled(stood.samples().clone(), stood.leadFrames(), request);
    }
    String said = kit.samples().get(sample.get()).sollu();
    if (!said.equals(cue.said().sollu().sound())) {
      instead.put(cue.said().sollu().sound(), said);
    }
    return requests.placed(sounds.get(new Saying(sample.get(), request)), cue);
  }

  private Optional<Integer> sample(Optional<SolluCue> before, SolluCue cue) {
    Optional<String> company =
        before
            .filter(last -> last.startFrame() + last.lengthFrames() == cue.startFrame())
            .map(last -> last.said().sollu().sound());
    return choice.of(
        cue.said().sollu().sound(), requests.syllable(cue), company, requests.take(cue));
  }

  /**
   * A recorded consonant after the closure that its phone asks for, and never less than the phones
   * say, so that the sollu before is over.
   */
  private double consonantSeconds(Optional<SolluCue> before, SolluCue cue, PhoneSyllable syllable) {
    Optional<Integer> sample = sample(before, cue);
    if (sample.isEmpty()) {
      return syllable.onsetSeconds();
    }
    SamplePlaces places = kit.samples().get(sample.get()).places();
    double recorded = (double) places.vowel() / Kit.RATE;
    double closure =
        syllable
            .first()
            .filter(first -> first.isVoiceless())
            .map(first -> first.seconds() - first.lagSeconds())
            .orElse(0.0);
    return Math.max(recorded + closure, syllable.onsetSeconds());
  }

  private SolluWave shaped(Saying saying) {
    VoiceRequest request = saying.request();
    SolluShape shape = new SolluShape(drawn(saying.sample()), ratePerSecond, request);
    double pitch = 1 + TAKE_PITCH * (request.take() - 1);
    SolluWave wave = shape.say(pitch, VoiceAccent.lift(request.stress(), settings.accents()));
    HalfVoice.soften(wave.samples(), settings.effort(), ratePerSecond);
    // A vowel that swells is loudest where it is faded for the next one: what is heard counts.
    shape.fade(wave.samples(), wave.leadFrames());
    SolluWave level = levelled(wave.samples(), wave.leadFrames(), request);
    int moved = drawn(saying.sample()).places().beat() - drawn(saying.sample()).places().vowel();
    return new SolluWave(
        level.samples(), Math.max(0, Math.min(longestLeadFrames(), level.leadFrames() + moved)));
  }

  private DrawnSample drawn(int index) {
    return drawn.computeIfAbsent(
        index,
        number -> {
          KitSample sample = kit.samples().get(number);
          Path file = folder.resolve(sample.file());
          try {
            float[] sound = KitSounds.read(file, ratePerSecond, KitShelf.LONGEST_SAMPLE_SECONDS);
            return DrawnSample.of(
                sound,
                sample.places().at(ratePerSecond),
                OnsetBand.rising(choice.syllable(sample.sollu())),
                ratePerSecond);
          } catch (IOException unreadable) {
            throw new UncheckedIOException(
                file + " cannot be read; make the voice anew", unreadable);
          }
        });
  }

  /** Brings a vowel to the level of all others, then the accents. */
  private SolluWave levelled(float[] wave, int lead, VoiceRequest request) {
    int window = (int) (LOUDNESS_SECONDS * ratePerSecond);
    double lufs = StretchLoudness.loudestLufs(wave, lead, wave.length, window, ratePerSecond);
    double peak = Math.max(1e-9, BurstLevel.peak(wave, lead, wave.length));
    double full =
        Double.isInfinite(lufs)
            ? 1
            : Math.min(PEAK * StrictMath.pow(10, (targetLufs - lufs) / 20), PEAK / peak);
    double db =
        VoiceAccent.levelDb(request.stress(), settings.accents())
            + settings.effort().levelDb()
            - TAKE_DB * request.take();
    for (int i = 0; i < wave.length; i++) {
      wave[i] *= (float) full;
    }
    BurstLevel.hold(wave, lead, PEAK);
    double gain = StrictMath.pow(10, db / 20);
    for (int i = 0; i < wave.length; i++) {
      wave[i] *= (float) gain;
    }
    return new SolluWave(wave, lead);
  }
}
