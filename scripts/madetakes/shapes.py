"""Scores of many shapes, written as text, and the beat of each sollu, counted here and not by the program."""

from dataclasses import dataclass, field
from fractions import Fraction

WORDS = {
    "takadimi": "ta ka di mi",
    "takajunu": "ta ka ju nu",
    "takita": "ta ki ta",
    "taka": "ta ka",
    "dimi": "di mi",
    "tadiginatom": "ta di gi na tom",
    "takatakita": "ta ka ta ki ta",
    "tom": "tom",
    "dhim": "dhim",
    "ta": "ta",
    "tadigina": "ta di gi na",
    "kitataka": "ki ta ta ka",
    "tadikitatom": "ta di ki ta tom",
}
TALAS = {"adi": 8, "rupaka": 6, "misra chapu": 7}


@dataclass(frozen=True)
class Place:
    """One sollu of the performance. Beats count from the samam before the start."""

    sollu: str
    beat: Fraction
    matras: int
    nadai: int
    round: int
    phrase: str
    first_of_phrase: bool
    first_of_round: bool


@dataclass
class Score:
    name: str
    text: str
    tala: str
    tempo: Fraction
    plan: list
    places: list
    end: Fraction
    dense: bool
    shape: str
    phrases: dict = field(default_factory=dict)

    def change(self):
        """The first place of the last change of nadai, or None."""
        for at in range(len(self.places) - 1, 0, -1):
            if self.places[at].nadai != self.places[at - 1].nadai:
                return at
        return None


def line(text):
    """Sollus and their matras of a line such as `takita tom , ,` with `;` for two."""
    said = []
    for token in text.replace("(", " ( ").replace(")", " ) ").split():
        if token in ",;":
            sollu, matras = said[-1]
            said[-1] = (sollu, matras + (1 if token == "," else 2))
        else:
            said += [(sollu, 1) for sollu in WORDS[token].split()]
    return said


def written(name, tala, tempo, phrases, song, plan, dense, shape):
    """phrases: name -> (text, sollus and matras); song: names; plan: nadais of the rounds."""
    beats = TALAS[tala]
    length = sum(matras for part in song for _, matras in phrases[part][1])
    total = sum(Fraction(length, nadai) for nadai in plan)
    start = (-total) % beats
    places, at = [], start
    for number, nadai in enumerate(plan, 1):
        for index, part in enumerate(song):
            for step, (sollu, matras) in enumerate(phrases[part][1]):
                places.append(Place(sollu, at, matras, nadai, number, part, step == 0, step == 0 and index == 0))
                at += Fraction(matras, nadai)
    head = f"title {name}\ntala {tala}\ntempo {tempo}\nwords plain\n"
    if start:
        whole, rest = divmod(start, 1)
        head += "start +" + (f"{whole} {rest}" if whole and rest else f"{whole or rest}") + "\n"
    text = head + "\n" + "".join(f"{part} = {phrases[part][0]}\n" for part in phrases)
    last = song[0]
    if len(song) > 1:
        text += "Song = " + " ".join(song) + "\n"
        last = "Song"
    text += "\nperform\n" + "".join(f"  {last} nadai {nadai}\n" for nadai in plan)
    return Score(name, text, tala, tempo, plan, places, at, dense, shape, phrases)


def repeated(words, times):
    return f"({words}) x{times}", line(words) * times


DENSE = {
    "dev": [
        "takadimi takajunu",
        "takadimi",
        "takadimi takita taka",
        "takatakita",
        "takita taka takita",
        "takadimi takajunu taka",
        "takita",
        "takajunu takita taka",
    ],
    "judge": [
        "takadimi takajunu",
        "takadimi",
        "takita takadimi",
        "kitataka",
        "takadimi kitataka",
        "takatakita takadimi taka",
        "tadigina takadimi",
        "takajunu",
        "takita takatakita",
        "takadimi takita takajunu",
    ],
}


def dense(name, tala, tempo, rng, matras, plan, words):
    """Words over and over without a karvai, about so many matras a round."""
    unit = len(line(words))
    times = max(1, round(matras / unit))
    if any(nadai == 5 for nadai in plan) and len(set(plan)) > 1:
        step = next(n for n in range(1, 21) if n * unit % 20 == 0)
    else:
        step = next(n for n in range(1, 21) if n * unit % plan[0] == 0)
    times = max(step, round(times / step) * step)
    return written(name, tala, tempo, {"Rain": repeated(words, times)}, ["Rain"], plan, True, "dense")


def grouped(name, tala, tempo, rng, size, plan):
    """A purvanga that grows or shrinks and a mora said three times, with karvais."""
    size = max(1, size)
    body = [
        "takadimi takajunu",
        "takita taka",
        "takadimi takita",
        "takita",
        "takadimi taka takita",
        "kitataka takadimi",
    ]
    ends = ["tom , ,", "tom ;", "tom , ; ", "dhim , ,", "tom ,"]
    moras = [
        "takadimi tadiginatom",
        "tadiginatom",
        "takita tadiginatom",
        "takadimi takita tadikitatom",
        "taka tadiginatom",
    ]
    names = ["Drip", "Trickle", "Stream", "River", "Flood", "Weir", "Mouth", "Delta"]
    end = ends[rng.integers(len(ends))]
    phrases, song = {}, []
    for at in range(size):
        text = " ".join(body[rng.integers(len(body))] for _ in range(1 + at % 3)) + " " + end
        phrases[names[at % 8]] = (text, line(text))
        if len(song) <= at:
            song.append(names[at % 8])
    mora, gap = moras[rng.integers(len(moras))], int(rng.integers(1, 4))
    held = mora + " " + " ".join({1: [","], 2: [";"], 3: [",", ";"]}[gap])
    need = 20 if len(set(plan)) > 1 else plan[0]
    length = sum(m for part in song for _, m in phrases[part][1]) + 3 * len(line(mora)) + 2 * gap
    missing = -length % need
    if missing:
        tail = ["takadimi"] * (missing // 4) + ["taka"] * (missing % 4 // 2) + ["ta"] * (missing % 2)
        phrases["Bend"] = (" ".join(tail), line(" ".join(tail)))
        song.append("Bend")
    phrases["Fall"], phrases["Last"] = (held, line(held)), (mora, line(mora))
    song += ["Fall", "Fall", "Last"]
    return written(name, tala, tempo, phrases, song, plan, False, "grouped")


def groups(name, tala, tempo, rng, plan):
    """Numbers written as numbers: 9(1)9(1)9 and the like, after a line of takadimi."""
    words = {9: "takadimi takatakita", 5: "tadiginatom", 7: "takadimi takita", 6: "takadimi taka"}
    number, gap = int(rng.choice(list(words))), int(rng.integers(1, 3))
    mora = line(words[number])
    held = mora[:-1] + [(mora[-1][0], 1 + gap)]
    need = 20 if len(set(plan)) > 1 else plan[0]
    tail = [f"{number}({gap}){number}({gap}){number}", held + held + mora]
    length = sum(m for _, m in tail[1])
    fill = -length % need + need * int(rng.integers(0, 2))
    words4 = line(f"{'takadimi ' * (fill // 4)}{'taka ' * (fill % 4 // 2)}{'ta ' * (fill % 2)}")
    phrases = {
        "Mist": (f"{'takadimi ' * (fill // 4)}{'taka ' * (fill % 4 // 2)}{'ta ' * (fill % 2)}".strip(), words4),
        "Gate": (tail[0], tail[1]),
    }
    if not fill:
        del phrases["Mist"]
    return written(name, tala, tempo, phrases, list(phrases), plan, False, "groups")
