"""Trials of places: full disks, kills, several writers, languages, clocks, and what stands in titles and names."""
