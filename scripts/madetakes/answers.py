"""Asks the program about takes, some at a time, and keeps its answers by the jar that gave them."""

import concurrent.futures
import hashlib
import json
import os
import subprocess
import sys
import threading
import time

JAVA = ["java", "-Xmx1g", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"]


def fingerprint(*paths):
    digest = hashlib.sha256()
    for path in paths:
        with open(path, "rb") as file:
            digest.update(file.read())
    return digest.hexdigest()[:12]


def asked(jar, folder, name, kept, options=()):
    """The answer to one take, as a dictionary; {"failed": what was printed} if there is none."""
    stem = os.path.join(folder, name)
    path = os.path.join(kept, f"{name}-{fingerprint(stem + '.wav', stem + '.loom')}.json")
    if os.path.exists(path):
        with open(path, encoding="utf-8") as text:
            return json.load(text)
    told = subprocess.run(JAVA + ["-jar", jar, "take", stem + ".loom", stem + ".wav", "--json", "--no-log", *options],
                          capture_output=True, text=True)
    try:
        found = json.loads(told.stdout)
    except ValueError:
        found = {"failed": (told.stderr or told.stdout)[-400:], "exit": told.returncode}
    with open(path + ".part", "w", encoding="utf-8") as text:
        json.dump(found, text)
    os.replace(path + ".part", path)
    return found


def all_of(jar, folder, names, workers=2, options=()):
    """name -> answer, with a line of progress on the standard error output."""
    kept = os.path.join(folder, "answers-" + fingerprint(jar))
    os.makedirs(kept, exist_ok=True)
    found, lock, began = {}, threading.Lock(), time.time()

    def one(name):
        told = asked(jar, folder, name, kept, options)
        with lock:
            found[name] = told
            done = len(found)
            left = (time.time() - began) / done * (len(names) - done)
            if sys.stderr.isatty():
                print(f"\r# {done} of {len(names)} takes measured, about {left / 60:.1f} min left ", end="", file=sys.stderr, flush=True)
            elif done % 10 == 0:
                print(f"# {done} of {len(names)} takes measured, about {left / 60:.1f} min left", file=sys.stderr, flush=True)

    with concurrent.futures.ThreadPoolExecutor(workers) as pool:
        list(pool.map(one, names))
    if sys.stderr.isatty():
        print(file=sys.stderr)
    return found
