"""Scores that scenarios begin with."""

MISSING = "title Short Spout\ntala adi\ntempo 60\n\nSong = takadimi takajunu takadimi takajunu\n\nperform\n  Song nadai 5\n"
