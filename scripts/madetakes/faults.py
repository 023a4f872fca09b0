"""Performances with one fault, or none."""

import numpy as np

from .performance import Performance, Said, answer, where

LEAST_GAP_SECONDS = 0.06


class Maker:
    """Builds one performance. `fault` is a name of FAULTS, `size` what that fault needs."""

    def __init__(self, score, bpm, rng, jitter, claps):
        self.score, self.bpm, self.rng, self.claps = score, bpm, rng, claps
        beats = np.array([float(p.beat) for p in score.places])
        self.beats = beats
        self.second = 60 / bpm
        self.due = (beats - beats[0]) * self.second
        self.at = self.due.copy()
        self.jitter = rng.normal(0, jitter, len(beats))
        if jitter:
            self.jitter = np.clip(self.jitter, -2.5 * jitter, 2.5 * jitter)
        self.there = np.ones(len(beats), bool)
        self.extra = []
        self.jitter_sd = jitter
        self.change = score.change()

    def matra(self, at):
        return self.second / self.score.places[at].nadai

    def made(self, name, size, accept, lands, landing, places=None, **more):
        if self.jitter_sd and name != "landing" and landing:
            self.jitter[-1] = np.clip(self.jitter[-1], -0.03, 0.03)
        said = [
            Said(i, p.sollu, self.due[i], self.at[i] + self.jitter[i])
            for i, p in enumerate(self.score.places)
            if self.there[i]
        ]
        said = sorted(said + self.extra, key=lambda s: s.at)
        for before, after in zip(said, said[1:]):
            if after.at - before.at < LEAST_GAP_SECONDS:
                after.at = before.at + LEAST_GAP_SECONDS
        last = [s for s in said if s.place == len(self.score.places) - 1]
        pushed = 1000 * (last[-1].at - self.at[-1] - self.jitter[-1]) if last else 0
        fault = {"name": name, "size": size}
        if places is not None:
            fault.update(where(self.score, places[0]), last_place=int(places[-1]))
        found = Performance(
            self.score,
            self.bpm,
            said,
            fault,
            accept,
            lands,
            [float(ms + 1000 * self.jitter[-1] + pushed) for ms in landing],
        )
        for key, value in more.items():
            setattr(found, key, value)
        if found.recorded == (0, 0):
            found.recorded = (0, len(self.score.places))
        return found

    def off(self):
        return 1000 * (self.at[-1] - self.due[-1])

    def clean(self, name="none", size=None):
        return self.made(name, size, [answer("clean", self.score)], [True], [0.0])

    def five(self, percent):
        """The last nadai said slow (negative) or quick by so many per cent."""
        first = self.change
        self.at[first:] = self.at[first] + (self.due[first:] - self.due[first]) / (1 + percent / 100)
        sign = 1 if percent < 0 else -1  # arrives late or early
        accept = [answer(kind, self.score, (first - 4, len(self.at)), sign) for kind in ("change", "landing-change")]
        if abs(percent) <= 1:
            accept += [answer("landing", self.score, None, sign), answer("landing-drift", self.score, None, sign)]
        off = self.off()
        if abs(off) < 75:
            accept += [answer("clean", self.score), answer("landing", self.score, None, sign)]
        return self.made("five", percent, accept, verdict(off), [off], (first, len(self.at) - 1))

    def old_speed(self, _):
        first = self.change
        factor = self.score.places[first].nadai / self.score.places[first - 1].nadai
        self.at[first:] = self.at[first] + (self.due[first:] - self.due[first]) * factor
        accept = [answer("old-speed", self.score)] + [
            answer(kind, self.score, (first - 4, len(self.at)), 1) for kind in ("change", "landing-change")
        ]
        return self.made("old-speed", None, accept, [False], [self.off()], (first, len(self.at) - 1))

    def bent(self, nadai, table):
        inside = [i for i, p in enumerate(self.score.places) if p.nadai == nadai]
        for i in inside:
            whole = np.floor(self.beats[i] + 1e-9)
            part = self.beats[i] - whole
            self.at[i] = (
                whole + np.interp(part, np.arange(nadai + 1) / nadai, table + [1]) - self.beats[0]
            ) * self.second
        return inside

    def limp(self, kind):
        tables = {
            "5-second": (5, [0, 0.25, 0.5, 0.667, 0.833]),
            "5-third": (5, [0, 0.18, 0.36, 0.64, 0.82]),
            "4-second": (4, [0, 0.21, 0.5, 0.71]),
        }
        nadai, table = tables[kind]
        inside = self.bent(nadai, table)
        off = 1000 * (self.at[-1] - self.due[-1])
        accept = [answer("limping", self.score), answer("uneven", self.score)]
        return self.made("limping", kind, accept, verdict(off), [off], (inside[0], inside[-1]))

    def rushed(self, _):
        inside = self.bent(5, [0, 0.167, 0.333, 0.5, 0.667])
        off = self.off()
        return self.made(
            "rushed",
            None,
            [answer("rushed", self.score), answer("uneven", self.score)],
            verdict(off),
            [off],
            (inside[0], inside[-1]),
        )

    def drift(self, percent):
        length = self.beats[-1] - self.beats[0]
        x = (self.beats - self.beats[0]) / length
        g = percent / 100
        self.at = length * self.second * np.log1p(g * x) / g
        off = self.off()
        sign = 1 if percent > 0 else -1
        accept = [answer("drift", self.score, None, sign), answer("landing-drift", self.score, None, 0)]
        if self.claps:
            accept += [answer("landing", self.score)]
            lands, landing = verdict(off), []  # what is a lead and what is drift cannot be told apart to the ms
        else:
            lands, landing = [True, False], []
            if abs(percent) < 4:
                accept += [answer("clean", self.score), answer("landing", self.score), answer("change", self.score)]
        return self.made("drift", percent, accept, lands, landing)

    def landing(self, ms):
        self.at[-1] += ms / 1000
        sign = 1 if ms > 0 else -1
        accept = [answer("landing", self.score, None, sign)]
        if abs(ms) < 60:
            accept.append(answer("clean", self.score))
        self.jitter[-1] = np.clip(self.jitter[-1], -0.012, 0.012)
        return self.made("landing", ms, accept, verdict(ms), [float(ms)], (len(self.at) - 1, len(self.at) - 1))

    def near(self, i):
        return i - 4, i + 5

    def left_out(self, i):
        """A matra left out at place i: its sollu too, or only its karvai where it has one."""
        held = self.score.places[i].matras > 1
        self.there[i] = held
        matra = self.matra(i)
        self.at[i + 1 :] -= matra
        accept = [answer("slip", self.score, self.near(i), -1)]
        self.ends(accept, i, -1)
        return self.made("left-out" + ("-karvai" if held else ""), 1, accept, [False], [-1000 * matra], (i, i))

    def put_in(self, i, sound):
        """A matra put in after place i, with a sollu too many or by waiting."""
        matra = self.matra(i)
        if sound:
            at = self.at[i] + self.score.places[i].matras * matra
            twin = self.score.places[max(0, i - int(self.rng.integers(0, 4)))].sollu
            self.extra.append(Said(None, twin, at, at, True))
        self.at[i + 1 :] += matra
        accept = [answer(kind, self.score, self.near(i), 1) for kind in ("slip", "wait")]
        self.ends(accept, i, 1)
        return self.made("put-in" + ("" if sound else "-wait"), 1, accept, [False], [1000 * matra], (i, i))

    def ends(self, accept, i, sign):
        """Near the ends other words are as true."""
        size = len(self.at)
        if i < 8 or i >= size - 8:
            accept.append(answer("unsure", self.score))
        if i < 4:
            accept += [answer("first-missing", self.score), answer("missing", self.score)]
        if i >= size - 8:
            accept += [answer("landing", self.score, None, sign), answer("not-heard", self.score)]

    def first_missing(self, count):
        self.there[:count] = False
        accept = [answer(kind, self.score, (0, count)) for kind in ("first-missing", "missing", "unsure", "part")]
        return self.made("first-missing", count, accept, [True, False], [0.0], (0, count - 1))

    def last_missing(self, count):
        self.there[len(self.at) - count :] = False
        accept = [answer(kind, self.score) for kind in ("not-heard", "unsure", "part")]
        return self.made("last-missing", count, accept, [False], [], (len(self.at) - count, len(self.at) - 1))

    def added(self, count):
        free = [i for i in range(4, len(self.at) - 5) if self.at[i + 1] - self.at[i] > 0.19]
        for i in sorted(self.rng.permutation(free)[:count]):
            at = (self.at[i] + min(self.at[i + 1], self.at[i] + self.matra(i))) / 2
            self.extra.append(
                Said(None, self.score.places[int(self.rng.integers(0, len(self.at)))].sollu, at, at, True)
            )
        return self.made("added", count, [answer("clean", self.score), answer("added", self.score)], [True], [0.0])

    def restart(self, first, count, stop):
        """Says `count` sollus from place `first`, stops so many seconds, begins again at `first`."""
        again = self.at[first + count - 1] + self.matra(first) + stop - self.at[first]
        self.extra += [
            Said(
                first + k,
                self.score.places[first + k].sollu,
                self.due[first + k],
                self.at[first + k] + float(self.rng.normal(0, min(self.jitter_sd, 0.01))),
                True,
            )
            for k in range(count)
        ]
        self.at[first:] += again
        accept = [answer("restart", self.score, (first - 4, first + count + 4))]
        return self.made(
            "restart", {"said": count, "stopSeconds": stop}, accept, [True, False], [0.0], (first, first + count - 1)
        )

    def pause(self, i, seconds):
        """Waits before place i; the pulse goes on late after it."""
        matra = self.matra(i)
        self.at[i:] += seconds
        accept = [answer("wait", self.score, (i - 4, i + 4), 1)]
        nearest = round(seconds / matra)
        if nearest >= 1 and nearest <= 2 and abs(seconds - nearest * matra) < 0.3 * matra:
            accept.append(answer("slip", self.score, (i - 4, i + 4), 1))
        if seconds < 0.6 * matra:
            accept += [answer("clean", self.score), answer("landing", self.score, None, 1)]
        if i > len(self.at) - 8:
            accept.append(answer("landing", self.score, None, 1))
        lands = [False] if self.claps or (self.change is not None and i >= self.change) else [True, False]
        landing = [1000 * seconds] if lands == [False] else [0.0, 1000 * seconds]
        if 1000 * seconds < 75:
            lands = [True, False]
        return self.made("pause", seconds, accept, lands, landing, (i, i))

    def silent(self, i, count):
        self.there[i : i + count] = False
        accept = [answer("missing", self.score, (i - 2, i + count + 2))]
        if count == 1:
            accept.append(answer("clean-but-missed", self.score, (i - 1, i + 1)))
        return self.made("silent", count, accept, [True, False], [0.0], (i, i + count - 1))

    def begins_late(self, i):
        cut = max(self.at[i] - float(self.rng.uniform(0.10, 0.12)), self.at[i - 1] + 0.02)
        accept = [answer("part", self.score)]
        lands = [True]
        if self.alike():
            accept += [answer("not-heard", self.score), answer("unsure", self.score)]
            lands = [True, False]
        return self.made(
            "begins-late",
            None,
            accept,
            lands,
            [0.0],
            (i, i),
            begin_cut=cut,
            recorded=(i, len(self.at)),
            alike=self.alike(),
        )

    def ends_early(self, i):
        cut = self.at[i] + 0.8 * min(self.matra(i), self.at[i + 1] - self.at[i])
        accept = [answer(kind, self.score) for kind in ("part", "not-heard", "unsure")]
        return self.made(
            "ends-early", None, accept, [False], [], (i, i), end_cut=cut, recorded=(0, i + 1), alike=self.alike()
        )

    def alike(self):
        """Whether the rounds are the same: where a part begins can then not be told."""
        return len(self.score.plan) > 1 and len(set(self.score.plan)) == 1


def verdict(off_ms):
    """What may be said of a landing so far off: near 60 ms either."""
    if abs(off_ms) <= 45:
        return [True]
    return [True, False] if abs(off_ms) <= 60 else [False]
