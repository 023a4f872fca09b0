"""Tracks and takes that are made."""

import os
import wave

import numpy

from checks import events, read_wav, run

from .work import WORK

LATE_MS = 250


def rendered(score):
    path = os.path.join(WORK, "rendered.wav")
    run("./matraloom", "render", score, "-o", path)
    return read_wav(path)[1]


def write_wav(path, samples, rate=48_000):
    with wave.open(path, "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(rate)
        sound.writeframes(numpy.asarray(samples, dtype="<i2").tobytes())


def voice_of(text, name):
    """A take that says a score exactly: the program's own voice, alone, in one channel."""
    score, sound = os.path.join(WORK, name + ".loom"), os.path.join(WORK, name + ".wav")
    with open(score, "w", encoding="utf-8") as file:
        file.write(text)
    run("./matraloom", "render", score, "-o", sound, "--only", "voice", "--mono", "--count-in", "0")
    return numpy.array(read_wav(sound)[1])


def made_takes(text):
    """Two takes with a known fault: the five said at the speed of the four, and a landing that is late."""
    quiet = numpy.zeros(48_000, dtype=int)
    old_speed = os.path.join(WORK, "old-speed.wav")
    write_wav(old_speed, numpy.concatenate([quiet, voice_of(text.replace("nadai 5", "nadai 4"), "four"), quiet]))
    right = voice_of(text, "five")
    rows = events(os.path.join(WORK, "five.loom"), "--count-in", "0")
    said = [int(row["frame"]) for row in rows if row["kind"] == "sollu"]
    cut = said[-8] - 2400
    late = os.path.join(WORK, "late.wav")
    write_wav(late, numpy.concatenate([quiet, right[:cut], numpy.zeros(LATE_MS * 48, dtype=int), right[cut:], quiet]))
    return old_speed, late
