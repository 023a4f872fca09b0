"""What is written by which command, and what is right of it."""
import os
import re
import shutil
import subprocess

import checks

SCORE = os.path.join(checks.SAMPLES, "tin-roof.loom")
TRACE = re.compile(r"\tat |Exception in|fault in the program|java\.lang\.|Exception:")
CONTROL = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]")


class Stage:
    """A recording, a spoken list, a voice on a shelf and a practice log that commands can take."""

    def __init__(self, folder):
        self.folder = folder
        self.take = self.at("take.wav")
        self.shelf = self.at("shelf")
        self.log = self.at("first.jsonl")
        self.classes = self.at("class")
        self.spoken = self.at("list.wav")
        checks.run(checks.PROGRAM, "render", SCORE, "-o", self.take, "--mono")
        words = "ta ka di mi ki na".split()
        heard = " ".join(word + " , . ." for word in words)
        checks.run(checks.PROGRAM, "sollus", "--hear", heard, "--length", "200", "-o", self.spoken)
        with open(self.at("list.txt"), "w") as sheet:
            sheet.write("\n".join(words) + "\n")
        checks.run(checks.PROGRAM, "voice", "make", "rain", self.spoken, "--owner", "Mira", "--consent",
                   "--shelf", self.shelf)
        for tempo in ("61.5", "66"):
            checks.run(checks.PROGRAM, "log", "add", "Tin Roof", "--tempo", tempo, "--log-file", self.log)
        os.mkdir(self.classes)
        shutil.copy(SCORE, self.classes)
        with open(self.at("sent.txt"), "w") as sent:
            sent.write("1) Tha dhi gi na thom x3 (15)\n")

    def at(self, name):
        return os.path.join(self.folder, name)

    def files(self):
        """Commands that write one file: a name for the target, and the words with {} for its path."""
        shelf = ("--shelf", self.shelf)
        return {
            "a.wav": ("render", SCORE, "-o", "{}", "--mono", "--rounds", "1"),
            "drill.wav": ("drill", "loop", SCORE, "--phrase", "Song", "-o", "{}", "--loops", "2", "--mono"),
            "slow.wav": ("take", SCORE, self.take, "--no-log", "--slowed", "50%", "-o", "{}"),
            "heard.wav": ("voice", "hear", "rain", "ta ka", "-o", "{}", *shelf),
            "said.wav": ("sollus", "--hear", "ta ka di mi", "-o", "{}"),
            "a.html": ("sheet", SCORE, "-o", "{}"),
            "a.pdf": ("sheet", SCORE, "-o", "{}"),
            "a.svg": ("sheet", SCORE, "-o", "{}"),
            "book.pdf": ("booklet", SCORE, SCORE, "-o", "{}"),
            "page.html": ("page", SCORE, "-o", "{}"),
            "a.mid": ("export", SCORE, "-o", "{}"),
            "a.musicxml": ("export", SCORE, "-o", "{}"),
            "a.csv": ("export", SCORE, "-o", "{}"),
            "tidy.loom": ("tidy", self.at("sent.txt"), "-o", "{}"),
            "five.loom": ("convert", SCORE, "--nadai", "5", "--apply", "1", "-o", "{}"),
            "log.csv": ("log", "--log-file", self.log, "--csv", "{}"),
            "log.svg": ("log", "--log-file", self.log, "--picture", "{}"),
            "take.svg": ("take", SCORE, self.take, "--no-log", "--picture", "{}"),
            "kit.svg": ("voice", "check", "rain", "--picture", "{}", *shelf),
            "rain.zip": ("voice", "share", "rain", "-o", "{}", *shelf),
        }

    def folders(self):
        """Commands that write a folder."""
        return {
            "pack": ("pack", SCORE, "-d", "{}", "--tempi", "100", "--mixes", "full", "--no-drills", "--wav"),
            "site": ("class", self.classes, "-o", "{}", "--no-phone"),
            "voices": ("voice", "make", "rain", self.spoken, "--consent", "--replace", "--shelf", "{}"),
        }


def words(command, target):
    return [checks.PROGRAM] + [word.replace("{}", target) for word in command]


def go(command, target, prefix=(), **options):
    """Runs a command; its code, what it printed, what it complained of."""
    done = subprocess.run([*prefix, *words(command, target)], capture_output=True, cwd=checks.HERE, **options)
    return done.returncode, done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace")


def tree(folder):
    """Every file of a folder with its bytes."""
    found = {}
    for where, _, names in os.walk(folder):
        for name in names:
            path = os.path.join(where, name)
            with open(path, "rb") as file:
                found[os.path.relpath(path, folder)] = file.read()
    return found


def parts(folder):
    """What a command that was broken off may have left."""
    return [name for name in tree(folder) if name.endswith(".part") or "/." in "/" + name and ".held" not in name]


class Tally:
    """Counts trials of one kind and says what is wrong with which."""

    def __init__(self, kind):
        self.kind, self.count, self.wrong, self.notes = kind, 0, 0, {}

    def held(self, good, text):
        self.count += 1
        if not good:
            self.wrong += 1
            print("not ok - %s: %s" % (self.kind, text[:700]), flush=True)

    def note(self, what):
        self.notes[what] = self.notes.get(what, 0) + 1

    def told(self):
        notes = "".join(", %d %s" % (count, what) for what, count in sorted(self.notes.items()))
        checks.report(self.wrong == 0 and self.count > 0,
                      "%s: %d looked at, %d wrong%s" % (self.kind, self.count, self.wrong, notes))
