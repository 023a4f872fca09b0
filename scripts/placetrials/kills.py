"""kill -9 at random moments: the target is what it was or the whole new one, and the next run does it."""
import json
import os
import shutil
import signal
import subprocess
import time

import checks
from placetrials.commands import SCORE, TRACE, Tally, go, parts, tree, words


def trials(stage, random, count):
    tally = Tally("kill -9")
    chosen = {name: stage.files()[name] for name in ("a.wav", "a.pdf", "a.html", "rain.zip")}
    for name, command in {**chosen, **stage.folders()}.items():
        one(tally, random, stage, name, command, count, name in stage.folders())
    logs(tally, random, stage, count)
    tally.told()


def killed(random, command, target, seconds):
    """Starts a command and kills it somewhere in the time that it takes; whether it was done before."""
    process = subprocess.Popen(words(command, target), cwd=checks.HERE, stdout=subprocess.DEVNULL,
                               stderr=subprocess.DEVNULL, start_new_session=True)
    time.sleep(random.uniform(0.05, 1) * seconds)
    done = process.poll() is not None
    try:
        os.killpg(process.pid, signal.SIGKILL)
    except ProcessLookupError:
        pass
    process.wait()
    return done


def one(tally, random, stage, name, command, count, is_folder):
    room = stage.at("killed-" + name)
    os.makedirs(room)
    target = os.path.join(room, name)
    begun = time.time()
    code, _, err = go(command, target)
    seconds = time.time() - begun
    tally.held(code == 0, name + " before any kill: " + err)
    whole = tree(room)
    for at in range(count):
        fresh = at % 2 == 0
        shutil.rmtree(room)
        os.makedirs(room)
        old = {}
        if not fresh and not is_folder:
            old = {name: b"what was there"}
            with open(target, "wb") as file:
                file.write(old[name])
        elif not fresh:
            restore(room, whole)
            old = whole
        done = killed(random, command, target, seconds)
        tally.note("done before the kill" if done else "killed")
        seen = tree(room)
        if not is_folder:
            allowed = (whole[name], old.get(name))
            tally.held(seen.get(name) in allowed, "%s is neither old nor whole after a kill" % name)
        elif name == "voices" and not fresh:
            code, out, err = go(("voice", "check", "rain", "--shelf", "{}"), target)
            tally.held(code == 0, "a voice that was being replaced: " + err)
        age(room)
        code, _, err = go(command, target)
        tally.held(code == 0 and not TRACE.search(err), "%s after a kill: exit %d, %s" % (name, code, err))
        now = tree(room)
        same = {path: now.get(path) == whole[path] for path in whole if not varies(path)}
        tally.held(all(same.values()), "%s after a kill and a run differs: %s" % (name, [p for p in same if not same[p]]))
        tally.held(not parts(room), "%s after a kill and a run left %s" % (name, parts(room)))


def varies(path):
    """Files that say when they were made, or hold what does."""
    return path.endswith((".pdf", "voice.txt", ".zip", "manifest.json"))


def restore(room, files):
    for path, content in files.items():
        os.makedirs(os.path.dirname(os.path.join(room, path)), exist_ok=True)
        with open(os.path.join(room, path), "wb") as file:
            file.write(content)


def age(room):
    """What is left over counts as forsaken after ten minutes."""
    for where, folders, names in os.walk(room):
        for name in folders + names:
            if name.startswith(".") or name.endswith(".part"):
                os.utime(os.path.join(where, name), (time.time() - 3600,) * 2)


def logs(tally, random, stage, count):
    log = stage.at("killed.jsonl")
    command = ("log", "add", "Tin Roof", "--tempo", "60", "--log-file", "{}")
    begun = time.time()
    go(command, log)
    seconds = time.time() - begun
    for _ in range(2 * count):
        killed(random, command, log, seconds)
        with open(log, "rb") as file:
            lines = file.read().split(b"\n")
        tally.held(all(is_record(line) for line in lines[:-1]), "a torn line in the log")
        code, _, err = go(("log", "--log-file", "{}"), log)
        tally.held(code == 0 and not err.strip(), "the log after a kill: " + err)


def is_record(line):
    try:
        return isinstance(json.loads(line), dict)
    except ValueError:
        return False
