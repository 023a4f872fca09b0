"""What the sounds of made takes are: a consonant and a vowel, told from the names of their files.

The letters of a language are read as a grammar of it says; the words behind the names of prompts (a
number, a day, a month) are everybody's. What is not sure is left out.
"""

import re

from . import voices

# By how the mouth makes them: manner and place. What is not listed is not learnt from.
MADE = {
    "t": ("stop", "dental"),
    "T": ("stop", "retroflex"),
    "k": ("stop", "velar"),
    "p": ("stop", "labial"),
    "Th": ("aspirate", "retroflex"),
    "kh": ("aspirate", "velar"),
    "d": ("voiced", "dental"),
    "D": ("voiced", "retroflex"),
    "g": ("voiced", "velar"),
    "b": ("voiced", "labial"),
    "ch": ("affricate", "palatal"),
    "j": ("affricate", "palatal"),
    "ts": ("affricate", "dental"),
    "n": ("nasal", "dental"),
    "m": ("nasal", "labial"),
    "l": ("liquid", "dental"),
    "r": ("liquid", "dental"),
    "y": ("liquid", "palatal"),
    "v": ("liquid", "labial"),
    "s": ("hiss", "dental"),
    "z": ("hiss", "dental"),
    "f": ("hiss", "labial"),
    "sh": ("hiss", "palatal"),
    "zh": ("hiss", "palatal"),
    "h": ("breath", ""),
    "": ("", ""),
}
LETTERS = {c: c for c in MADE}
LETTERS |= {"th": "t", "tt": "T", "tth": "Th", "dd": "D", "ddh": "D", "dh": "d", "gh": "g", "bh": "b", "jh": "j"}
LETTERS |= {"cch": "ch", "c": "ts", "cs": "ch", "dzh": "j", "gy": "j", "ty": "ch", "nh": "n", "nj": "n", "ny": "n"}
LETTERS |= {"gn": "n", "ng": "n", "nn": "n", "rr": "r", "ly": "l", "ll": "l", "lh": "l", "hl": "l", "w": "v"}
LETTERS |= {"sz": "s", "q": "k", "my": "m"}
OWN = {  # what a letter is in one language only
    "tn": {"g": "h"},
    "lt": {"j": "y", "s2": "sh", "z2": "zh", "dz2": "j"},
    "hu": {"j": "y", "s": "sh"},
    "nds": {"j": "y"},
    "pt_BR": {"j": "zh", "c": "k"},
    "it": {"c": "k"},
}
SOFT = {"it": {"c": "ch", "g": "j"}, "pt_BR": {"c": "s", "g": "zh"}}  # before e and i
# The first vowel of the word that a prompt is.
PROMPT_VOWELS = {
    "it": {
        "a": "4 14 40 k day-2 mon-2 mon-4",
        "e": "3 13 30 20 100 day-3 day-5 mon-0 mon-1 6 7",
        "i": "t 15 10 17 d mon-11 p b g 5 50 c",
        "o": "12 day-0 9 90 mon-10 day-4",
        "u": "q 2 v day-1 mon-5 mon-6",
    },
    "es": {
        "a": "4 14 40 k day-2 mon-2 mon-4",
        "e": "3 13 30 t d p p-m 20 b v day-3 day-5 mon-1 6 7",
        "i": "15 10 16 17 mon-11 5 50",
        "o": "2 12 day-0 90 mon-10",
        "u": "9 day-1 day-4 mon-5 mon-6",
    },
    "fr": {
        "a": "3 30 4 14 40 k day-2 day-5 mon-0 mon-2",
        "e": "13 t 15 2 d mon-11 9 day-1 day-3 day-4 p b 20 v g mon-1 mon-4 5 7",
        "i": "10 17 19 day-0 j 6",
        "o": "mon-10",
        "u": "12",
        "y": "q plus mon-5",
    },
}


def of(voice, name):
    """(consonant, vowel) of a sound of a voice, or None."""
    stem = re.sub(r"\.(ogg|wav|gsm)$", "", name)
    if voice.startswith("prompts-"):
        return of_prompt(voice[len("prompts-") :], stem)
    if voice.startswith("letters-"):
        return of_letters(stem, re.search(r"(?:klettres|lettres|ettres)-(\w+)-syllab", voice.replace("--", "-e-")))
    if voice.startswith("synthetic-"):
        sollu = stem.split(".")[0]
        return (voices.SYNTHETIC[sollu], re.search("[aeiou]", sollu).group())
    if voice == "syllables":
        return split(stem, "")
    return None


def of_prompt(language, stem):
    for vowel, words in PROMPT_VOWELS.get(language, {}).items():
        for consonant, names in voices.PROMPTS[language].items():
            if stem in words.split() and consonant in MADE and stem in [n.split("/")[-1] for n in names.split()]:
                return consonant, vowel
    return None


def of_letters(stem, language):
    return split(re.sub(r"^\d\d-", "", stem), language.group(1) if language else "")


def split(letters, language):
    """The consonant and the vowel that a syllable begins with."""
    found = re.match(r"((?:[sz]2|dz2|[^aeiouy\d])*)(y?)([aeiou]*)", letters)
    consonant, glide, vowel = found.groups()
    if glide and not consonant and vowel:
        consonant = "y"
    elif glide and not vowel:
        vowel = "y"
    elif glide and consonant + "y" in LETTERS and language == "hu":
        consonant += "y"
    if not vowel:
        return None
    if vowel[0] in "ei" and consonant in SOFT.get(language, {}):
        consonant = SOFT[language][consonant]
    else:
        consonant = OWN.get(language, {}).get(consonant, LETTERS.get(consonant))
    return None if consonant is None else (consonant, "e" if vowel.startswith("ae") else vowel[0])


def traits(consonant, vowel):
    """What a consonant and a vowel are made of."""
    return [t for t in MADE[consonant] if t] + ["vowel-" + vowel]
