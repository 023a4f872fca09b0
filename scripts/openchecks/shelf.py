"""The shelf of scores."""

import os

from checks import report

from .page import Page, enter
from .program import Program
from .work import WORK

# What is far beyond these is broken; how quick the page is, bench-open measures on a quiet machine. Where it can
# be, the program's own processor time is judged and not the clock on the wall, which tells of other work too.
FIRST_PROCESSOR_SECONDS = 2


def check_shelf():
    with Program(os.path.join(WORK, "shelf")) as program, Page() as page:
        used = program.processor_seconds()
        report(used < FIRST_PROCESSOR_SECONDS, f"the address is printed {program.seconds:.2f} s after the start, with the page {used:.2f} s of "
               "processor time")
        enter(page, program)
        report("There is no score" in page.text("main"), "an empty folder offers the samples")
        page.choose("#sample", "gutter-song.loom")
        page.click("#take-sample")
        page.until("location.hash === '#score/gutter-song.loom'")
        report(page.until("document.getElementById('landing')?.textContent.startsWith('It lands')"),
               "a sample is copied and lands: " + page.text("#landing"))
        page.click(".home")
        page.until("document.querySelector('.strip')")
        page.click(".begin summary")
        page.fill("#pasted", "Tala: rupaka\n1) ta ka di mi | ta ka ju nu (8)\n")
        page.click("#take-paste")
        page.until("location.hash.startsWith('#score/pasted')")
        report("tala" in program.text("pasted.loom"), "a pasted text becomes a score")
        page.click(".home")
        page.until("document.querySelectorAll('.strip').length === 2")
        report("rupaka" in page.text(".strip[data-name='gutter-song.loom']"), "a strip tells the tala: "
               + page.text(".strip[data-name='gutter-song.loom']").replace("\n", " "))
        deeds = ".strip[data-name='pasted.loom'] .deeds"
        page.click(deeds + " summary")
        page.click(deeds + " button:nth-of-type(1)")
        report(page.until("document.querySelectorAll('.strip').length === 3") and os.path.exists(program.path("pasted-2.loom")),
               "a copy stands beside it")
        deeds = ".strip[data-name='pasted-2.loom'] .deeds"
        page.click(deeds + " summary")
        page.click(deeds + " button:nth-of-type(2)")
        page.fill(".rename input", "brook")
        page.click(".rename button")
        report(page.until("document.querySelector('.strip[data-name=\"brook.loom\"]')") and os.path.exists(program.path("brook.loom")),
               "it gets another name")
        deeds = ".strip[data-name='brook.loom'] .deeds"
        page.click(deeds + " summary")
        page.click(deeds + " button:nth-of-type(3)")
        page.until("document.querySelectorAll('.strip').length === 2")
        gone = not os.path.exists(program.path("brook.loom"))
        page.click(".bin summary")
        page.click(".bin button")
        report(gone and page.until("document.querySelectorAll('.strip').length === 3") and os.path.exists(program.path("brook.loom")),
               "it goes into the bin and comes back")
        page.choose("#by-tala", "rupaka")
        shown = page.script("return document.querySelectorAll('.strip').length")
        report(shown == 3, f"filtered by tala, {shown} of 3 strips of one tala are left")
        page.choose("#by-nadai", "5")
        shown = page.script("return [...document.querySelectorAll('.strip')].map((each) => each.dataset.name)")
        report(shown == ["gutter-song.loom"], f"by nadai, {shown}")
        page.choose("#by-nadai", "")
        page.fill("#by-length", "30")
        shown = page.script("return [...document.querySelectorAll('.strip')].map((each) => each.dataset.name)")
        report(len(shown) == 2 and "gutter-song.loom" not in shown, f"by length, {shown}")
        check_many(program, page)
        report(not page.faults(), f"the browser had no complaint {page.faults()}")
        report(program.end() in (0, 130), "Ctrl-C ends it")


def check_many(program, page):
    """Of hundreds of scores a hundred are shown at once; all are found by name."""
    for number in range(240):
        with open(program.path(f"stone-{number:03d}.loom"), "w", encoding="utf-8") as file:
            file.write(f"title Stone {number}\ntala adi\nSong = takadimi takajunu\nperform\n Song nadai 4\n")
    page.script("location.reload()")
    page.until("document.querySelector('.more button')")
    strips = "return document.querySelectorAll('.strip').length"
    shown = [page.script(strips)]
    while len(shown) < 5 and page.script("return document.querySelector('.more button') !== null"):
        page.click(".more button")
        shown.append(page.script(strips))
    report(shown == [100, 200, 243], f"of 243 scores {shown} are shown, press by press")
    page.fill("#by-name", "STONE 17")
    found = page.script("return [...document.querySelectorAll('.strip')].map((each) => each.dataset.name)")
    wanted = ["stone-017.loom"] + [f"stone-{number}.loom" for number in range(170, 180)]
    report(found == wanted, f"by name, {len(found)} of 243: {found[:2]} ...")
