"""The mouths and drums: which recordings belong together, and which stand for which sollu."""

import glob
import os
import re
import subprocess

from . import sounds

PROMPTS = {
    "en": {
        "t": "letters/t digits/2 digits/10 digits/12 digits/20 phonetic/t_p digits/today",
        "k": "letters/k letters/q phonetic/k_p phonetic/q_p",
        "d": "letters/d phonetic/d_p digits/dollars letters/dash letters/dot",
        "p": "letters/p phonetic/p_p letters/plus digits/p-m digits/pound",
        "m": "phonetic/m_p digits/minus digits/million digits/mon-2 digits/mon-4 digits/day-1",
        "n": "digits/9 digits/19 digits/90 phonetic/n_p digits/mon-10",
        "j": "letters/j letters/g phonetic/j_p digits/mon-0 digits/mon-5 digits/mon-6",
        "g": "phonetic/g_p",
        "b": "letters/b phonetic/b_p digits/billion",
        "f": "digits/4 digits/5 digits/14 digits/40 phonetic/f_p digits/day-5",
        "hiss": "digits/3 digits/13 digits/30 digits/thousand",
        "v": "letters/v phonetic/v_p",
        "l": "phonetic/l_p",
        "r": "phonetic/r_p",
    },
    "es": {
        "t": "digits/3 digits/13 digits/30 letters/t",
        "k": "digits/4 digits/14 digits/15 digits/40 letters/k",
        "d": "digits/2 digits/10 digits/12 digits/16 digits/17 letters/d digits/day-0 digits/mon-11",
        "n": "digits/9 digits/90 digits/mon-10",
        "m": "digits/day-2 digits/day-3 digits/mon-2 digits/mon-4",
        "p": "letters/p digits/p-m",
        "b": "digits/20 letters/b letters/v digits/day-5",
        "l": "digits/day-1",
        "j": "digits/day-4 digits/mon-5 digits/mon-6",
        "f": "digits/mon-1",
        "s": "digits/5 digits/6 digits/7 digits/50",
    },
    "fr": {
        "t": "digits/3 digits/13 digits/30 letters/t",
        "k": "digits/4 digits/14 digits/15 digits/40 letters/k letters/q",
        "d": "digits/2 digits/10 digits/12 digits/17 letters/d digits/day-0 digits/mon-11",
        "n": "digits/9 digits/19 digits/mon-10",
        "m": "digits/day-2 digits/day-3 digits/mon-2 digits/mon-4",
        "p": "letters/p letters/plus",
        "b": "letters/b",
        "v": "digits/20 letters/v digits/day-5",
        "l": "digits/day-1",
        "j": "letters/g letters/j digits/day-4 digits/mon-0 digits/mon-5",
        "f": "digits/mon-1",
        "s": "digits/5 digits/6 digits/7",
    },
    "it": {
        "t": "digits/3 digits/13 digits/30 letters/t",
        "k": "digits/4 digits/14 digits/15 digits/40 letters/q letters/k",
        "d": "digits/2 digits/10 digits/12 digits/17 letters/d digits/day-0 digits/mon-11",
        "n": "digits/9 digits/90 digits/mon-10",
        "m": "digits/day-2 digits/day-3 digits/mon-2 digits/mon-4",
        "p": "letters/p",
        "b": "letters/b",
        "v": "digits/20 letters/v digits/day-5",
        "l": "digits/day-1 digits/mon-6",
        "j": "letters/g digits/day-4 digits/mon-0 digits/mon-5",
        "ch": "digits/5 digits/50 digits/100 letters/c",
        "f": "digits/mon-1",
        "s": "digits/6 digits/7",
    },
    "ru": {
        "t": "digits/3 digits/13 digits/30 letters/t",
        "k": "letters/k phonetic/k_p",
        "d": "digits/2 digits/9 digits/10 digits/12 digits/20 letters/d",
        "p": "digits/5 digits/15 digits/50 digits/day-1 letters/p",
        "m": "digits/mon-2 digits/mon-4 digits/million letters/m",
        "n": "digits/mon-10 phonetic/n_p letters/n",
        "b": "letters/b phonetic/b_p",
        "g": "letters/g phonetic/g_p",
        "v": "letters/v digits/8 digits/day-2",
        "ch": "digits/4 digits/day-4",
        "s": "digits/6 digits/7",
        "l": "phonetic/l_p",
    },
}

# Which beginnings a sollu is given first, with all that are left after them.
WISHES = {
    "ta": "th t tth tt p",
    "ka": "k kh g",
    "di": "d dh dd ddh dhh b",
    "mi": "m n p v",
    "ju": "j jh ch cch c",
    "jo": "j jh ch cch c",
    "nu": "n nh nj m l",
    "ki": "k kh g p",
    "gi": "g gh k kh b",
    "na": "n nh m l",
    "tom": "th t tth b f",
    "dhim": "dh d dhh dd b",
    "nam": "n nh nj m",
    "ri": "r rr l",
    "ku": "kh k g",
    "tam": "t tth th",
}
SYNTHETIC = {
    "ta": "t",
    "ka": "k",
    "di": "d",
    "mi": "m",
    "ju": "j",
    "jo": "j",
    "nu": "n",
    "ki": "k",
    "gi": "g",
    "na": "n",
    "tom": "t",
    "dhim": "d",
    "nam": "n",
}


ALIKE_SECONDS = 0.012
ARABIC = "vowel b t th j h kh d dh r z s s s d t z vowel g f k k l m n h w y".split()


def consonant(name):
    if re.fullmatch(r"a-\d\d", name):
        return ARABIC[int(name[2:]) - 1], ""
    return re.match(r"[^aeiou]*", name).group() or "vowel", ""


def stroke(name):
    kind, pitch, _ = name.split("-")
    return kind, pitch


class Voice:
    """Sounds of one mouth (or drums, by pitch). `bound`: a sollu has sounds of its own."""

    def __init__(self, name, found, ringing=False, human=True, bound=True):
        if not found:
            raise ValueError(f"no sounds were found for the voice {name}")
        self.name, self.found, self.ringing, self.human, self.bound = name, found, ringing, human, bound

    def cast(self, sollus, rng):
        """For each of the sollus, the sounds that stand for it."""
        groups = sorted({sound.group for sound in self.found})
        sizes = [len({s.kind for s in self.found if s.group == g}) for g in groups]
        big = [g for g, size in zip(groups, sizes) if size >= min(max(sizes), 4)]
        group = big[rng.integers(len(big))]
        pool = [sound for sound in self.found if sound.group == group]
        kinds = sorted({sound.kind for sound in pool})
        if self.ringing:
            return self.drummed(sollus, pool, kinds, rng)
        left, cast = list(pool), {}
        most = max(1, min(3, len(pool) // max(len(sollus), 1)))
        for sollu in sollus:
            named = [s for s in left if s.name.split(".")[0] == sollu]
            for wish in [None] + WISHES.get(sollu, "").split() + [kinds[i] for i in rng.permutation(len(kinds))]:
                fit = named if wish is None else [s for s in left if s.kind == wish]
                if fit:
                    break
            if not fit:
                fit = pool
            cast[sollu] = alike(fit, sollu, most, rng)
            left = [s for s in left if s not in cast[sollu]]
        return cast

    def drummed(self, sollus, pool, kinds, rng):
        order = [kinds[i] for i in rng.permutation(len(kinds))]
        return {sollu: [s for s in pool if s.kind == order[at % len(order)]][:6] for at, sollu in enumerate(sollus)}

    def three(self, rng):
        """The sounds of pa, ta, ka (or the nearest), for words that go round in threes."""
        said = []
        for wishes in ("p b m", "th t tt tth d", "k kh g"):
            fit = []
            for wish in wishes.split():
                fit = [s for s in self.found if s.kind == wish]
                if fit:
                    break
            fit = fit or self.found
            said.append(alike(fit, "ta", 3, rng))
        return said


def colour(name):
    """The vowel of a syllable as its file is called, or "" of a word or a number."""
    found = re.fullmatch(r"[^aeiou0-9_]+([aeiou]+)[mh]?", name.split(".")[0])
    return found.group(1)[0] if found else ""


def alike(fit, sollu, most, rng):
    """One sound, or up to `most` with the same vowel, nearest to that of the sollu; of words only one."""
    coloured = [s for s in fit if colour(s.name)]
    if not coloured:
        return [fit[int(rng.integers(len(fit)))]]
    wish = {"a": "aoeiu", "i": "ieaou", "u": "uoaei", "o": "ouaei", "e": "eiaou"}[re.search("[aeiou]", sollu).group()]
    vowel = min((colour(s.name) for s in coloured), key=wish.index)
    same = [s for s in coloured if colour(s.name) == vowel]
    first = same[int(rng.integers(len(same)))]
    same = [
        s
        for s in same
        if max(
            abs(s.attack - s.start - first.attack + first.start), abs(s.vowel - s.attack - first.vowel + first.attack)
        )
        < ALIKE_SECONDS * sounds.RATE
    ]
    return [same[i] for i in rng.permutation(len(same))[: int(rng.integers(1, most + 1))]]


def syllables(recordings, numbers, name):
    found = []
    for number in numbers:
        found += sounds.from_take(os.path.join(recordings, "syllables", f"take{number}.wav"), consonant, False)
    return Voice(name, [s for s in found if s.kind not in ("s", "h", "vowel")])


def strokes(recordings, numbers, name):
    found = []
    for number in numbers:
        found += sounds.from_take(os.path.join(recordings, "strokes", f"take{number}.wav"), stroke, True)
    return Voice(name, found, ringing=True)


def prompts(folder, language, name):
    """Spoken words of one speaker of a folder of telephone prompts."""
    found = []
    for kind, words in PROMPTS[language].items():
        for word in words.split():
            for suffix in (".wav", ".gsm"):
                path = os.path.join(folder, word + suffix)
                if os.path.exists(path):
                    found += sounds.from_files([path], lambda _, k=kind: (k, ""))
                    break
    return Voice(name, found)


def letters(folder, name, skip="vowel s z h f y w x"):
    """Recorded syllables or names of letters in files called after them."""
    found = sounds.from_files(sorted(glob.glob(os.path.join(folder, "*.ogg"))), consonant)
    return Voice(name, [s for s in found if s.kind not in skip.split()])


def words(folder, name, most=32):
    """Spoken words whose beginnings are not known by their names: those that begin suddenly and open soon."""
    paths, found = sorted(glob.glob(os.path.join(folder, "*.ogg")) + glob.glob(os.path.join(folder, "*.wav"))), []
    for path in paths:
        for sound in sounds.from_files([path], lambda _: ("?", ""), least_rise_db=18):
            if sound.attack - sound.start <= 0.03 * sounds.RATE and sound.vowel - sound.attack <= 0.07 * sounds.RATE:
                found.append(sound)
        if len(found) == most:
            break
    return Voice(name, found)


def espeak(folder, language, name, speed="260"):
    """A synthetic voice, for want of recordings."""
    os.makedirs(folder, exist_ok=True)
    found = []
    for sollu, kind in SYNTHETIC.items():
        for at, pitch in enumerate(("50", "54")):
            path = os.path.join(folder, f"{sollu}.{language}.{at}.wav")
            if not os.path.exists(path):
                word = {"tom": "tom", "dhim": "dim"}.get(sollu, sollu)
                subprocess.run(["espeak-ng", "-v", language, "-s", speed, "-p", pitch, "-w", path, word], check=True)
            found += sounds.from_files([path], lambda _, k=kind: (k, ""))
    return Voice(name, found, human=False)
