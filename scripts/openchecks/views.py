"""Every view, for everyone: audited, zoomed, taken as pictures."""

import os
import shutil
import time

from checks import SAMPLES, report

from .axe import AUDIT, AXE
from .page import Page, enter, show
from .program import Program
from .scores import MISSING
from .session import MOUTH
from .sounds import made_takes
from .work import WORK


def views(page, program, visit):
    """Shows every view in turn."""
    visit("shelf-empty")
    shutil.copy(f"{SAMPLES}/gutter-song.loom", program.path("gutter-song.loom"))
    shutil.copy(f"{SAMPLES}/lantern-ferry.loom", program.path("lantern-ferry.loom"))
    with open(program.path("spout.loom"), "w", encoding="utf-8") as file:
        file.write(MISSING)
    with open(program.path("wrong.loom"), "w", encoding="utf-8") as file:
        file.write(MISSING.replace("takajunu takadimi", "takajunu blub"))
    page.script("window.dispatchEvent(new HashChangeEvent('hashchange'))")
    page.until("document.querySelectorAll('.strip').length === 4")
    visit("shelf")
    show(page, "spout.loom")
    page.click("#ask-repairs")
    page.until("document.querySelector('#repairs button')")
    visit("misses")
    show(page, "wrong.loom")
    page.until("document.getElementById('landing').textContent.startsWith('Line')")
    visit("wrong")
    show(page, "gutter-song.loom")
    page.until("document.getElementById('title').textContent === 'Gutter Song'")
    page.click("#versions")
    page.until("document.querySelector('.margin h2')")
    page.click("#hand-on")
    page.until("document.getElementById('jobs')")
    visit("hand-on")
    page.click("#past")
    page.until("document.querySelector('.margin h2')?.textContent === 'So far'")
    visit("past")
    page.click(".margin > button:last-of-type")
    if views.late:
        page.file("#take-file", views.late)
        page.until("document.querySelectorAll('#result .sentence').length", seconds=60)
        visit("take")
        page.script("document.querySelector('#result .row-of-verbs button:last-of-type').click()")
    page.script("""const piece = window.matraloom.piece();
      const start = piece.rounds.find((round) => round.nadai === 5).start;
      const marks = window.matraloom.sheet.marks();
      marks[marks.findIndex((mark) => mark.beat >= start - 4)].element.click();
      marks[marks.length - 1].element.dispatchEvent(new MouseEvent('click', { bubbles: true, shiftKey: true }));""")
    page.script("document.getElementById('count-in').value = 0")
    page.click("#loop")
    page.until("document.querySelector('.paper .now')")
    page.until("document.querySelector('.coming')?.textContent", seconds=8)
    visit("hear")
    page.script("document.getElementById('stage').click()")
    time.sleep(0.5)
    visit("stage")
    page.keys("\ue00c")
    page.script("document.getElementById('wall').click()")
    time.sleep(0.5)
    visit("wall")
    page.keys("\ue00c")
    page.script("document.activeElement.blur()")
    page.keys("?")
    visit("keys")
    page.keys("?")
    page.script("window.matraloom.hear.stop()")
    page.click("#tap-rhythm")
    page.until("document.getElementById('tap-pad')")
    visit("tap")
    page.script("window.matraloom.hear.stop()")


def check_everyone(width, height):
    """Each view at one width, in light and in dark."""
    views.late = made_takes(open(f"{SAMPLES}/gutter-song.loom", encoding="utf-8").read())[1]
    with Program(os.path.join(WORK, f"everyone-{width}")) as program, Page(width, height) as page:
        page.call("POST", "/goog/cdp/execute", {"cmd": "Page.setBypassCSP", "params": {"enabled": True}})
        enter(page, program)
        grounds = {}

        def visit(view):
            for scheme in ("dark", "light"):
                page.call("POST", "/goog/cdp/execute", {"cmd": "Emulation.setEmulatedMedia", "params": {
                    "features": [{"name": "prefers-color-scheme", "value": scheme}]}})
                look = f"{view} at {width} px, {scheme}"
                found = page.wait_script(AUDIT, AXE.rules)
                report(not found, f"axe-core finds nothing at WCAG 2.2 AA on {look} {found or ''}")
                wide = page.script("return document.documentElement.scrollWidth")
                report(wide <= width, f"nothing is wider than the screen on {look} ({wide})")
                grounds[view, scheme] = page.script("return getComputedStyle(document.body).backgroundColor")

        views(page, program, visit)
        dark, light = grounds["shelf", "dark"], grounds["shelf", "light"]
        report(dark != light, f"light and dark have grounds of their own: {light}, {dark}")


def check_zoom():
    """A window of 1280 by 900 at 200 % (WCAG 2.2, 1.4.4 and 1.4.10), for somebody who wants nothing to move."""
    views.late = made_takes(open(f"{SAMPLES}/gutter-song.loom", encoding="utf-8").read())[1]
    with Program(os.path.join(WORK, "zoom")) as program, Page(zoom=2) as page:
        page.call("POST", "/goog/cdp/execute", {"cmd": "Emulation.setEmulatedMedia", "params": {
            "features": [{"name": "prefers-reduced-motion", "value": "reduce"}]}})
        enter(page, program)

        def visit(view):
            wide, cut = page.script("""return [document.documentElement.scrollWidth,
              [...document.querySelectorAll('button, label, h1, h2, p, select')]
                .filter((each) => each.offsetParent && !each.closest('.vh') && each.scrollWidth > each.clientWidth + 1
                  && getComputedStyle(each).overflow !== 'visible')
                .map((each) => each.textContent.slice(0, 40))]""")
            report(wide <= 640, f"at 200 % nothing is wider than the screen on {view} ({wide} of 640)")
            report(not cut, f"at 200 % no words are cut on {view} {cut or ''}")

        views(page, program, visit)
        show(page, "lantern-ferry.loom")
        page.click("#play")
        report(page.until("window.matraloom.hear.playing()?.place().beat > 2"), "it plays for somebody who wants nothing to move")
        first = page.script("return [document.getAnimations().length, document.querySelector('.now')?.textContent ?? '']")
        report(first[0] == 0 and first[1], f"and nothing moves of itself; what is said now is lit all the same: {first}")


def take_pictures(folder):
    os.makedirs(folder, exist_ok=True)
    views.late = made_takes(open(f"{SAMPLES}/gutter-song.loom", encoding="utf-8").read())[1]
    for name, width, height, dark in (("wide", 1280, 800, False), ("phone-dark", 390, 844, True)):
        with Program(os.path.join(WORK, f"pictures-{name}", "rain")) as program, Page(width, height, dark) as page:
            enter(page, program)
            views(page, program, lambda view: page.picture(os.path.join(folder, f"{view}-{name}.png")))
            # A session whose first pass is clean.
            show(page, "gutter-song.loom")
            page.wait_script(MOUTH, 1)
            page.click("#session")
            page.until("document.getElementById('session-begin')")
            page.fill("#goal", "120")
            page.fill("#session-from", "120")
            page.click("#only-whole")
            page.click("#session-begin")
            page.until("document.querySelectorAll('#passes li').length === 1", seconds=90)
            page.picture(os.path.join(folder, f"practise-{name}.png"))
            page.keys("q")
