"""Two sets besides the mixed one: a small fixed one, and a thousand quick takes of which most end off."""

import numpy as np

from . import faults, mixing, shapes

PERCENTS = (-1, 1, -2, 2, -4, 4, -6, 6, -8, 8)
TABLE = (70.0, 68.4, 66.0, 64.8, 75.6)
PAUSES = (0.2, 0.35, 0.5, 0.65, 0.8, 1.0, 0.3, 0.45)
PHRASE = "takadimi takajunu"


def condition_of(voice, rng, jitter, claps=False):
    return {
        "voice": voice.name,
        "human": voice.human,
        "ringing": voice.ringing,
        "jitterMs": 1000 * jitter,
        "claps": claps,
        "placed_by": mixing.MODES[rng.integers(len(mixing.MODES))],
        "threes": False,
        "room": False,
        "snr": None,
        "telephone": False,
    }


def spliced(chosen, seed):
    """(score, performance, condition, voice, random numbers) of each take of the small fixed set."""
    number = 0

    def take(matras, plan, jitter, make, tempo=72, words=PHRASE):
        nonlocal number
        rng = np.random.default_rng([seed, number])
        voice = chosen[number % len(chosen)]
        number += 1
        score = shapes.dense(f"Take {number}", "adi", tempo, rng, matras, plan, words)
        return (
            score,
            make(faults.Maker(score, float(tempo), rng, jitter, False)),
            condition_of(voice, rng, jitter),
            voice,
            rng,
        )

    for percent in PERCENTS:
        yield take(40, [4, 4, 5], 0.008, lambda m, p=percent: m.five(p))
    for bpm in TABLE:
        yield take(80, [4, 4, 5], 0.005, lambda m, b=bpm: m.five(100 * (b / 72 - 1)))
    for place, seconds in enumerate(PAUSES):
        yield take(64, [4], 0.008, lambda m, p=place, s=seconds: m.pause(24 + p, s))
    for tenth in range(1, 11):
        yield take(80, [4], 0.008, lambda m, t=tenth: m.left_out(min(8 * t, 73)))
        yield take(80, [4], 0.008, lambda m, t=tenth: m.put_in(min(8 * t, 73), t % 2 == 0))
    for jitter in (0.005, 0.010, 0.015, 0.020, 0.025, 0.025):
        yield take(40, [4, 4, 5], jitter, lambda m: m.clean())


def quick(chosen, seed, count):
    """So many takes of short pieces in plain sound. Two of three end more than 60 ms off, in all the ways there are."""
    for number in range(count):
        rng = np.random.default_rng([seed, number, 1000])
        voice = chosen[number % len(chosen)]
        for _ in range(100):
            tempo, jitter, claps = (
                int(rng.integers(54, 109)),
                float(rng.choice([0, 0.005, 0.01, 0.015, 0.02])),
                bool(rng.random() < 0.2),
            )
            plan = [[4, 5], [4, 4, 5], [4], [4, 4]][rng.integers(4)]
            if rng.random() < 0.6:
                words = shapes.DENSE["dev"] + shapes.DENSE["judge"]
                score = shapes.dense(
                    f"Take {number}",
                    "adi",
                    tempo,
                    rng,
                    int(rng.choice([16, 20, 24, 40])),
                    plan,
                    words[rng.integers(len(words))],
                )
            else:
                score = shapes.grouped(f"Take {number}", "adi", tempo, rng, 1, plan)
            if not 16 <= len(score.places) <= 90:
                continue
            made = one_quick(
                faults.Maker(score, float(tempo) * float(rng.uniform(0.95, 1.05)), rng, jitter, claps), rng
            )
            if made is not None:
                yield score, made, condition_of(voice, rng, jitter, claps), voice, rng
                break


def one_quick(make, rng):
    size, kind = len(make.at), int(rng.integers(12))
    changed = make.change is not None
    gap = 1000 * (make.at[-1] - make.at[-2])
    middle = int(rng.integers(4, size - 8))
    sizes = [-300, -200, -150, -100, -80, 80, 100, 150, 200, 300]
    if kind <= 1:
        ms = int(rng.choice(sizes))
        return make.landing(ms) if gap + ms > 80 else None
    if kind <= 3:
        return make.five(float(rng.choice([-10, -6, -4, -3, 3, 4, 6, 10]))) if changed else None
    if kind == 4:
        return make.left_out(int(rng.integers(1, size - 1)))
    if kind == 5:
        return make.put_in(int(rng.integers(1, size - 2)), bool(rng.random() < 0.5))
    if kind == 6:
        place = int(rng.integers(make.change, size - 1)) if changed else middle
        return make.pause(place, float(rng.uniform(0.2, 1.0)))
    if kind == 7:
        return make.last_missing(int(rng.integers(1, 4)))
    if kind == 8:
        return [make.old_speed, make.rushed][rng.integers(2)](None) if changed and make.score.plan[-1] == 5 else None
    if kind == 9:
        return make.drift(float(rng.choice([-5, 5, -8, 8]))) if make.claps else make.first_missing(1)
    return make.clean() if kind == 10 else make.landing(int(rng.choice([-30, 30]))) if gap > 110 else None
