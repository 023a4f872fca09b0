"""Other languages, codings and names of files: the same bytes, and files where they were asked for."""
import os
import shutil

from placetrials.commands import CONTROL, SCORE, TRACE, Tally, go, tree

LANGUAGES = {
    "tr_TR": "-Duser.language=tr -Duser.country=TR",
    "ar_EG": "-Duser.language=ar -Duser.country=EG -Duser.extensions=u-nu-arab",
    "hi_IN": "-Duser.language=hi -Duser.country=IN -Duser.extensions=u-nu-deva",
    "th_TH": "-Duser.language=th -Duser.country=TH -Duser.variant=TH -Duser.extensions=u-ca-buddhist",
    "fa_IR": "-Duser.language=fa -Duser.country=IR",
    "de_DE": "-Duser.language=de -Duser.country=DE",
    "ja_JP_JP": "-Duser.language=ja -Duser.country=JP -Duser.variant=JP",
    "C": "-Dfile.encoding=US-ASCII -Dsun.jnu.encoding=ANSI_X3.4-1968",
    "UTF-16": "-Dfile.encoding=UTF-16",
}
NAMES = [
    "two words", "new\nline", "-o", "--help", "it's \"quoted\"", "rain \U0001f327", "n\u0303a\u0304", "\u202egnp", "$(touch gone)",
    "`touch gone`", "a;b&c|d", "%s%n", "back\\slash", "*", "~", "x" * 240, "\u0ba4\u0bbe" * 40, "CON", " ", ".hidden", "#",
]
PRINTED = [("check", SCORE), ("check", SCORE, "--json"), ("breaths", SCORE), ("fit", SCORE), ("events", SCORE), ("rebar", SCORE),
           ("talas",), ("sollus",)]


def trials(stage, random, count):
    languages(stage)
    names(stage)


def languages(stage):
    tally = Tally("languages and codings")
    commands = {name: each for name, each in stage.files().items() if not name.endswith((".wav", ".zip"))}
    chosen = {**commands, "a.wav": stage.files()["a.wav"]}
    expected = written(stage, chosen, os.environ, tally)
    for language, options in LANGUAGES.items():
        environment = dict(os.environ, JAVA_TOOL_OPTIONS=options, LC_ALL="C" if language == "C" else language + ".UTF-8")
        seen = written(stage, chosen, environment, tally)
        differs = [name for name in expected if seen.get(name) != expected[name]]
        tally.held(not differs, "%s changes %s" % (language, differs))
    tally.told()


def written(stage, commands, environment, tally):
    """Every file of the commands and every answer on the terminal, as bytes."""
    room = stage.at("languages")
    shutil.rmtree(room, ignore_errors=True)
    os.mkdir(room)
    for name, command in commands.items():
        code, _, err = go(command, os.path.join(room, name), env=environment)
        tally.held(code == 0 and not TRACE.search(err), "%s: exit %d, %s" % (name, code, err))
    seen = tree(room)
    for command in PRINTED:
        code, out, err = go(command, "", env=environment)
        tally.held(not TRACE.search(err), "%s: %s" % (command, err))
        seen[" ".join(command)] = out
    return seen


def names(stage):
    tally = Tally("names of files and folders")
    for name in NAMES:
        room = stage.at("names")
        shutil.rmtree(room, ignore_errors=True)
        os.mkdir(room)
        score = os.path.join(room, name + ".loom")
        shutil.copy(SCORE, score)
        runs = {
            name + ".html": ("sheet", score, "-o", "{}"),
            name + ".wav": ("render", score, "-o", "{}", "--mono", "--rounds", "1"),
            name + ".jsonl": ("log", "add", name, "--tempo", "60", "--log-file", "{}"),
            name: ("class", room, "-o", "{}", "--no-phone"),
        }
        for target, command in runs.items():
            wanted = os.path.join(room, target)
            code, out, err = go(command, wanted)
            tally.held(not TRACE.search(err), "%r: %s" % (target, err))
            tally.held(code in (0, 2), "%r: exit %d, %s" % (target, code, err))
            tally.held((code == 0) == os.path.exists(wanted), "%r: exit %d and %s" % (target, code, os.listdir(room)))
            tally.held(not CONTROL.search(out + err), "%r reaches the terminal: %r" % (target, (out + err)[:200]))
            tally.note("done" if code == 0 else "refused")
        tally.held(not os.path.exists("gone") and not os.path.exists(os.path.join(room, "gone")), "%r was run" % name)
    tally.told()
