"""The way through the page with the mouse left out."""

import os

from checks import report

from .page import CONTROL, ENTER, Page, RIGHT, SHIFT, TAB, enter, tab_to
from .program import Program
from .work import WORK


def check_keyboard():
    """From an empty folder to a stretch that is heard again and again, with the mouse left out."""
    with Program(os.path.join(WORK, "keyboard")) as program, Page() as page:
        enter(page, program)
        reached = tab_to(page, "#new-title")
        page.keys(*"Short Rain", TAB, ENTER)
        made = page.until("location.hash === '#score/short-rain.loom'")
        report(reached and made, "a piece is begun")
        page.until("document.querySelector('#sheet')?.dataset.drawn")
        report(tab_to(page, ".cm-content"), "the tabulator comes to the text")
        page.keys([CONTROL, "\ue010"])
        page.keys(*"  Song nadai 5")
        report(page.until("document.getElementById('landing').textContent.startsWith('It misses')"),
               "written on, it misses: " + page.text("#landing")[:60])
        page.keys("\ue00c")
        report(tab_to(page, "#rows"), "the tabulator leaves the text and comes to the cells")
        page.keys(RIGHT, RIGHT)
        page.keys([SHIFT, RIGHT], [SHIFT, RIGHT])
        chosen = page.script("return document.querySelectorAll('.paper .stretch').length")
        report(chosen == 3, f"{chosen} cells are chosen by arrow keys; told: {page.text('#told')}")
        page.keys(ENTER)
        report(page.until("document.activeElement?.matches('.cm-content')"), "enter goes to the text")
        report(tab_to(page, "#ask-repairs"), "the tabulator comes to the repairs")
        page.keys(ENTER)
        page.until("document.querySelector('#repairs button')")
        page.keys(TAB, ENTER)
        report(page.until("document.getElementById('landing').textContent.startsWith('It lands')"), "a repair is applied")
        page.script("document.activeElement.blur()")
        page.keys("l")
        report(page.until("window.matraloom.hear.playing()?.place().frame > 0"), "l plays the stretch")
        page.keys(" ")
        report(page.until("!window.matraloom.hear.playing()"), "space stops it")
