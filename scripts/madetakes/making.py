"""Which takes a set is made of, and the truth written beside each."""

import json
import os

import numpy as np

from . import faults, mixing, shapes
from .sets import TABLE
from .sounds import RATE

FORMAT = 1


def score_for(name, rng, need_change, dense, kind, small=False, tempo=None):
    tempo = tempo or int(rng.integers(50, 111))
    tala = ["adi", "adi", "adi", "rupaka", "misra chapu"][rng.integers(5)]
    if need_change:
        plan = [[4, 4, 5], [4, 5], [4, 4, 5], [4, 4, 4, 5]][rng.integers(4)]
    else:
        plan = [[4, 4, 5], [4, 4], [4], [4, 4, 5], [4, 4, 4]][rng.integers(5)]
    longest = 40 if small else 600
    if dense:
        total = int(rng.choice([20, 40, 60] if small else [40, 60, 100, 160, 240, 240, 360, 600]))
        words = shapes.DENSE[kind]
        matras = max(16, min(total, longest) // (1 if small else len(plan)))
        return shapes.dense(name, tala, tempo, rng, matras, plan, words[rng.integers(len(words))])
    if rng.random() < 0.25:
        return shapes.groups(name, tala, tempo, rng, plan)
    return shapes.grouped(name, tala, tempo, rng, int(rng.integers(1, 3 if small else 6)), plan)


def tenths(score, at):
    """A place at so many tenths of the piece, clear of the last six."""
    size = len(score.places)
    return int(np.clip(round(size * at / 10), 2, size - 7))


def plans(rng, count):
    """Faults for so many takes: (name, argument), a third of them clean."""
    recipe = []
    recipe += [("none", None)] * 24
    recipe += [("five", p) for p in (-1, 1, -2, 2, -4, 4, -6, 6, -8, 8)]
    recipe += [("table", bpm) for bpm in TABLE]
    recipe += [("old_speed", None)] * 5
    recipe += [("limp", kind) for kind in ("5-second", "5-second", "5-third", "4-second")]
    recipe += [("rushed", None)] * 3
    recipe += [("drift", p) for p in (-4.5, 4.5, -2, 3, 6)]
    recipe += [("landing", ms) for ms in (-40, 40, -80, 80, -120, 120, 120, -120)]
    recipe += [("left_out", at) for at in range(1, 11)]
    recipe += [("put_in", (at, at % 2 == 0)) for at in range(1, 11)]
    recipe += [("left_karvai", at) for at in (2, 5, 8)]
    recipe += [("first_missing", 1), ("last_missing", 1), ("first_missing", 1), ("last_missing", 1)]
    recipe += [("added", k) for k in (1, 2, 3)]
    recipe += [("restart", k) for k in (3, 5, 8, 11)]
    recipe += [("pause", s) for s in (0.2, 0.3, 0.4, 0.55, 0.7, 0.85, 1.0, 0.5)]
    recipe += [("silent", k) for k in (1, 1, 10, 11, 12)]
    recipe += [("begins_late", None), ("ends_early", None), ("ends_early", None), ("begins_late", None)]
    recipe += [("odd", None)] * 3
    chosen = []
    while len(chosen) < count:
        chosen += [recipe[i] for i in rng.permutation(len(recipe))]
    return chosen[:count]


def performed(kind, argument, score, bpm, rng, jitter, claps):
    """The performance, or None where this fault does not fit the score."""
    make = faults.Maker(score, bpm, rng, jitter, claps)
    size = len(score.places)
    if kind in ("none", "odd"):
        return make.clean("none" if kind == "none" else "odd-ends")
    if kind == "five":
        return make.five(argument)
    if kind == "table":
        return make.five(100 * (argument / 72 - 1))
    if kind == "left_out":
        at = tenths(score, argument if argument < 10 else 9.7)
        plain = [i for i in range(1, size - 1) if score.places[i].matras == 1]
        return make.left_out(min(plain, key=lambda i: abs(i - at)))
    if kind == "left_karvai":
        held = [i for i in range(3, size - 7) if score.places[i].matras > 1]
        return make.left_out(min(held, key=lambda i: abs(i - tenths(score, argument)))) if held else None
    if kind == "put_in":
        at, sound = argument
        return make.put_in(tenths(score, at if at < 10 else 9.7), sound)
    if kind == "restart":
        entries = [
            i
            for i, p in enumerate(score.places)
            if i and (p.first_of_round or (p.first_of_phrase and not score.dense)) and i + argument + 6 < size
        ]
        return make.restart(int(rng.choice(entries)), argument, float(rng.uniform(0.6, 2.0))) if entries else None
    if kind == "pause":
        return make.pause(int(rng.integers(4, size - 8)), argument) if size > 20 else None
    if kind == "silent":
        return make.silent(int(rng.integers(6, size - argument - 6)), argument) if size > 4 * argument + 16 else None
    if kind == "begins_late":
        return make.begins_late(int(rng.integers(size // 10 + 1, size // 3))) if size >= 48 else None
    if kind == "ends_early":
        return make.ends_early(int(rng.integers(2 * size // 3, size - 4))) if size >= 48 else None
    if kind == "landing" and 1000 * (make.at[-1] - make.at[-2]) + argument < 80:
        return None
    return getattr(make, kind)(argument)


NEEDS_CHANGE = {"five", "table", "old_speed", "rushed"}


def one(number, kind, argument, voice, rng, set_, small=False):
    """(name, score, performance, condition) of a take; tries until score and fault fit."""
    for _ in range(50):
        dense = bool(rng.random() < 0.6) and kind not in ("left_karvai",)
        need = kind in NEEDS_CHANGE or (kind == "limp" and argument.startswith("5"))
        tempo = 72 if kind == "table" else None
        score = score_for(f"Take {number}", rng, need, dense, set_, small, tempo)
        if len(score.places) < 16 or len(score.places) > 640:
            continue
        if small and len(score.places) > 150:
            continue
        bpm = (
            72.0
            if kind == "table"
            else float(score.tempo) * float(rng.uniform(0.88, 1.12) if rng.random() < 0.5 else 1)
        )
        if bpm > 112 or 60 / bpm / 5 < 0.1:
            continue
        claps = kind not in ("restart", "begins_late") and rng.random() < 0.25
        jitter = float(rng.choice([0, 0.005, 0.01, 0.015, 0.02, 0.025], p=[0.15, 0.2, 0.25, 0.2, 0.1, 0.1]))
        threes = not voice.ringing and bool(rng.random() < 0.08)
        made = performed(kind, argument, score, bpm, rng, jitter, claps)
        if made is not None:
            if threes:
                made.told_by_time_alone()
            break
    else:
        raise ValueError(f"no score was found in which {kind} {argument} fits")
    condition = {
        "voice": voice.name,
        "human": voice.human,
        "ringing": voice.ringing,
        "jitterMs": 1000 * jitter,
        "claps": claps,
        "placed_by": mixing.MODES[rng.integers(len(mixing.MODES))],
        "threes": threes,
        "room": bool(rng.random() < 0.3),
        "snr": None,
        "telephone": bool(rng.random() < 0.12),
    }
    if threes:
        condition["placed_by"] = ["release", "vowel"][rng.integers(2)]
    if rng.random() < 0.3:
        condition["snr"] = int(rng.choice([30, 30, 20]))
    return score, made, condition


def landings(marks, performance):
    """What the landing may be measured as: by what was put on the beat, or by how that sollu attacks elsewhere."""
    last = [m for m in marks if m["place"] == len(performance.score.places) - 1]
    if not last or not performance.landing:
        return [], False

    def shifts(key):
        alike = [m[key] - m["at"] for m in marks if m["sollu"] == last[-1]["sollu"]][:-1]
        usual = float(np.median(alike if len(alike) >= 3 else [m[key] - m["at"] for m in marks]))
        return 1000 * (last[-1][key] - last[-1]["at"] - usual), len(alike) >= 3

    both = [0.0, shifts("attack")[0]] + ([shifts("vowel")[0]] if last[-1]["sonorant"] else [])
    return [[ms + min(both), ms + max(both)] for ms in performance.landing], shifts("attack")[1]


def write(folder, name, score, performance, condition, voice, rng):
    """NAME.loom, NAME.wav and NAME.json."""
    first_beat = 1.2 + float(rng.uniform(0, 1.3))
    if condition["claps"]:
        first_beat = 60 / performance.bpm * {"adi": 8, "rupaka": 6, "misra chapu": 7}[score.tala] + 0.3
    lead_ms = float(rng.uniform(-35, 5)) if condition["claps"] else 0.0
    out, marks = mixing.placed(
        performance, voice, rng, condition["placed_by"], condition["threes"], first_beat + lead_ms / 1000
    )
    if condition["room"]:
        out = mixing.room(out, rng)
    if condition["claps"]:
        style = ["hand", "tick"][rng.integers(2)]
        condition["clap_style"] = style
        level = np.abs(out).max() * 10 ** (-rng.uniform(3, 14) / 20)
        out = out + mixing.clapped(len(out), score, performance.bpm, first_beat, rng, style, level)
    if performance.fault["name"] == "odd-ends":
        out = mixing.odd_sounds(out, marks[0]["start"], marks[-1]["vowel"] + 0.3, rng)
    begin = 0.0
    if performance.end_cut is not None:
        out = out[: int((performance.end_cut + first_beat) * RATE)]
    if performance.begin_cut is not None:
        begin = performance.begin_cut + first_beat
        out = out[int(begin * RATE) :]
    if condition["snr"]:
        out = mixing.noisy(out, condition["snr"], rng)
    else:
        out = out + rng.normal(0, 10 ** (-70 / 20), len(out))
    rate = RATE
    if condition["telephone"]:
        out, rate = mixing.telephone(out), int(rng.choice([RATE, 16000, 8000]))
    length = len(out) / RATE
    kept = []
    for mark in marks:
        for key in ("due", "at", "start", "attack", "vowel"):
            mark[key] = round(mark[key] - begin, 6)
        if mark["attack"] > 0 and mark["attack"] + 0.02 < length:
            kept.append(mark)
    landing, known = landings(kept, performance)
    lands = performance.lands
    error = [1000 * m["at"] - 1000 * m["due"] for m in kept if m["place"] == len(score.places) - 1][-1:]
    truth = {
        "format": FORMAT,
        "name": name,
        "score": {
            "tala": score.tala,
            "tempo": str(score.tempo),
            "plan": score.plan,
            "dense": score.dense,
            "shape": score.shape,
            "sollus": len(score.places),
        },
        "bpm": performance.bpm,
        "lead_ms": lead_ms,
        "condition": condition,
        "fault": performance.fault,
        "accept": performance.accept,
        "lands": lands,
        "landing_ms": landing,
        "landing_known": known,
        "last_off_ms": error[0] if error else None,
        "recorded": list(performance.recorded),
        "alike": performance.alike,
        "places": [
            {"sollu": p.sollu, "beat": str(p.beat), "round": p.round, "phrase": p.phrase, "nadai": p.nadai}
            for p in score.places
        ],
        "sounds": kept,
        "seconds": length,
    }
    with open(os.path.join(folder, name + ".loom"), "w", encoding="utf-8") as text:
        text.write(score.text)
    mixing.finished(os.path.join(folder, name + ".wav"), out, rate, float(rng.uniform(0.15, 0.8)))
    with open(os.path.join(folder, name + ".json"), "w", encoding="utf-8") as text:
        json.dump(truth, text)
