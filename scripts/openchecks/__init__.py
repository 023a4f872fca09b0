"""What the local page must do, scenario by scenario.

work       where the files of a run go, and how much slower than alone things may go.
program    matraloom open on a folder.
page       a page in Chromium, used as a person would, with the mouse or by keys alone.
axe        what axe-core finds on a page.
sounds     tracks and takes that are made.
scores     scores that scenarios begin with.
shelf      the shelf of scores.
writing    text and sheet, the landing and its repairs.
kept       nothing that was typed is lost.
hear       what is played, and where it is shown.
busy       play on a busy machine while somebody types.
take       a take recorded, measured and listened to.
handon     files that are handed on.
views      every view, for everyone: audited, zoomed, taken as pictures.
keyboard   the way through the page with the mouse left out.
tapped     a rhythm that is tapped.
keys       the keys of play.
roundtrip  the round trip, measured in the page.
session    a practice session in the page.
"""
