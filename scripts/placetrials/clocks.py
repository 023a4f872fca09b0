"""Odd clocks and time zones: what has no date is the same, and the log is in order or says so."""
import json
import os
import shutil

import checks
from placetrials.commands import SCORE, TRACE, Tally, go, tree

ZONES = ["UTC", "Asia/Kathmandu", "Pacific/Chatham", "Pacific/Kiritimati", "America/St_Johns", "XYZ-13:37", "Nowhere/Else", ""]
TIMES = ["1970-01-01 00:00:01", "1999-12-31 23:59:58", "2038-01-19 03:14:08", "2106-02-07 06:28:17", "2250-06-01 12:00:00",
         "2026-03-29 01:59:59", "2026-10-25 02:59:59", "2024-02-29 12:00:00"]


def trials(stage, random, count):
    tally = Tally("clocks and time zones")
    if not shutil.which("faketime"):
        tally.held(False, "faketime is not installed")
        tally.told()
        return
    expected = written(stage, tally, [], {})
    for zone in ZONES:
        differs = written(stage, tally, [], {"TZ": zone})
        tally.held(differs == expected, "zone %r changes what has no date" % zone)
    for time in TIMES:
        zone = random.choice(["Europe/Vienna", "UTC", "Asia/Kolkata"])
        differs = written(stage, tally, at(time), {"TZ": zone})
        tally.held(differs == expected, "the time %s changes what has no date" % time)
    log = stage.at("clocks.jsonl")
    for turn in range(count):
        order = random.sample(TIMES, len(TIMES))
        for time in order:
            code, _, err = timed(("log", "add", "Tin Roof", "--tempo", "60", "--log-file", "{}"), log, at(time), {"TZ": "Europe/Vienna"})
            tally.held(code == 0 and not TRACE.search(err), "a record at %s: exit %d, %s" % (time, code, err))
    with open(log, encoding="utf-8") as file:
        records = [json.loads(line) for line in file]
    tally.held(len(records) == count * len(TIMES), "%d records of %d" % (len(records), count * len(TIMES)))
    for command in (("log",), ("log", "--json"), ("log", "--csv", "-")):
        for time in ("2026-12-01 12:00:00", "1970-01-01 00:00:01"):
            code, out, err = timed((*command, "--log-file", "{}"), log, at(time), {"TZ": "Asia/Kathmandu"})
            tally.held(code == 0 and not TRACE.search(err) and "Tin Roof" in out, "%s at %s: exit %d, %s" % (command, time, code, err))
    code, out, err = go(("log", "--json", "--log-file", "{}"), log)
    tally.note("records read back") if code == 0 and json.loads(out) else tally.held(False, err)
    tally.told()


def at(time):
    return ["faketime", "-f", "@" + time]


def timed(command, target, before, environment):
    done = dict(os.environ, NO_FAKE_STAT="1", FAKETIME_DONT_FAKE_MONOTONIC="1", **environment)
    code, out, err = go(command, target, env=done, prefix=before)
    return code, out, err


def written(stage, tally, before, environment):
    room = stage.at("clocks")
    shutil.rmtree(room, ignore_errors=True)
    os.mkdir(room)
    for name in ("a.html", "a.mid", "a.musicxml", "a.csv", "a.svg"):
        code, _, err = timed(stage.files()[name], os.path.join(room, name), before, environment)
        tally.held(code == 0 and not TRACE.search(err), "%s at %s %s: exit %d, %s" % (name, before, environment, code, err))
    seen = tree(room)
    seen["check"] = timed(("check", SCORE), "", before, environment)[1]
    return seen
