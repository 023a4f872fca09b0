"""Titles, names, owners and archives that want to be something else."""
import csv
import io
import json
import os
import re
import shutil
import xml.etree.ElementTree as xml
import zipfile
from html.parser import HTMLParser

from placetrials.commands import CONTROL, TRACE, Tally, go, tree

TITLES = [
    "</title><script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "]]><script>alert(1)</script>", "'-alert(1)-'",
    "<!--", "&lt;b&gt;&#60;script&#62;", "</script><script>alert(1)//", "=1+1", "+1", "-1+cmd", "@SUM(1)", "\u2028\u2029",
    "\x1b]0;pwned\x07", "\x9b31m", "\u202egnp", "../../gone", "$(touch gone)", "{{7*7}}", "${7*7}", "javascript:alert(1)",
    "a\tb", "\\\"}],\"x\":[{\"", "%0d%0aSet-Cookie", "\u0000", "x" * 300,
]


def trials(stage, random, count):
    tally = Tally("injection by titles")
    for title in TITLES:
        one(tally, stage, title)
    tally.told()
    archives(stage)
    lists(stage)


def one(tally, stage, title):
    room = stage.at("evil")
    shutil.rmtree(room, ignore_errors=True)
    os.makedirs(os.path.join(room, "class"))
    score = os.path.join(room, "class", "evil.loom")
    with open(score, "w", encoding="utf-8") as file:
        file.write("title %s\ntala adi\ntempo 70\n\nA = takadimi\n\nperform\n  A x4\n" % title)
    log = os.path.join(room, "log.jsonl")
    runs = [
        ("check", score), ("check", score, "--json"), ("check", os.path.join(room, "class")), ("breaths", score),
        ("sheet", score), ("sheet", score, "-o", os.path.join(room, "a.html")), ("sheet", score, "-o", os.path.join(room, "a.svg")),
        ("export", score, "-o", os.path.join(room, "a.musicxml")), ("export", score, "-o", os.path.join(room, "a.csv")),
        ("export", score, "-o", os.path.join(room, "a.json")), ("export", score, "-o", os.path.join(room, "a.vtt")),
        ("page", score, "-o", os.path.join(room, "page.html")),
        ("pack", score, "-d", os.path.join(room, "pack"), "--tempi", "100", "--mixes", "voice", "--no-drills"),
        ("class", os.path.join(room, "class"), "-o", os.path.join(room, "site"), "--no-phone"),
    ]
    piece = title.replace("\x00", "")
    runs += [("log", "add", piece, "--tempo", "60", "--remark", piece, "--log-file", log), ("log", "--log-file", log),
             ("log", "--log-file", log, "--csv", os.path.join(room, "log.csv")),
             ("log", "--log-file", log, "--picture", os.path.join(room, "log.svg")), ("log", "--log-file", log, "--json")]
    for command in runs:
        code, out, err = go(command, "")
        tally.note("done" if code in (0, 1) else "refused")
        tally.held(code in (0, 1, 2) and not TRACE.search(err), "%s with %r: exit %d, %s" % (command[0], title, code, err))
        tally.held(not CONTROL.search(out + err), "%s with %r reaches the terminal: %r" % (command[0], title, CONTROL.findall(out + err)[:5]))
        if "--json" in command and code in (0, 1):
            json.loads(out)
    for name, content in tree(room).items():
        tally.held("gone" not in name, "%r made %s" % (title, name))
        looked_at(tally, name, content, title)
    tally.held(not os.path.exists(os.path.join(stage.folder, "gone")), "%r left the folder" % title)


def looked_at(tally, name, content, title):
    try:
        if name.endswith(".html"):
            page = Page()
            page.feed(content.decode("utf-8"))
            tally.held(not page.evil, "%s with %r: %s" % (name, title, page.evil))
        elif name.endswith((".svg", ".musicxml")):
            root = xml.fromstring(content)
            scripts = [each.tag for each in root.iter() if each.tag.endswith("script")]
            tally.held(not scripts, "%s with %r: %s" % (name, title, scripts))
        elif name.endswith(".json"):
            json.loads(content)
            tally.held(True, "")
        elif name.endswith(".csv"):
            cells = [cell for row in csv.reader(io.StringIO(content.decode("utf-8"))) for cell in row]
            formulas = [cell for cell in cells if re.match(r"[=+\-@\t\r]", cell) and not re.fullmatch(r"[-+]?[0-9./]+", cell)]
            tally.held(not formulas, "%s with %r: %s" % (name, title, formulas))
    except (ValueError, xml.ParseError) as broken:
        tally.held(False, "%s with %r is broken: %s" % (name, title, broken))


class Page(HTMLParser):
    """Looks for scripts and handlers that a title made; no page is without a policy."""

    def __init__(self):
        super().__init__()
        self.evil = []

    def handle_starttag(self, tag, attributes):
        if tag == "img" and ("src", "x") in attributes:
            self.evil.append(tag)
        self.evil += [key for key, value in attributes if key.startswith("on") and "alert" in (value or "")]
        self.evil += [value for key, value in attributes if key in ("href", "src") and (value or "").startswith("javascript")]
        self.inside = tag

    def handle_data(self, data):
        if getattr(self, "inside", "") == "script" and data.strip() in ("alert(1)", "alert(1)//"):
            self.evil.append(data)


def archives(stage):
    """Shared voices whose entries leave the folder, are links, are far larger than they look, or stand twice."""
    tally = Tally("archives of voices")
    good = stage.at("good.zip")
    go(("voice", "share", "rain", "-o", "{}", "--shelf", stage.shelf), good)
    with zipfile.ZipFile(good) as archive:
        entries = [(each.filename, archive.read(each)) for each in archive.infolist()]
    text = [each for each in entries if each[0].endswith(".txt")]
    sample = [each for each in entries if not each[0].endswith(".txt")][0]
    link = zipfile.ZipInfo(sample[0])
    link.external_attr = 0o120777 << 16
    made = {
        "up": entries + [("../gone.wav", b"x")],
        "absolute": entries + [("/tmp/gone.wav", b"x")],
        "windows": entries + [("..\\gone.wav", b"x"), ("C:\\gone.wav", b"x")],
        "folder": entries + [("sub/", b"")],
        "link": text + [(link, b"/etc/passwd")],
        "bomb": text + [(sample[0], bytes(1200 << 20))],
        "long text": [(text[0][0], b"sollu ta\n" * (4 << 20))],
        "many": text + [("s%d.wav" % at, b"") for at in range(6000)],
        "no text": entries[1:] if entries[0] in text else entries[:-1],
        "text names another": [(text[0][0], re.sub(rb"[\w-]+\.wav", b"../../etc/passwd", text[0][1]))] + entries[1:],
    }
    for kind, content in made.items():
        path = stage.at("made.zip")
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
            for name, data in content:
                archive.writestr(name, data)
        before = set(os.listdir("/tmp"))
        shelf = stage.at("received")
        code, _, err = go(("voice", "make", "got", path, "--shelf", "{}"), shelf)
        tally.held(code == 2 and not TRACE.search(err), "%s: exit %d, %s" % (kind, code, err))
        left = [each for each in set(os.listdir("/tmp")) - before if "matraloom" in each or "gone" in each]
        tally.held(not left and not (os.path.isdir(shelf) and os.listdir(shelf)), "%s left %s" % (kind, left))
    for name in ("../got", "/tmp/got", ".", "..", "", "a/b", "-x", "con\n"):
        code, _, err = go(("voice", "make", name, good, "--shelf", "{}"), stage.at("received"))
        tally.held(code == 2 and not TRACE.search(err), "the name %r: exit %d, %s" % (name, code, err))
    tally.told()


def lists(stage):
    """What a class, or a score, may name."""
    tally = Tally("names in lists")
    room = stage.at("named")
    shutil.copytree(stage.classes, room)
    secret = stage.at("secret.loom")
    shutil.copy(os.path.join(stage.classes, "tin-roof.loom"), secret)
    for line in ("piece ../secret level 1", "homework Nila | ../secret | 60", "title </title><script>alert(1)</script>",
                 "piece tin-roof level <b>1</b> tags =1+1,<script>", "homework <script>alert(1)</script> | tin-roof | 60 | <img src=x onerror=alert(1)>"):
        with open(os.path.join(room, "class.txt"), "w") as file:
            file.write(line + "\n")
        site = stage.at("site")
        shutil.rmtree(site, ignore_errors=True)
        code, _, err = go(("class", room, "-o", "{}", "--no-phone"), site)
        tally.held(code in (0, 2) and not TRACE.search(err), "%s: exit %d, %s" % (line, code, err))
        tally.held(code == 2 or "../secret" not in line, line + " was taken")
        for name, content in (tree(site) if code == 0 else {}).items():
            looked_at(tally, name, content, line)
    tally.told()
