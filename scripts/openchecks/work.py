"""Where the files of a run go, and how much slower than alone things may go."""

import os

from checks import work_folder

WORK = work_folder()
# What a busy machine spoils is measured again before it is judged.
MEASUREMENTS = 3


def slack():
    """How much slower than alone things may go where other work wants the processors too."""
    return max(1.0, os.getloadavg()[0] / os.cpu_count())
