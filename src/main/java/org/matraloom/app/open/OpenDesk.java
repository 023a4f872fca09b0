package org.matraloom.app.open;

import org.matraloom.app.cli.Program;
import org.matraloom.log.PracticeLog;
import org.matraloom.score.Lexicon;
import org.matraloom.shelf.ScoreFolder;

/**
 * What all answers work with.
 *
 * @param scores the folder that is shown
 * @param lexicon the sollus to know
 * @param log the practice log
 * @param program runs commands
 * @param voice who says the sollus, as after --voice
 */
record OpenDesk(
    ScoreFolder scores, Lexicon lexicon, PracticeLog log, Program program, String voice) {}
