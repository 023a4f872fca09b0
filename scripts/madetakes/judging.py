"""Answers of the program held against the truth, as a fair listener with the truth in hand would."""

import collections
import re

PAIRED_SECONDS = 0.040
CLEAN = ("none", "odd-ends", "added")

# What the sentence about the one thing that went wrong says. The first that fits counts.
SENTENCES = [
    ("doubt", r"cannot tell how it went|cannot be judged"),
    ("unsure", r"cannot tell which|I cannot tell"),
    ("landing", r"^It (?:does|may) not land(?!.*(?:ran away|dragg|drift))"),
    ("clean", r"Nothing is out of its place"),
    ("not-heard", r"landing was not heard"),
    ("old-speed", r"kept the speed"),
    ("limping", r"limped"),
    ("rushed", r"rushed"),
    ("restart", r"broke off|began again"),
    ("wait", r"[Yy]ou waited|waited [\d.]+ s"),
    ("slip", r"displaced|matras? too (?:few|many)|matras? (?:was|were) (?:left out|put in)"),
    ("landing-change", r"nadai.*% (?:slow|quick).*arrived"),
    ("change", r"nadai.*% (?:slow|quick)|times as fast"),
    ("uneven", r"^Matra .* as a rule"),
    (
        "first-missing",
        r"begin(?:s|ning)? .*(?:not said|missing)|first (?:\d+ )?sollus? (?:was|were|is|are) (?:not|missing)"
        r"|[Tt]he first .*not said",
    ),
    ("missing", r"not (?:heard|said)"),
    (
        "landing-drift",
        r"(?:land|arriv|last sollu).*(?:ran|drag|drift|tempo|pulse|slower|quicker)"
        r"|(?:ran|drag|drift|slower|quicker|tempo|pulse).*(?:land|arriv)",
    ),
    ("landing", r"land|last sollu|arriv"),
    ("drift", r"ran away|dragg|drift|tempo|slow|quick"),
    ("part", r"recording (?:ends|begins)"),
]


def kind_of(sentence):
    for kind, pattern in SENTENCES:
        if re.search(pattern, sentence or ""):
            return kind
    return "other"


def sign_of(kind, sentence, answer):
    if kind == "slip" and answer.get("slips"):
        return 1 if answer["slips"][0]["seconds"] > 0 else -1
    if re.search(r"too few", sentence):
        return -1
    if re.search(r"too many|waited", sentence):
        return 1
    if kind == "drift" or kind == "landing-drift":
        percent = answer["pulse"]["driftPercent"] if answer.get("pulse") else 0
        return (percent > 0) - (percent < 0)
    if re.search(r"\blate\b|\bslow\b", sentence):
        return 1
    if re.search(r"\bearly\b|\bquick\b", sentence):
        return -1
    return 0


def places_of(kind, sentence, answer, truth):
    """Places the sentence speaks of: exact where the answer has them, else all of the round and phrase it names."""
    if kind in ("slip", "wait") and answer.get("slips"):
        return {slip["place"] for slip in answer["slips"][:1]}
    if kind in ("missing", "first-missing") and answer.get("missed"):
        return set(answer["missed"])
    found = re.search(r"round (\d+)", sentence)
    if not found:
        return None
    round_ = int(found.group(1))
    phrase = re.search(r"\" of (\w+)", sentence)
    return {
        i
        for i, p in enumerate(truth["places"])
        if p["round"] == round_ and (phrase is None or p["phrase"] == phrase.group(1) or p["sollu"] == "")
    }


def fits(accepted, kind, sign, places):
    if accepted["kind"] == "clean-but-missed":
        return False
    if accepted["kind"] != kind or (accepted["sign"] and sign and accepted["sign"] != sign):
        return False
    return places is None or any(accepted["from"] <= p <= accepted["to"] for p in places)


def told(answer):
    sentence = answer.get("wrong") or ""
    return kind_of(sentence), sentence


def named(truth, answer):
    kind, sentence = told(answer)
    sign, places = sign_of(kind, sentence, answer), places_of(kind, sentence, answer, truth)
    if (
        kind == "landing"
        and "landing-drift" in {a["kind"] for a in truth["accept"]}
        and truth["fault"]["name"] == "drift"
    ):
        return True
    if any(fits(a, kind, sign, places) for a in truth["accept"]):
        return True
    part = [a for a in truth["accept"] if a["kind"] == "part"]
    if part and answer.get("recorded") and kind in ("clean", "part"):
        return True
    single = [a for a in truth["accept"] if a["kind"] == "clean-but-missed"]
    return (
        bool(single)
        and kind == "clean"
        and any(single[0]["from"] <= p <= single[0]["to"] for p in answer.get("missed", []))
    )


def paired(truth, answer):
    """(sollus rightly paired, sollus that were said and recorded, of the answer those wrongly paired)

    Rightly: from 40 ms before the audible start to 40 ms after the vowel opens, and nearer to this sound than
    to the next.
    """
    at = collections.defaultdict(list)
    sounds = truth["sounds"]
    for number, sound in enumerate(sounds):
        before = sound["attack"] - sounds[number - 1]["attack"] if number else 9
        opens = max(sound["vowel"] - sound["attack"], 0)
        after = sounds[number + 1]["attack"] - sound["attack"] if number + 1 < len(sounds) else 9
        low = max(sound["start"] - sound["attack"] - PAIRED_SECONDS, -max(PAIRED_SECONDS, before / 2))
        high = min(opens + PAIRED_SECONDS, max(PAIRED_SECONDS, (opens + after) / 2))
        if sound["place"] is not None:
            at[sound["place"]].append((sound["attack"] + low, sound["attack"] + high))
    right, wrong = set(), 0
    for sollu in answer.get("sollus", []):
        here = [low <= sollu["onsetSeconds"] <= high for low, high in at.get(sollu["place"], [])]
        if any(here):
            right.add(sollu["place"])
        else:
            wrong += 1
    return len(right), len(at), wrong


def landing_off(truth, answer):
    """By how many ms the landing error told is off, or None if it cannot be compared."""
    landing = answer.get("landing")
    if not landing or landing.get("errorSeconds") is None or not truth["landing_ms"] or not truth["landing_known"]:
        return None
    said = 1000 * landing["errorSeconds"]
    return min((max(low - said, said - high, 0) for low, high in truth["landing_ms"]))


def advised(truth, answer):
    """Whether the advice is for the phrase or join of the fault; None where there is no such place."""
    fault = truth["fault"]
    if fault.get("place") is None or not answer.get("practice"):
        return None
    text = answer["practice"]
    last = fault.get("last_place", fault["place"])
    near = truth["places"][max(0, fault["place"] - 1) : last + 2]
    phrases, rounds = {p["phrase"] for p in near}, {p["round"] for p in near}
    found = re.search(r"into round (\d+)", text)
    if found:
        return int(found.group(1)) in rounds
    names = {p["phrase"] for p in truth["places"]}
    spoken = {name for name in names if re.search(rf"\b{name}\b", text)}
    return bool(spoken & phrases) if spoken else True


def row(truth, answer):
    kind, sentence = told(answer)
    right, said, wrong = paired(truth, answer)
    clean = truth["fault"]["name"] in CLEAN
    lands = bool(answer.get("lands"))
    off = truth["last_off_ms"]
    result = {
        "name": truth["name"],
        "fault": truth["fault"]["name"],
        "size": truth["fault"].get("size"),
        "place": truth["fault"].get("place"),
        "dense": truth["score"]["dense"],
        "matra": "under 0.15" if 15 / truth["bpm"] < 0.15 else "under 0.2" if 15 / truth["bpm"] < 0.2 else "longer",
        "sollus": truth["score"]["sollus"],
        "condition": truth["condition"],
        "kind": kind,
        "sentence": sentence or answer.get("failed", ""),
        "recorded": answer.get("recorded"),
        "clean": clean,
        "named": named(truth, answer) and "failed" not in answer,
        "flattered": lands and True not in truth["lands"],
        "lands": lands,
        "lands_right": lands in truth["lands"],
        "right": right,
        "said": said,
        "wrong": wrong,
        "pairs_count": not truth.get("alike"),
        "landing_off": None if kind == "doubt" else landing_off(truth, answer),
        "last_off_ms": off,
        "landing_told": (
            1000 * answer["landing"]["errorSeconds"]
            if answer.get("landing") and answer["landing"].get("errorSeconds") is not None
            else None
        ),
        "landing_true": truth["landing_ms"],
        "advised": advised(truth, answer),
    }
    return result
