"""A take recorded, measured and listened to."""

import json
import os
import shutil
import subprocess
import time

from checks import SAMPLES, read_wav, report

from .page import Page, enter, show
from .program import Program
from .sounds import LATE_MS, made_takes
from .work import MEASUREMENTS, WORK

MEASURED_PROCESSOR_SECONDS = 4


def check_take():
    with open(f"{SAMPLES}/gutter-song.loom", encoding="utf-8") as file:
        text = file.read()
    old_speed, late = made_takes(text)
    seconds = len(read_wav(old_speed)[1]) / 48_000
    with Program(os.path.join(WORK, "take")) as program, Page(take=old_speed) as page:
        shutil.copy(f"{SAMPLES}/gutter-song.loom", program.path("gutter-song.loom"))
        enter(page, program)
        show(page, "gutter-song.loom")
        page.click("#with-guide")
        for left in reversed(range(MEASUREMENTS)):
            page.click("#record")
            page.until("document.querySelector('.listen').dataset.recording === 'true'")
            moved = page.until("document.querySelector('meter').value > -40")
            time.sleep(seconds)
            before = program.processor_seconds()
            page.script("document.querySelector('#result').replaceChildren()")
            page.click("#record")
            page.until("document.querySelectorAll('#result .sentence').length", seconds=60)
            used = program.processor_seconds() - before
            told = page.text("#result")
            if moved and "kept the speed of the nadai before" in told or not left:
                break
            print("# heard through the microphone of a busy machine, and recorded again: " + " / ".join(told.splitlines()[1:5]))
        report(moved and "kept the speed of the nadai before" in told,
               "through the microphone: five said at the speed of four: " + " / ".join(told.splitlines()[1:5]))
        took = page.script("return Number(document.querySelector('.listen').dataset.measuredMs)")
        report(used <= MEASURED_PROCESSOR_SECONDS,
               f"a take of {seconds:.0f} s is measured {took} ms after it ends, in {used:.1f} s of processor time")
        page.file("#take-file", late)
        page.until("!document.querySelector('#result').textContent.includes('being measured') && "
                   "document.querySelectorAll('#result .sentence').length", seconds=60)
        page.until("document.getElementById('result').textContent.includes('late')", seconds=30)
        told = page.text("#result")
        command = subprocess.run(["./matraloom", "take", program.path("gutter-song.loom"), late, "--no-log", "--json"],
                                 capture_output=True, text=True)
        wrong = json.loads(command.stdout)["wrong"]
        report(wrong in told and "late" in told, f"a file: the last eight sollus {LATE_MS} ms late, with the words of take: {wrong}")
        shown = page.script("return document.querySelectorAll('#rows .off').length")
        far = page.script("return [...document.querySelectorAll('#rows .off.far')].map((each) => each.textContent)")
        report(shown > 100 and any(abs(int(one.replace("\u2212", "-")) - LATE_MS) < 15 for one in far if one != "?"),
               f"{shown} deviations stand on the sheet, and the wait at its place: {far} ms")
        page.cell(10)
        report(page.until("!document.getElementById('heard').paused && document.getElementById('heard').currentTime > 0"),
               "a click on a sollu plays that place of the take")
        page.click("#drill")
        report(page.until("document.getElementById('drill-sound')?.duration > 1", seconds=60), "the drill that is advised begins with one click")
        page.click("#past")
        page.until("document.querySelector('#tempi, .margin h2')")
        report(page.script("return document.querySelector('#result details').open === false"), "what was heard is folded meanwhile")
        report(page.until("document.getElementById('tempi')?.naturalWidth > 100"), "the log is shown as a picture")
        page.click("#compare")
        report(page.until("document.getElementById('compared')?.textContent.length > 100"),
               "two takes stand side by side: " + page.text("#compared").splitlines()[0])
        if Page.mouse:
            page.script("document.querySelector('#both-takes audio').play()")
        else:
            page.reach("#both-takes audio")
            page.keys(" ")
        page.until("document.querySelector('#both-takes audio').currentTime > 1")
        page.click("#hear-other")
        heard = page.until("(() => { const [a, b] = document.querySelectorAll('#both-takes audio'); return a.paused && b.currentTime > 1 && b.duration > 10 })()")
        report(heard, "and are heard: the other one goes on from the same place while the first is quiet")
        page.script("delete document.querySelector('.listen').dataset.measuredMs")
        page.file("#take-file", shutil.copy(late, late + "-again.wav"))
        page.click("#hand-on")
        page.until("document.querySelector('.listen').dataset.measuredMs", seconds=60)
        report(page.script("return document.querySelector('#margin [data-kind=midi]') !== null && !document.querySelector('#result details').open"),
               "what was opened while a take was being measured stays open, and the take is folded")
        page.click(".home")
        page.until("document.querySelector('.strip')")
        report("not yet" not in page.text(".strip"), "the shelf tells when it was practised: " + page.text(".strip dl").replace("\n", " "))
        report(not page.faults(), "the browser had no complaint")
