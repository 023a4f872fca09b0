"""Sums of judged takes: one line for each kind, and those that are wrong."""

import collections


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
    return {
        "takes": len(rows),
        "faulty": len(faulty),
        "named": sum(r["named"] for r in faulty),
        "clean": len(clean),
        "blamed": sum(not r["named"] for r in clean),
        "doubt": sum(r["kind"] == "doubt" for r in rows),
        "flattered": sum(r["flattered"] for r in rows),
        "said": sum(r["said"] for r in pairs),
        "right": sum(r["right"] for r in pairs),
        "landings": len(off),
        "landing_median": percentile(off, 0.5),
        "landing_90": percentile(off, 0.9),
        "landing_95": percentile(off, 0.95),
        "advice": len(advice),
        "advice_right": sum(advice),
    }


HEAD = (
    f"{'':26} {'takes':>5} {'named':>9} {'blamed':>8} {'doubt':>5} {'flatt.':>6} {'paired %':>8} "
    f"{'landing off ms: median 90 % 95 %':>33} {'advice':>8}"
)


def line(title, rows):
    s = summary(rows)
    share = f"{100 * s['right'] / s['said']:8.2f}" if s["said"] else " " * 8
    off = f"{s['landing_median']:15.1f} {s['landing_90']:8.1f} {s['landing_95']:8.1f}" if s["landings"] else " " * 33
    named_, blamed = f"{s['named']}/{s['faulty']}", f"{s['blamed']}/{s['clean']}"
    counts = f"{s['takes']:5d} {named_:>9} {blamed:>8} {s['doubt']:5d} {s['flattered']:6d}"
    return f"{title:26} {counts} {share} {off} {s['advice_right']:4d}/{s['advice']}"


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
            true = " or ".join(f"{low:.0f} to {high:.0f}" for low, high in r["landing_true"])
            faults.append(f"landing told {r['landing_told']:.0f}, true {true}")
        if r["advised"] is False and r["named"]:
            faults.append("advice elsewhere")
        if faults:
            c = r["condition"]
            size = "" if r["size"] is None else f" {r['size']}"
            kind = "dense" if r["dense"] else "grouped"
            by = ("threes, " if c["threes"] else "") + c["placed_by"]
            noise = f", noise {c['snr']}" if c["snr"] else ""
            more = "".join(f", {name}" for name in ("claps", "room", "telephone") if c[name])
            lines.append(
                f"{r['name']} {r['fault']}{size} at {r['place']} of {r['sollus']} ({kind}, {c['voice']} by {by}, "
                f"{c['jitterMs']:.0f} ms{noise}{more}): {'; '.join(faults)} | {r['kind']}: {r['sentence']}"
            )
    return lines
