"""Takes that are made, so that all about them is known, and a judge of what is answered to them.

sounds    recordings of syllables and strokes, and where in each its sound begins, attacks, and opens
voices    the mouths and drums they come from
shapes    scores of many shapes, and the beat of every sollu in them, counted here
performance, faults   when each sollu is really said, and what a fair judge may answer
mixing    from a performance to sound: room, noise, claps, telephone
making, sets   which takes a set is made of
judging   answers of the program held against the truth
tables    sums of them

Nothing here knows how the program measures: only its scores, its command line and its answers.
"""
