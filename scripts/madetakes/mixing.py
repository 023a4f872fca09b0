"""From a performance to sound."""

import dataclasses

import numpy as np
import scipy.io.wavfile as wavfile
import scipy.signal as signal

from .sounds import RATE, SONORANT

MODES = ("release", "vowel", "start", "lags", "reversed", "any")
LONGEST_LAG_SECONDS = 0.07
USUAL = {"t": 13, "d": 13, "k": 27, "g": 27, "j": 46, "n": 20, "m": 20, "r": 8}


def lag_of(mode, sollu, sound, lags):
    """Samples from the beginning of the sound to what is put on the beat."""
    if mode == "release":
        return sound.attack
    if mode == "vowel":
        return min(sound.vowel, sound.attack + int(LONGEST_LAG_SECONDS * RATE))
    if mode == "start":
        return max(sound.start, sound.attack - int(LONGEST_LAG_SECONDS * RATE))
    return sound.attack + int(lags[sollu] * RATE)


def lags_for(mode, sollus, rng):
    if mode in ("lags", "reversed"):
        sign = 1 if mode == "lags" else -0.7
        return {s: sign * (USUAL.get(s[0], 15) + rng.normal(0, 4)) / 1000 for s in sollus}
    return {s: float(rng.uniform(-0.03, 0.05)) for s in sollus}


def varied(sound, speed):
    """The sound a little faster or slower, as no two are said alike."""
    at = np.arange(0, len(sound.samples) - 1, speed)
    samples = np.interp(at, np.arange(len(sound.samples)), sound.samples)
    return dataclasses.replace(
        sound,
        samples=samples,
        start=int(sound.start / speed),
        attack=int(sound.attack / speed),
        vowel=int(sound.vowel / speed),
    )


def placed(performance, voice, rng, mode, threes, lead):
    """The voice alone, and the marks of every sound in seconds; the first beat is at `lead`."""
    sollus = sorted({s.sollu for s in performance.said})
    cast = voice.cast(sollus, rng)
    three = voice.three(rng) if threes else None
    lags = lags_for(mode, sollus, rng)
    picked = []
    for number, said in enumerate(performance.said):
        choice = three[(number if said.place is None else said.place) % 3] if threes else cast[said.sollu]
        sound = choice[int(rng.integers(len(choice)))]
        if not voice.ringing:
            sound = varied(sound, float(rng.uniform(0.985, 1.015)))
        begin = int(round((lead + said.at) * RATE)) - lag_of(mode, said.sollu, sound, lags)
        picked.append([said, sound, begin])
    size = int((lead + performance.said[-1].at + 3.0) * RATE)
    out = np.zeros(size)
    marks = []
    for number, (said, sound, begin) in enumerate(picked):
        samples, skipped = sound.samples * 10 ** (rng.normal(0, 1.2) / 20), 0
        if number:
            before = picked[number - 1]
            earliest = (
                before[2] + before[1].attack + int(0.55 * max(begin + sound.attack - before[2] - before[1].attack, 0))
            )
            skipped = int(np.clip(earliest - begin, 0, sound.attack))
        begin += skipped
        samples = samples[skipped:].copy()
        if skipped:
            fade = min(200, sound.attack - skipped + 1)
            samples[:fade] *= np.linspace(0, 1, fade)
        if number + 1 < len(picked) and not voice.ringing:
            following = picked[number + 1]
            here = begin - skipped + sound.attack
            gap = following[2] + following[1].attack - here
            cut = max(following[2], here + int(0.55 * max(gap, 0))) - begin
            if 0 < cut < len(samples):
                samples = samples[:cut]
                fade = min(int(0.012 * RATE), cut // 2)
                samples[-fade:] *= np.linspace(1, 0, fade)
        low, high = max(begin, 0), min(begin + len(samples), size)
        out[low:high] += samples[low - begin : high - begin]
        origin = begin - skipped
        marks.append(
            {
                "place": said.place,
                "sollu": said.sollu,
                "sound": sound.name,
                "extra": said.extra,
                "due": said.due + lead,
                "at": said.at + lead,
                "start": max(origin + sound.start, begin) / RATE,
                "attack": (origin + sound.attack) / RATE,
                "vowel": (origin + sound.vowel) / RATE,
                "sonorant": sound.kind in SONORANT,
            }
        )
    return out, marks


def clapped(size, score, bpm, lead, rng, style, level):
    """Claps or ticks on the beats (of the hand: on its claps), from a bar before, at the tempo that was meant."""
    out = np.zeros(size)
    first = float(score.places[0].beat)
    end = float(score.end)
    beats = {"adi": 8, "rupaka": 6, "misra chapu": 7}[score.tala]
    strong = {"adi": (0, 4, 6), "rupaka": (0, 2), "misra chapu": (0, 3, 5)}[score.tala]
    for beat in range(int(np.floor(first)) - beats, int(np.ceil(end)) + 2):
        if style == "hand" and beat % beats not in strong:
            continue
        at = lead + (beat - first) * 60 / bpm + (rng.normal(0, 0.006) if style == "hand" else 0)
        begin = int(at * RATE)
        if begin < 0:
            continue
        length = int(0.08 * RATE)
        time = np.arange(length) / RATE
        if style == "hand":
            clap = rng.normal(0, 1, length) * np.exp(-time / 0.012)
            clap = signal.sosfilt(
                signal.butter(2, [900 + rng.uniform(-200, 200), 4000], "bp", fs=RATE, output="sos"), clap
            )
        else:
            clap = np.sin(2 * np.pi * (2400 if beat % beats == 0 else 1800) * time) * np.exp(-time / 0.008)
        clap *= level / np.abs(clap).max()
        high = min(begin + length, size)
        if high > begin:
            out[begin:high] += clap[: high - begin]
    return out


def odd_sounds(out, first, last, rng):
    """Hum, cough or chair before the first and after the last sound, 0.5 s away from them at least."""
    for low, high in ((0.05, first - 0.5), (last + 0.9, len(out) / RATE)):
        kind = rng.integers(3)
        length = min(high - low, [0.9, 0.35, 0.6][kind])
        if length < 0.2:
            continue
        begin = int((low + rng.uniform(0, max(high - low - length, 0))) * RATE)
        time = np.arange(int(length * RATE)) / RATE
        shape = np.sin(np.pi * time / length) ** 0.5
        if kind == 0:
            sound = sum(np.sin(2 * np.pi * 140 * k * time) / k**2 for k in range(1, 6)) * shape * 0.04
        elif kind == 1:
            noise = signal.sosfilt(
                signal.butter(2, [400, 2500], "bp", fs=RATE, output="sos"), rng.normal(0, 1, len(time))
            )
            sound = (
                noise
                / np.abs(noise).max()
                * (np.exp(-time / 0.06) + 0.5 * (time > 0.17) * np.exp(-(time - 0.17) / 0.08))
                * 0.25
            )
        else:
            sound = np.sin(2 * np.pi * (300 * time + 90 * np.sin(2 * np.pi * 7 * time))) * shape * 0.05
            sound += rng.normal(0, 0.01, len(time)) * shape
        sound = sound[: len(out) - begin]
        out[begin : begin + len(sound)] += sound
    return out


def room(out, rng):
    length = rng.uniform(0.25, 0.7)
    time = np.arange(int(length * RATE)) / RATE
    tail = rng.normal(0, 1, len(time)) * 10 ** (-3 * time / length)
    tail = signal.sosfilt(signal.butter(1, 5000, "lp", fs=RATE, output="sos"), tail)
    tail[: int(0.004 * RATE)] = 0
    tail /= np.sqrt(np.sum(tail**2))
    wet = signal.oaconvolve(out, tail)[: len(out)]
    return out + wet * 10 ** (-rng.uniform(4, 12) / 20)


def noisy(out, snr, rng):
    """Noise at so many dB under the level of the sounding parts."""
    active = out[np.abs(signal.oaconvolve(np.abs(out), np.ones(2205) / 2205, "same")) > 0.01]
    power = np.mean(active**2) if len(active) else np.mean(out**2)
    noise = signal.lfilter([0.05], [1, -0.95], rng.normal(0, 1, len(out))) * 0.5 + rng.normal(0, 0.05, len(out))
    return out + noise * np.sqrt(power / np.mean(noise**2) * 10 ** (-snr / 10))


def telephone(out):
    return signal.sosfilt(signal.butter(4, [300, 3400], "bp", fs=RATE, output="sos"), out)


def finished(path, out, rate, level=0.5):
    out = out * (level / max(np.abs(out).max(), 1e-9))
    if rate != RATE:
        out = signal.resample_poly(out, rate, RATE)
    wavfile.write(path, rate, np.round(np.clip(out, -1, 1) * 32767).astype(np.int16))
