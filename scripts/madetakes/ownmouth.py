"""One mouth in two sets of recordings: a kit is made of the one, takes are spliced from the other.

Each sollu has its recordings in klettres' Malayalam syllables: those with a long or a closed vowel for the kit, the
one with a short vowel for the takes. Two sollus are in no kit, as happens with a kit of one's own.
"""

import os

import numpy as np
import scipy.io.wavfile as wavfile

from . import faults, mixing, shapes, sounds, voices

FOLDER = "/usr/share/klettres/ml/syllab"
SOLLUS = {
    "ta": ("thaa tham", "thaha"),
    "ka": ("kaa kam", "kah"),
    "di": ("dii", "di"),
    "mi": ("mii", "mi"),
    "ju": ("juu", "ju"),
    "nu": ("nuu", "nu"),
    "na": ("naa nam", "naha"),
    "tom": ("thoo", "tho"),
    "dhim": ("dhii", "dhi"),
    "ki": ("", "ki"),
    "gi": ("", "gi"),
}
WORDS = [
    "takadimi takajunu",
    "takadimi",
    "takajunu",
    "takita",
    "kitataka",
    "takadimi takita taka",
    "tadigina takadimi",
    "takatakita",
]


class OwnMouth(voices.Voice):
    """A sollu is said by its own recording."""

    def __init__(self):
        paths = {sollu: os.path.join(FOLDER, take + ".ogg") for sollu, (_, take) in SOLLUS.items()}
        found = {sollu: sounds.from_files([path], voices.consonant) for sollu, path in paths.items()}
        missing = [sollu for sollu, own in found.items() if not own]
        if missing:
            raise ValueError("no beginning is clear of " + ", ".join(missing))
        super().__init__("malayalam", [own[0] for own in found.values()])
        self.own = found

    def cast(self, sollus, rng):
        return {sollu: self.own[sollu] for sollu in sollus}


def kit_list(path, rounds=2):
    """PATH.wav and PATH.txt: what the kit is made of, half a second apart, and its sheet with the known times."""
    gap, rows = np.zeros(sounds.RATE // 2), []
    whole, at = [gap], len(gap)
    for _ in range(rounds):
        for sollu, (kit, _) in SOLLUS.items():
            for name in kit.split():
                found = sounds.from_files([os.path.join(FOLDER, name + ".ogg")], voices.consonant)
                if found:
                    sound = found[0].samples
                    whole += [0.7 * sound / np.abs(sound).max(), gap]
                    rows.append("%.4f %s" % ((at + found[0].attack) / sounds.RATE, sollu))
                    at += len(sound) + len(gap)
    wavfile.write(path + ".wav", sounds.RATE, np.round(32767 * np.concatenate(whole)).astype(np.int16))
    with open(path + ".txt", "w", encoding="utf-8") as sheet:
        sheet.write("\n".join(rows) + "\n")


def takes(voice, seed, count):
    """(score, performance, condition, voice, random numbers): every second one clean, the others each with a fault."""
    number = 0
    while number < count:
        rng = np.random.default_rng([seed, number])
        for _ in range(100):
            fault = None if number % 2 == 0 else ("left_out", "put_in", "five", "pause")[number // 2 % 4]
            plan = [4, 4, 5] if fault == "five" else [[4], [4, 4], [4, 5], [4, 4, 5]][int(rng.integers(4))]
            tempo, jitter = int(rng.integers(56, 100)), float(rng.choice([0.005, 0.01, 0.015, 0.02]))
            matras = int(rng.choice([16, 24, 40, 64]))
            words = WORDS[int(rng.integers(len(WORDS)))]
            score = shapes.dense(f"Take {number}", "adi", tempo, rng, matras, plan, words)
            if not 16 <= len(score.places) <= 200:
                continue
            maker = faults.Maker(score, float(tempo) * float(rng.uniform(0.93, 1.07)), rng, jitter, False)
            made = faulty(maker, fault, rng)
            if made is not None:
                yield score, made, condition(voice, jitter, rng), voice, rng
                break
        number += 1


def faulty(maker, fault, rng):
    size = len(maker.at)
    if fault is None:
        return maker.clean()
    if fault == "five":
        return maker.five(float(rng.choice([-10, -8, -6, -4])))
    if fault == "left_out":
        return maker.left_out(int(rng.integers(1, size - 1)))
    if fault == "put_in":
        return maker.put_in(int(rng.integers(1, size - 2)), False)
    return maker.pause(int(rng.integers(4, size - 4)), float(rng.uniform(0.2, 0.9)))


def condition(voice, jitter, rng):
    return {
        "voice": voice.name,
        "human": True,
        "ringing": False,
        "jitterMs": 1000 * jitter,
        "claps": False,
        "placed_by": mixing.MODES[int(rng.integers(3))],
        "threes": False,
        "room": bool(rng.random() < 0.3),
        "snr": [None, 30, 20][int(rng.integers(3))],
        "telephone": bool(rng.random() < 0.12),
    }
