"""Several processes at once on one log, one file, one folder."""
import json
import os
import subprocess

import checks
from placetrials.commands import Tally, TRACE, go, parts, tree, words
from placetrials.kills import varies


def trials(stage, random, count):
    tally = Tally("several writers")
    log = stage.at("shared.jsonl")
    adds = [("log", "add", "Piece %d" % at, "--new", "--tempo", "60", "--log-file", "{}") for at in range(8)]
    for _ in range(count):
        done = together(adds, log)
        tally.held(all(code == 0 for code, _ in done), "8 on one log: %s" % done)
    with open(log, encoding="utf-8") as file:
        pieces = [json.loads(line) for line in file]
    tally.held(len(pieces) == 8 * count, "%d records for %d runs" % (len(pieces), 8 * count))
    chosen = {name: stage.files()[name] for name in ("a.wav", "a.pdf", "rain.zip")}
    for name, command in {**chosen, **stage.folders()}.items():
        room = stage.at("shared-" + name)
        os.makedirs(room)
        target = os.path.join(room, name)
        go(command, target)
        whole = tree(room)
        for _ in range(max(1, count // 2)):
            done = together([command] * 3, target)
            tally.note("of a shared target told to wait or go elsewhere" if any(c for c, _ in done) else "all written")
            tally.held(not any(TRACE.search(err) for _, err in done), "%s by 3: %s" % (name, done))
            tally.held(any(code == 0 for code, _ in done), "%s by 3, none of them: %s" % (name, done))
            now = tree(room)
            differs = [path for path in whole if now.get(path) != whole[path] and not varies(path)]
            tally.held(not differs, "%s by 3 is torn: %s" % (name, differs))
            tally.held(not parts(room), "%s by 3 left %s" % (name, parts(room)))
    tally.told()


def together(commands, target):
    started = [subprocess.Popen(words(command, target), cwd=checks.HERE, stdout=subprocess.DEVNULL,
                                stderr=subprocess.PIPE) for command in commands]
    done = []
    for process in started:
        err = process.communicate()[1].decode("utf-8", "replace")
        done.append((process.returncode, err[:300]))
    return done
