"""Answers of the program held against the truth, as a fair listener with the truth in hand would."""

import collections
import re

PAIRED_SECONDS = 0.040
OFF_MS = 60
CLEAN = ("none", "odd-ends", "added")

# What the sentence about the one thing that went wrong says. The first that fits counts.
SENTENCES = [
    ("doubt", r"cannot tell how it went|cannot be judged"),
    ("unsure", r"cannot tell which|I cannot tell"),
    ("landing", r"^It does not land(?!.*(?:ran away|dragg|drift))"),
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
    ("first-missing", r"begin(?:s|ning)? .*(?:not said|missing)|first (?:\d+ )?sollus? (?:was|were|is|are) (?:not|missing)|[Tt]he first .*not said"),
    ("missing", r"not (?:heard|said)"),
    ("landing-drift", r"(?:land|arriv|last sollu).*(?:ran|drag|drift|tempo|pulse|slower|quicker)|(?:ran|drag|drift|slower|quicker|tempo|pulse).*(?:land|arriv)"),
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
    return {i for i, p in enumerate(truth["places"])
            if p["round"] == round_ and (phrase is None or p["phrase"] == phrase.group(1) or p["sollu"] == "")}


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
    if kind == "landing" and "landing-drift" in {a["kind"] for a in truth["accept"]} and truth["fault"]["name"] == "drift":
        return True
    if any(fits(a, kind, sign, places) for a in truth["accept"]):
        return True
    part = [a for a in truth["accept"] if a["kind"] == "part"]
    if part and answer.get("recorded") and kind in ("clean", "part"):
        return True
    single = [a for a in truth["accept"] if a["kind"] == "clean-but-missed"]
    return bool(single) and kind == "clean" and any(single[0]["from"] <= p <= single[0]["to"] for p in answer.get("missed", []))


def paired(truth, answer):
    """(sollus rightly paired, sollus that were said and recorded, of the answer those wrongly paired)

    Rightly: from 40 ms before the audible start to 40 ms after the vowel opens, and nearer to this sound than to the next.
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
    near = truth["places"][max(0, fault["place"] - 1): last + 2]
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
    lands = bool(answer.get("lands")) and kind not in ("doubt", "unsure")
    off = truth["last_off_ms"]
    result = {"name": truth["name"], "fault": truth["fault"]["name"], "size": truth["fault"].get("size"), "place": truth["fault"].get("place"),
              "dense": truth["score"]["dense"], "matra": "under 0.15" if 15 / truth["bpm"] < 0.15 else "under 0.2" if 15 / truth["bpm"] < 0.2 else "longer", "sollus": truth["score"]["sollus"], "condition": truth["condition"],
              "kind": kind, "sentence": sentence or answer.get("failed", ""), "recorded": answer.get("recorded"), "clean": clean,
              "named": named(truth, answer) and "failed" not in answer,
              "flattered": lands and True not in truth["lands"],
              "lands": bool(answer.get("lands")), "lands_right": bool(answer.get("lands")) in truth["lands"],
              "right": right, "said": said, "wrong": wrong, "pairs_count": not truth.get("alike"),
              "landing_off": None if kind == "doubt" else landing_off(truth, answer), "last_off_ms": off,
              "landing_told": 1000 * answer["landing"]["errorSeconds"] if answer.get("landing") and answer["landing"].get("errorSeconds") is not None else None,
              "landing_true": truth["landing_ms"], "advised": advised(truth, answer)}
    return result


def percentile(values, share):
    ordered = sorted(values)
    if not ordered:
        return float("nan")
    at = share * (len(ordered) - 1)
    low = int(at)
    high = min(low + 1, len(ordered) - 1)
    return ordered[low] + (at - low) * (ordered[high] - ordered[low])


def summary(rows):
    faulty, clean = [r for r in rows if not r["clean"]], [r for r in rows if r["clean"]]
    pairs = [r for r in rows if r["pairs_count"]]
    off = [r["landing_off"] for r in rows if r["landing_off"] is not None]
    advice = [r["advised"] for r in faulty if r["advised"] is not None and r["named"]]
    return {"takes": len(rows), "faulty": len(faulty), "named": sum(r["named"] for r in faulty), "clean": len(clean),
            "blamed": sum(not r["named"] for r in clean), "doubt": sum(r["kind"] == "doubt" for r in rows),
            "flattered": sum(r["flattered"] for r in rows), "said": sum(r["said"] for r in pairs), "right": sum(r["right"] for r in pairs),
            "landings": len(off), "landing_median": percentile(off, .5), "landing_90": percentile(off, .9),
            "landing_95": percentile(off, .95), "advice": len(advice), "advice_right": sum(advice)}


HEAD = f"{'':26} {'takes':>5} {'named':>9} {'blamed':>8} {'doubt':>5} {'flatt.':>6} {'paired %':>8} {'landing off ms: median 90 % 95 %':>33} {'advice':>8}"


def line(title, rows):
    s = summary(rows)
    share = f"{100 * s['right'] / s['said']:8.2f}" if s["said"] else " " * 8
    off = f"{s['landing_median']:15.1f} {s['landing_90']:8.1f} {s['landing_95']:8.1f}" if s["landings"] else " " * 33
    named_, blamed = f"{s['named']}/{s['faulty']}", f"{s['blamed']}/{s['clean']}"
    return f"{title:26} {s['takes']:5d} {named_:>9} {blamed:>8} {s['doubt']:5d} {s['flattered']:6d} {share} {off} {s['advice_right']:4d}/{s['advice']}"


def table(rows):
    lines = [HEAD, line("all", rows)]

    def split(title, key):
        values = collections.defaultdict(list)
        for r in rows:
            values[key(r)].append(r)
        lines.append("")
        lines.extend(line(f"{title} {value}", values[value]) for value in sorted(values, key=str))

    split("", lambda r: "dense" if r["dense"] else "grouped")
    split("fault", lambda r: r["fault"])
    split("voice", lambda r: r["condition"]["voice"])
    split("by", lambda r: "pa-ta-ka" if r["condition"]["threes"] else r["condition"]["placed_by"])
    split("noise", lambda r: r["condition"]["snr"] or "none")
    split("jitter", lambda r: f"{r['condition']['jitterMs']:4.0f} ms")
    split("claps", lambda r: r["condition"]["claps"])
    split("telephone", lambda r: r["condition"]["telephone"])
    split("matra s", lambda r: r["matra"])
    return "\n".join(text.rstrip() for text in lines)


def wrong_ones(rows):
    lines = []
    for r in rows:
        faults = []
        if r["flattered"]:
            faults.append("FLATTERED")
        if not r["named"]:
            faults.append("BLAMED" if r["clean"] else "NOT NAMED")
        if r["pairs_count"] and r["right"] < 0.97 * r["said"]:
            faults.append(f"paired {r['right']} of {r['said']}")
        if r["landing_off"] is not None and r["landing_off"] > 20:
            faults.append(f"landing told {r['landing_told']:.0f}, true {r['landing_true']}")
        if r["advised"] is False and r["named"]:
            faults.append("advice elsewhere")
        if faults:
            c = r["condition"]
            lines.append(f"{r['name']} {r['fault']} {r['size'] if r['size'] is not None else ''} at {r['place']} of {r['sollus']} "
                         f"({'dense' if r['dense'] else 'grouped'}, {c['voice']} by {'threes, ' if c['threes'] else ''}{c['placed_by']}, "
                         f"{c['jitterMs']:.0f} ms{', noise %s' % c['snr'] if c['snr'] else ''}{', claps' if c['claps'] else ''}"
                         f"{', room' if c['room'] else ''}{', telephone' if c['telephone'] else ''}): {'; '.join(faults)} | {r['kind']}: {r['sentence']}")
    return lines
