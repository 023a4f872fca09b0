"""Asks the program about takes, some at a time, and keeps its answers by the jar that gave them."""

import concurrent.futures
import hashlib
import json
import os
import queue
import subprocess
import sys
import threading
import time

SOURCE = os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "ManyTakes.java")
JAVA = ["java", "-Xmx1500m", "-XX:+UseSerialGC", "-Xshare:auto"]


def fingerprint(*paths):
    digest = hashlib.sha256()
    for path in paths:
        with open(path, "rb") as file:
            digest.update(file.read())
    return digest.hexdigest()[:12]


def read(path):
    with open(path, encoding="utf-8") as text:
        whole = text.read()
    try:
        return json.loads(whole)
    except ValueError:
        return {"failed": whole[-400:]}


class Program:
    """The program in a process that measures one take after another by its own command line."""

    def __init__(self, jar):
        self.process = subprocess.Popen(
            JAVA + ["-cp", jar, SOURCE], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
        )

    def take(self, stem, path, options=()):
        self.process.stdin.write("\t".join([stem + ".loom", stem + ".wav", path, *options]) + "\n")
        self.process.stdin.flush()
        if self.process.stdout.readline().strip() != "done":
            raise RuntimeError(f"the program ended while it measured {stem}.wav")

    def close(self):
        self.process.stdin.close()
        self.process.wait()


def fresh(jar, stem, path):
    """The same in a process of its own."""
    told = subprocess.run(
        ["java", "-XX:TieredStopAtLevel=1", "-jar", jar, "take", stem + ".loom", stem + ".wav", "--json", "--no-log"],
        capture_output=True,
        text=True,
    )
    with open(path + ".part", "w", encoding="utf-8") as text:
        text.write(told.stdout or told.stderr)
    os.replace(path + ".part", path)


def all_of(jar, folder, names, workers=2, apart=False, options=()):
    """name -> answer, with a line of progress on the standard error output. `apart`: a process for each take.
    `options`: more words of the command line, not with `apart`."""
    kits = [fingerprint(path) for path in (os.path.join(word, "voice.txt") for word in options) if os.path.exists(path)]
    asked_with = "-" + hashlib.sha256(" ".join([*options, *kits]).encode()).hexdigest()[:6] if options else ""
    kept = os.path.join(folder, "answers-" + fingerprint(jar) + asked_with)
    os.makedirs(kept, exist_ok=True)
    found, lock, began = {}, threading.Lock(), time.time()
    paths = {
        name: os.path.join(
            kept, f"{name}-{fingerprint(*(os.path.join(folder, name) + end for end in ('.wav', '.loom')))}.json"
        )
        for name in names
    }
    for name in names:
        if os.path.exists(paths[name]):
            found[name] = read(paths[name])
    asked = [name for name in names if name not in found]
    count = 0
    idle = queue.Queue()
    for _ in range(min(workers, len(asked))):
        idle.put(None)

    def one(name):
        nonlocal count
        stem = os.path.join(folder, name)
        program = idle.get()
        try:
            if apart:
                fresh(jar, stem, paths[name])
            else:
                program = program or Program(jar)
                program.take(stem, paths[name], options)
        finally:
            idle.put(program)
        with lock:
            found[name] = read(paths[name])
            count += 1
            left = (time.time() - began) / count * (len(asked) - count) / 60
            if sys.stderr.isatty() or count % 10 == 0 or count == len(asked):
                end = "" if sys.stderr.isatty() else "\n"
                print(
                    f"{chr(13) if not end else ''}# {count} of {len(asked)} takes measured, about {left:.1f} min left ",
                    end=end,
                    file=sys.stderr,
                    flush=True,
                )

    try:
        with concurrent.futures.ThreadPoolExecutor(workers) as pool:
            list(pool.map(one, asked))
    finally:
        while not idle.empty():
            program = idle.get()
            if program is not None:
                program.close()
    if asked and sys.stderr.isatty():
        print(file=sys.stderr)
    return found
