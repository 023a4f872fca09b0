"""Recordings of single sounds with three marks: audible start, attack, and where the vowel opens."""

import os
import subprocess
from dataclasses import dataclass

import numpy as np
import scipy.io.wavfile as wavfile
import scipy.signal as signal

RATE = 44100
HOP = 88  # 2 ms
VOICED = set("b d g bh dd dh ddh dhh gh j jh".split())
HISS = set("s f hiss h sh z".split())
LONGEST_SECONDS = 0.6
LEAD_SECONDS = 0.005
HIGH = signal.butter(4, 500, "hp", fs=RATE, output="sos")
RUMBLE = signal.butter(2, 70, "hp", fs=RATE, output="sos")
SONORANT = set("n m l r v w nh nj ng ll rr zh gn gl y ?".split())  # "?": it is not known
OPEN = signal.butter(2, [100, 1500], "bp", fs=RATE, output="sos")


@dataclass(frozen=True, eq=False)
class Sound:
    """Samples at RATE; marks in samples from the beginning of them."""

    name: str
    kind: str  # the consonant it begins with, or the stroke
    group: str  # sounds of different groups never meet in a take (the pitch of a drum)
    samples: np.ndarray
    start: int
    attack: int
    vowel: int


def read(path):
    """The recording as floats at RATE, one channel."""
    if path.endswith(".wav"):
        rate, found = wavfile.read(path)
        scale = float(np.iinfo(found.dtype).max) if found.dtype.kind == "i" else 1.0
        if found.dtype == np.uint8:
            found, scale = found.astype(float) - 128, 128.0
        found = found.astype(float) / scale
        if found.ndim > 1:
            found = found.mean(axis=1)
        return found if rate == RATE else signal.resample_poly(found, RATE, rate)
    raw = subprocess.run(
        ["ffmpeg", "-v", "error", "-i", path, "-ac", "1", "-ar", str(RATE), "-f", "f32le", "-"],
        capture_output=True,
        check=True,
    ).stdout
    return np.frombuffer(raw, np.float32).astype(float)


def level(samples, window):
    """Level in dB, a value every HOP samples, of windows centred there."""
    power = np.concatenate([[0], np.cumsum(samples * samples)])
    at = np.arange(0, len(samples), HOP)
    low, high = np.maximum(at - window // 2, 0), np.minimum(at + window // 2, len(samples))
    return 10 * np.log10((power[high] - power[low]) / np.maximum(high - low, 1) + 1e-12)


def marked(name, kind, group, samples, attack=None, least_rise_db=9, ringing=False):
    """A Sound of the samples, or None if no clear beginning is found. `attack`, where it is known, is kept."""
    samples = signal.sosfiltfilt(RUMBLE, samples)
    whole, high = level(samples, 4 * HOP), level(signal.sosfilt(HIGH, samples), 3 * HOP)
    peak, floor = whole.max(), np.percentile(whole, 5)
    if attack is None:
        band = level(signal.sosfilt(OPEN, samples), 4 * HOP) if kind in HISS else high  # the vowel after the hiss
        clear = np.maximum(
            band, max(band.max() - (45 if kind not in VOICED | HISS else 22), np.percentile(band, 5) + 6)
        )
        rise = clear[4:] - clear[:-4]  # over 8 ms
        loud = int(np.argmax(whole > peak - 6))
        rise = rise[: loud + 5]
        if len(rise) < 1 or rise.max() < (0.8 if kind in VOICED | HISS else 1) * least_rise_db:
            return None
        steep = np.nonzero(rise >= (0.5 if kind in VOICED else 0.75) * rise.max())[0]
        found = int(steep[0])
        if kind in VOICED:  # the burst, not the voice before it
            found = int(steep[-1])
            while found and rise[found - 1] >= 0.5 * rise.max():
                found -= 1
        while found + 1 < len(rise) and rise[found + 1] > rise[found]:
            found += 1
        steps = np.diff(clear[found : found + 5])
        attack = (found + int(np.argmax(steps)) + 1) * HOP
    quiet = max(peak - 36, floor + 8)
    step = min(attack // HOP, len(whole) - 1)
    gap = 0
    first = step
    while step > 0 and gap < 8 and first * HOP > attack - int(0.25 * RATE):
        step -= 1
        if whole[step] > quiet:
            first, gap = step, 0
        else:
            gap += 1
    start = min(first * HOP, attack)
    voiced = level(signal.sosfilt(OPEN, samples), 5 * HOP)
    after = voiced[attack // HOP : attack // HOP + (150 if kind == "?" else 75)]
    if len(after) < 20:
        return None
    vowel = attack + int(np.argmax(after > after.max() - 12)) * HOP
    if kind in SONORANT:
        vowel = max(vowel, opening(high, attack))
    begin = max(start - int(LEAD_SECONDS * RATE), 0)
    end_of_syllable = syllable(level(samples, int(0.02 * RATE)), vowel) if not ringing else len(samples)
    audible = np.nonzero(whole > peak - 40)[0]
    end = min(end_of_syllable, (audible[-1] + 3) * HOP, attack + int(LONGEST_SECONDS * RATE))
    if end - attack < int(0.08 * RATE):
        return None
    piece = samples[begin:end].copy()
    fade_in, fade_out = min(int(0.002 * RATE), max(start - begin, 1)), min(int(0.015 * RATE), len(piece) // 3)
    piece[:fade_in] *= np.linspace(0, 1, fade_in)
    piece[-fade_out:] *= np.linspace(1, 0, fade_out)
    piece *= 10 ** ((-20 - level(piece, int(0.08 * RATE)).max()) / 20)
    return Sound(name, kind, group, piece, start - begin, attack - begin, vowel - begin)


def syllable(smooth, vowel):
    """Where the first syllable ends: the sound falls by 9 dB and rises again, or ends."""
    step = vowel // HOP + 15
    if step >= len(smooth):
        return len(smooth) * HOP
    loudest = smooth[vowel // HOP : step].max()
    for at in range(step, len(smooth)):
        loudest = max(loudest, smooth[at])
        if smooth[at] < loudest - 9 and smooth[at : at + 150].max() > smooth[at] + 4:
            return at * HOP
    return len(smooth) * HOP


def opening(high, attack):
    """Where the murmur of a nasal or the like opens: the steepest rise after its beginning, or `attack`."""
    part = high[attack // HOP + 10 : attack // HOP + 100]
    if len(part) < 20:
        return attack
    rise = part[6:] - part[:-6]
    at = int(np.argmax(rise))
    return attack + (10 + at + 3) * HOP if rise[at] > 6 else attack


def from_take(path, kind_of, ringing):
    """The single sounds of a recording of known onsets: NAME.wav, NAME.txt and NAME.score.txt."""
    samples = read(path)
    stem = path[: -len(".wav")]
    with open(stem + ".txt") as text:
        onsets = [float(line.split()[0]) for line in text if line.strip()]
    with open(stem + ".score.txt") as text:
        names = [line.split()[1] for line in text if line.strip()]
    found, seen = [], set()
    lead = 0.004 if ringing else 0.06
    for at, name in enumerate(names):
        if name in seen:
            continue
        following = onsets[at + 1] if at + 1 < len(onsets) else len(samples) / RATE
        before = int((onsets[at] - lead) * RATE)
        piece = samples[before : int((following - (0.004 if ringing else 0.045)) * RATE)]
        kind, group = kind_of(name)
        sound = marked(name, kind, group, piece, attack=int(round(onsets[at] * RATE)) - before, ringing=ringing)
        if sound is not None:
            found.append(sound)
            seen.add(name)
    return found


def from_files(paths, kind_of, least_rise_db=9):
    """Sounds of single recordings; those without a clear beginning are left out."""
    found = []
    for path in paths:
        kind, group = kind_of(os.path.splitext(os.path.basename(path))[0])
        sound = marked(os.path.basename(path), kind, group, read(path), least_rise_db=least_rise_db)
        if sound is not None:
            found.append(sound)
    return found
