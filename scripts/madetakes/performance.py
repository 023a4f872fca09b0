"""One performance: when every sollu is really said, and which answers to it are fair."""

from dataclasses import dataclass


@dataclass
class Said:
    """One sound. `place` is None for one that no sollu asks for; `due` is where the intended pulse has it."""

    place: int
    sollu: str
    due: float
    at: float
    extra: bool = False


@dataclass
class Performance:
    score: object
    bpm: float
    said: list
    fault: dict
    accept: list  # answers that name it: {"kind", "from", "to", "sign"}
    lands: list  # what may be said: True, False
    landing: list  # landing errors that are right, in ms; empty if none can be
    begin_cut: float = None  # the recording begins (ends) here
    end_cut: float = None
    recorded: tuple = (0, 0)
    alike: bool = False  # the same words stand elsewhere: pairing may lie a round apart

    def told_by_time_alone(self):
        """Where the sounds are not bound to the sollus, a place is known only as far as time tells it."""
        score, name = self.score, self.fault["name"]
        if name in ("left-out", "put-in", "first-missing", "last-missing") or (
            name == "silent" and self.fault["size"] == 1
        ):
            sign = {"left-out": -1, "first-missing": -1, "last-missing": -1}.get(name, 1)
            self.accept += [answer("slip", score, None, sign), answer("landing", score, None, sign)]
            self.accept += [answer(kind, score) for kind in ("unsure", "not-heard", "first-missing", "missing")]
            self.alike = True


def answer(kind, score, places=None, sign=0):
    low, high = (0, len(score.places) - 1) if places is None else places
    return {"kind": kind, "from": int(max(0, low)), "to": int(min(len(score.places) - 1, high)), "sign": sign}


def where(score, at):
    place = score.places[at]
    return {"place": int(at), "round": place.round, "phrase": place.phrase, "beat": str(place.beat)}
