package org.matraloom.app.practise;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.sound.Passage;
import org.matraloom.sound.Sruti;
import org.matraloom.wav.PcmFormat;

/**
 * A drill that has been made.
 *
 * @param written its score
 * @param what what it is, in a few words
 * @param passages what is heard, one after another
 * @param remark what is hard or impossible to say in it, a sentence without a full stop
 * @param countInAvartanas avartanas counted before each
 * @param sruti the tonic of a drone
 * @param format how samples are handed on
 */
record MadeDrill(
    Composition written,
    String what,
    List<Passage> passages,
    Optional<String> remark,
    int countInAvartanas,
    Optional<Sruti> sruti,
    PcmFormat format) {}
