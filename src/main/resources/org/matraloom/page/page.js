"use strict";
(() => {
  const score = JSON.parse(document.getElementById("score").textContent);
  const sound = score.sound;
  const byId = (id) => document.getElementById(id);
  const rows = [...document.querySelectorAll(".row")];
  const cells = new Map(
    [...document.querySelectorAll(".beat")].map((cell) => [Number(cell.dataset.beat), cell]));
  const lastRow = score.rows.length - 1;
  const PAD_SECONDS = 0.3;
  const TAIL_SECONDS = 1.2;
  const SOFT_START_SECONDS = 1;
  const LEAD_TIME = 0.4;
  const NEAR = 1e-4;
  const JOIN_BEATS = 4;
  const PARTS = ["hand", "tick", "voice", "drone"];

  const state = {
    percent: score.percents.indexOf(100) >= 0 ? score.percents.indexOf(100) : 0,
    from: 0,
    to: lastRow,
    part: null,
    loop: false,
    step: 0,
    clean: 0,
    countIn: true,
    parts: { hand: true, tick: true, voice: true, drone: true },
    audible: true,
    playing: false,
  };
  let context = null;
  let gains = null;
  let sources = [];
  let run = null;
  let shown = { mark: -1, beat: null, row: -1, told: -1 };
  const decoded = [];

  // ---- sound

  const STEPS = (() => {
    const steps = [];
    for (let i = 0; i < 89; i++) {
      steps.push(sound ? sound.steps[i] : 0);
    }
    return steps;
  })();
  const SHIFTS = [-1, -1, -1, -1, 2, 4, 6, 8];

  /** Unpacks a clip: four bits a sample, each a step from the sample before. */
  function samplesOf(number) {
    if (decoded[number]) {
      return decoded[number];
    }
    const clip = sound.clips[number];
    const bytes = atob(clip.data);
    const samples = new Float32Array(clip.length);
    let value = 0;
    let index = clip.index;
    for (let i = 0; i < clip.length; i++) {
      const byte = bytes.charCodeAt(i >> 1);
      const code = i & 1 ? byte >> 4 : byte & 15;
      const step = STEPS[index];
      let change = step >> 3;
      if (code & 4) change += step;
      if (code & 2) change += step >> 1;
      if (code & 1) change += step >> 2;
      value += code & 8 ? -change : change;
      value = Math.max(-32768, Math.min(32767, value));
      index = Math.max(0, Math.min(88, index + SHIFTS[code & 7]));
      samples[i] = value / 32768;
    }
    decoded[number] = samples;
    return samples;
  }

  function openSound() {
    if (context || !sound) {
      return;
    }
    const Context = window.AudioContext || window.webkitAudioContext;
    if (!Context) {
      return;
    }
    context = new Context({ latencyHint: "interactive" });
    const limit = context.createWaveShaper();
    const curve = new Float32Array(2049);
    for (let i = 0; i < curve.length; i++) {
      const x = i / 1024 - 1;
      const over = Math.max(0, Math.abs(x) - 0.8);
      curve[i] = Math.sign(x) * (Math.min(Math.abs(x), 0.8) + 0.18 * Math.tanh(over / 0.18));
    }
    limit.curve = curve;
    limit.connect(context.destination);
    const master = context.createGain();
    master.connect(limit);
    gains = { master };
    for (const part of PARTS) {
      gains[part] = context.createGain();
      gains[part].connect(master);
    }
    setGains();
  }

  function setGains() {
    if (!gains) {
      return;
    }
    for (const part of PARTS) {
      const on = state.audible && state.parts[part];
      gains[part].gain.setTargetAtTime(on ? 1 : 0, context.currentTime, 0.01);
    }
  }

  const secondsPerBeat = () =>
    6000 / (score.tempo * score.percents[state.percent]);

  const frames = (beats) => Math.round(beats * secondsPerBeat() * sound.rate);

  /** Adds a clip whose felt beat falls on a frame; what falls outside a ring of frames goes round. */
  function add(buffer, number, frame, gain, ring) {
    const clip = samplesOf(number);
    const start = frame - sound.clips[number].lead;
    for (let i = 0; i < clip.length; i++) {
      let at = start + i;
      if (ring) {
        at = ((at % ring) + ring) % ring;
      }
      if (at >= 0 && at < buffer.length) {
        buffer[at] += gain * clip[i];
      }
    }
  }

  /** The tala that goes on at a beat, the beat of its cycle, and its kriya in the list of all. */
  const talaAt = (beat) => score.talas[Math.max(0, last(score.talas.map((each) => each.beat), beat))];
  const placeOf = (beat) => {
    const { beat: samam, cycle } = talaAt(beat);
    return (((beat - samam) % cycle) + cycle) % cycle;
  };
  const handAt = (beat) => talaAt(beat).first + placeOf(beat);

  /**
   * The sounds of a part between two beats, the first beat at frame `shift`; what is said only as far
   * as it is asked for.
   */
  function compose(part, from, to, length, shift, ring, say = [from, to]) {
    const asked = (beat) => beat >= say[0] - NEAR && beat < Math.min(to, say[1]) - NEAR;
    const buffer = new Float32Array(length);
    const place = (beat, number, gain) =>
      add(buffer, number, frames(beat - from) + shift, gain, ring);
    if (part === "hand") {
      for (let beat = Math.ceil(from); beat < to; beat++) {
        const stroke = sound.hand[handAt(beat)];
        if (stroke) {
          place(beat, stroke.clip, stroke.gain);
        }
      }
    } else if (part === "tick") {
      for (const beat of score.ticks) {
        if (asked(beat)) {
          place(beat, sound.tick.clip, sound.tick.gain);
        }
      }
    } else {
      const clips = sound.voice[state.percent];
      score.sollus.forEach((beat, index) => {
        if (asked(beat) && clips) {
          place(beat, clips[index], sound.voiceGain);
        }
      });
    }
    return buffer;
  }

  function schedule(part, samples, when, offset, loop) {
    const buffer = context.createBuffer(1, samples.length, sound.rate);
    buffer.copyToChannel(samples, 0);
    const source = context.createBufferSource();
    source.buffer = buffer;
    source.loop = loop;
    source.connect(gains[part]);
    source.start(when, offset);
    sources.push(source);
  }

  // ---- playing

  /**
   * What is played: whole beats, and what of them is said. In a round the tala is never broken: it goes
   * on in silence until it comes to the same beat again.
   */
  function region() {
    const rowsTo = score.rows[state.to] + talaAt(score.rows[state.to]).cycle;
    const say = state.part ? [state.part.from, state.part.to] : [score.rows[state.from], rowsTo];
    const from = Math.floor(say[0] + NEAR);
    const beats = Math.ceil(say[1] - NEAR) - from;
    const { cycle } = talaAt(from);
    const whole = state.part ? Math.ceil(beats / cycle) * cycle : beats;
    return { from, say, to: from + (state.loop || !state.part ? whole : beats) };
  }

  const playsToTheEnd = () => !state.loop && region().say[1] >= score.end - NEAR;

  /** What is heard now, in seconds of the clock that runs. */
  function clock() {
    if (run && run.silent) {
      return performance.now() / 1000;
    }
    return context.currentTime - (context.outputLatency || context.baseLatency || 0);
  }

  /** Starts at a beat of the region, or with the count-in before it. */
  function begin(beat) {
    silence();
    openSound();
    const { from, to, say } = region();
    const spb = secondsPerBeat();
    const silent = !context || context.state === "closed";
    const last = playsToTheEnd();
    const avartanas = from === score.rows[0] ? score.countIn : 1;
    const counted = beat === undefined && state.countIn ? avartanas * talaAt(from).cycle : 0;
    const at = beat === undefined ? from : beat;
    const time = silent ? performance.now() / 1000 : context.currentTime;
    const start = time + LEAD_TIME + counted * spb - (at - from) * spb;
    const length = sound ? frames(to - from) : 0;
    const seconds = sound ? length / sound.rate : (to - from) * spb;
    run = { silent, start, from, to, say, spb, seconds, loop: state.loop, counted, length, pass: 0 };
    state.playing = true;
    if (!silent) {
      context.resume();
      softStart(time);
      sounds(run, at, counted, last);
    }
    shown.told = -1;
    document.body.classList.add("playing");
    buttons();
    keepAwake();
  }

  function softStart(time) {
    gains.master.gain.cancelScheduledValues(time);
    gains.master.gain.setValueAtTime(0.5, time);
    gains.master.gain.linearRampToValueAtTime(1, time + LEAD_TIME + SOFT_START_SECONDS);
  }

  function sounds(playing, at, counted, last) {
    const { from, to, say, start, spb, length } = playing;
    const pad = Math.round(PAD_SECONDS * sound.rate);
    const tail = playing.loop ? 0 : Math.round(TAIL_SECONDS * sound.rate);
    const skipped = (at - from) * spb;
    for (const part of PARTS.slice(0, 3)) {
      const until = last && part === "hand" ? score.end + 0.001 : Math.min(to, score.end);
      const heardTo = playing.loop || part === "hand" ? (last ? until : to) : until;
      const once = compose(part, from, heardTo, pad + length + tail, pad, 0, say);
      schedule(part, once, start + skipped - (at === from ? PAD_SECONDS : 0),
        at === from ? 0 : PAD_SECONDS + skipped, false);
      if (playing.loop) {
        const ring = compose(part, from, to, length, 0, length, say);
        schedule(part, ring, start + playing.seconds, 0, true);
      }
    }
    if (score.drone) {
      sources.push(...drone());
    }
    if (counted) {
      for (const part of from === score.rows[0] ? ["hand", "voice"] : ["hand"]) {
        const lead = compose(part, from - counted, from, frames(counted) + tail + pad, 0, 0);
        schedule(part, lead, start - counted * spb, 0, false);
      }
    }
  }

  /** Sa, the fifth and the octave, each with its first overtones, as long as it plays. */
  function drone() {
    const wave = context.createPeriodicWave(
      new Float32Array(9), new Float32Array([0, 1, 0.7, 0.5, 0.35, 0.25, 0.18, 0.12, 0.08]));
    return [[1, 0.05], [1.5, 0.03], [2, 0.03]].map(([ratio, level]) => {
      const source = context.createOscillator();
      const gain = context.createGain();
      gain.gain.value = level;
      source.setPeriodicWave(wave);
      source.frequency.value = score.drone * ratio;
      source.connect(gain);
      gain.connect(gains.drone);
      source.start();
      return source;
    });
  }

  function silence() {
    for (const source of sources) {
      source.stop();
      source.disconnect();
    }
    sources = [];
  }

  function stop() {
    silence();
    state.playing = false;
    state.clean = 0;
    run = null;
    document.body.classList.remove("playing");
    clear();
    buttons();
  }

  const toggle = () => (state.playing ? stop() : begin());

  /** Where it is: the beat, how often the loop has come round, and whether it is still counting. */
  function position(now = clock()) {
    const seconds = now - run.start;
    if (seconds < 0) {
      const beat = run.counted > 0 ? run.from + seconds / run.spb : run.from;
      return { beat, pass: 0, counting: run.counted > 0 };
    }
    if (!run.loop) {
      return { beat: run.from + seconds / run.spb, pass: 0, counting: false };
    }
    const pass = Math.floor(seconds / run.seconds);
    return { beat: run.from + (seconds - pass * run.seconds) / run.spb, pass, counting: false };
  }

  // ---- showing

  function last(beats, beat) {
    let low = 0;
    let high = beats.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (beats[middle] <= beat) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }

  function clear() {
    document.querySelectorAll(".now, .at, .here, .next")
      .forEach((each) => each.classList.remove("now", "at", "here", "next"));
    byId("said").textContent = "";
    shown = { mark: -1, beat: null, row: -1, told: -1 };
    byId("river").style.transform = "scaleX(0)";
  }

  function show({ beat, counting }) {
    const over = beat >= score.end;
    const mark = counting || over ? -1 : last(score.marks, beat);
    if (mark !== shown.mark) {
      byId("m" + shown.mark)?.classList.remove("now");
      byId("m" + mark)?.classList.add("now");
      const said = byId("m" + mark);
      if (!said || said.classList.contains("s")) {
        byId("said").textContent = said ? said.lastChild.textContent.trim() : "";
      }
      shown.mark = mark;
    }
    const whole = Math.floor(beat);
    if (whole !== shown.beat) {
      cells.get(shown.beat)?.classList.remove("at");
      cells.get(whole)?.classList.add("at");
      shown.beat = whole;
      hand(whole, counting);
      row(last(score.rows, counting ? run.from : beat), counting ? run.from : whole);
      tell(beat, counting);
    }
  }

  function hand(beat, counting) {
    const now = score.hand[handAt(beat)];
    const next = score.hand[handAt(beat + 1)];
    const cycle = talaAt(beat).cycle;
    byId("now-sign").setAttribute("href", "#f-" + now.figure);
    byId("now-word").textContent = now.word;
    byId("next-sign").setAttribute("href", "#f-" + next.figure);
    byId("next-word").textContent = next.word;
    const avartana = Math.min(lastRow, Math.max(0, last(score.rows, beat))) + 1;
    byId("where").textContent = counting
      ? "Count-in, beat " + (placeOf(beat) + 1) + " of " + cycle
      : "Avartana " + avartana + " of " + score.rows.length + ", beat "
        + (placeOf(beat) + 1) + " of " + cycle;
    byId("river").style.transform = "scaleX(" + (placeOf(beat) + 1) / cycle + ")";
  }

  /** Brings the row in sight when it begins, and the beat if the row is taller than the screen. */
  function row(number, beat) {
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const into = (element) =>
      element.scrollIntoView({ block: "center", behavior: calm ? "auto" : "smooth" });
    const top = byId("strip").getBoundingClientRect().bottom;
    const bottom = byId("panel").getBoundingClientRect().top;
    const begins = number !== shown.row && rows[number];
    if (begins) {
      rows[shown.row]?.classList.remove("here");
      document.querySelector(".row.next")?.classList.remove("next");
      rows[number].classList.add("here");
      rows[number].classList.remove("next");
      rows[number + 1]?.classList.add("next");
    }
    shown.row = number;
    if (begins && rows[number].offsetHeight < bottom - top) {
      into(rows[number]);
      return;
    }
    const cell = cells.get(beat);
    const box = cell?.getBoundingClientRect();
    if (box && (box.top < top || box.bottom > bottom)) {
      into(cell);
    }
  }

  /** Says which round and nadai it is, and announces the next change half an avartana ahead. */
  function tell(beat, counting) {
    const here = counting ? run.from : beat;
    const index = Math.max(0, last(score.turns.map((turn) => turn.beat), here));
    const turn = score.turns[index];
    const next = score.turns[index + 1];
    const soon = next && next.beat - here <= talaAt(here).cycle / 2 && next.beat < run.to;
    byId("what").textContent = turn.words + (soon ? " — next: " + next.words : "");
    const told = index + (soon ? 0.5 : 0);
    if (told !== shown.told) {
      shown.told = told;
      byId("say").textContent = soon ? "Next: " + next.words : turn.words;
    }
  }

  function follow() {
    if (state.playing) {
      const place = position();
      const end = playsToTheEnd() ? score.end : run.to;
      if (!run.loop && place.beat >= end + 1 / run.spb) {
        stop();
      } else {
        show(place);
        count(place.pass);
      }
    }
    requestAnimationFrame(follow);
  }

  /** Counts rounds that were clean, and takes the next tempo after enough of them. */
  function count(pass) {
    if (!run.loop || pass === run.pass) {
      return;
    }
    run.pass = pass;
    state.clean++;
    if (state.step > 0 && state.clean >= state.step && state.percent < score.percents.length - 1) {
      state.clean = 0;
      tempo(1);
    } else {
      buttons();
    }
  }

  /** The round that goes on was not clean, so it is not counted. */
  function slipped() {
    state.clean = -1;
    buttons();
  }

  // ---- controls

  function buttons() {
    byId("play-word").textContent = state.playing ? "Rest" : "Begin";
    byId("play-sign").setAttribute("href", state.playing ? "#f-hold" : "#f-clap");
    byId("loop-word").textContent = state.part ? state.part.words : "Go round";
    byId("slip").hidden = !(state.playing && state.loop && state.step > 0);
    byId("slip-word").textContent = "Slipped " + Math.max(0, state.clean) + "/" + state.step;
    byId("step").value = String(state.step);
    byId("loop").setAttribute("aria-pressed", String(state.loop));
    byId("count-in").setAttribute("aria-pressed", String(state.countIn));
    byId("sound").setAttribute("aria-pressed", String(state.audible));
    for (const part of PARTS) {
      byId(part).setAttribute("aria-pressed", String(state.parts[part]));
    }
    const percent = score.percents[state.percent];
    byId("tempo").textContent = percent + " %\n" + Math.round(score.tempo * percent / 10) / 10;
    byId("slower").disabled = state.percent === 0;
    byId("faster").disabled = state.percent === score.percents.length - 1;
    byId("from").value = String(state.from);
    byId("to").value = String(state.to);
    const { say } = region();
    rows.forEach((each, index) => each.classList.toggle("outside",
      score.rows[index] >= say[1] - NEAR || score.rows[index] + talaAt(score.rows[index]).cycle <= say[0] + NEAR));
  }

  /** Takes a change over; what is playing goes on from where it is, if that is still inside. */
  function change(set) {
    const place = state.playing ? position() : null;
    set();
    buttons();
    if (!place) {
      return;
    }
    const { from, to } = region();
    if (place.counting || place.beat < from || place.beat >= to) {
      begin();
    } else {
      begin(place.beat);
    }
  }

  const tempo = (step) => {
    const next = state.percent + step;
    if (next >= 0 && next < score.percents.length) {
      change(() => { state.percent = next; });
    }
  };

  function limits(from, to) {
    change(() => {
      choose(null);
      state.from = Math.max(0, Math.min(lastRow, from));
      state.to = Math.max(state.from, Math.min(lastRow, to));
    });
  }

  /** Marks what is practised round and round; nothing for all that lies between two avartanas. */
  function choose(part) {
    state.part?.element.classList.remove("chosen");
    state.part?.element.setAttribute("aria-pressed", "false");
    state.part = part;
    part?.element.classList.add("chosen");
    part?.element.setAttribute("aria-pressed", "true");
  }

  function touch(part) {
    change(() => {
      const again = state.part && state.part.element === part.element;
      choose(again ? null : part);
      state.loop = !again;
    });
  }

  /** Makes a name, a round, a number or a join something that can be touched. */
  function touchable(element, words, from, to) {
    element.setAttribute("role", "button");
    element.setAttribute("tabindex", "0");
    element.setAttribute("aria-pressed", "false");
    element.setAttribute("aria-label", words + ", round and round");
    const part = { element, words, from, to };
    element.addEventListener("click", (event) => { event.stopPropagation(); touch(part); });
    element.addEventListener("keydown", (event) => {
      if (event.key === " " || event.key === "Enter") {
        event.preventDefault();
        event.stopPropagation();
        touch(part);
      }
    });
  }

  function touchables() {
    document.querySelectorAll("[data-from]").forEach((element) => {
      const from = Number(element.dataset.from);
      const to = Number(element.dataset.to);
      if (element.matches(".no")) {
        touchable(element, "Avartana " + element.textContent, from, to);
      } else if (element.matches(".name")) {
        touchable(element, element.textContent.replace(/ [^ ]*$/, ""), from, to);
      } else {
        const words = document.createElement("span");
        words.textContent = element.textContent;
        element.replaceChildren(words);
        const round = score.rounds.findIndex((start) => Math.abs(start - from) < NEAR) + 1;
        touchable(words, "Round " + round, from, to);
        if (round > 1) {
          const join = document.createElement("span");
          join.className = "join";
          join.textContent = "\u22c8";
          words.after(join);
          touchable(join, "Join " + (round - 1) + "\u2013" + round,
            Math.max(score.start, from - JOIN_BEATS), Math.min(score.end, from + JOIN_BEATS));
        }
      }
    });
  }

  function again() {
    if (state.playing) {
      stop();
    }
    begin();
  }

  const flip = (part) => {
    state.parts[part] = !state.parts[part];
    setGains();
    buttons();
  };

  let awake = null;
  async function keepAwake() {
    if (!awake && navigator.wakeLock) {
      try {
        awake = await navigator.wakeLock.request("screen");
        awake.addEventListener("release", () => { awake = null; });
      } catch (refused) {
        awake = null;
      }
    }
  }

  const keys = {
    " ": toggle,
    Enter: toggle,
    PageDown: toggle,
    PageUp: again,
    Home: again,
    ArrowRight: () => limits(state.from + 1, Math.max(state.to, state.from + 1)),
    ArrowLeft: () => limits(state.from - 1, state.to),
    ArrowUp: () => tempo(1),
    "+": () => tempo(1),
    ArrowDown: () => tempo(-1),
    "-": () => tempo(-1),
    l: () => byId("loop").click(),
    c: () => flip("hand"),
    t: () => flip("tick"),
    v: () => flip("voice"),
    d: () => flip("drone"),
    n: slipped,
    s: () => byId("sound").click(),
    Escape: stop,
  };

  document.addEventListener("keydown", (event) => {
    const target = event.target;
    const typing = target.closest("select, input, textarea, summary");
    const pressing = target.closest("button, [role=button]") && (event.key === " " || event.key === "Enter");
    if (typing || pressing || event.repeat || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    if (/^[1-9]$/.test(key) && Number(key) <= score.rows.length) {
      event.preventDefault();
      limits(Number(key) - 1, state.to);
    } else if (keys[key]) {
      event.preventDefault();
      keys[key]();
    }
  });

  byId("play").addEventListener("click", toggle);
  byId("again").addEventListener("click", again);
  byId("loop").addEventListener("click", () => change(() => { state.loop = !state.loop; }));
  byId("slip").addEventListener("click", slipped);
  byId("step").addEventListener("change", (event) => {
    state.step = Number(event.target.value);
    state.clean = 0;
    buttons();
  });
  byId("slower").addEventListener("click", () => tempo(-1));
  byId("faster").addEventListener("click", () => tempo(1));
  byId("from").addEventListener("change", (event) => limits(Number(event.target.value), state.to));
  byId("to").addEventListener("change", (event) => {
    const to = Number(event.target.value);
    limits(Math.min(state.from, to), to);
  });
  byId("count-in").addEventListener("click", () => {
    state.countIn = !state.countIn;
    buttons();
  });
  byId("sound").addEventListener("click", () => {
    state.audible = !state.audible;
    setGains();
    buttons();
  });
  for (const part of PARTS) {
    byId(part).addEventListener("click", () => flip(part));
  }

  window.matraloom = {
    /** Where the sound is and what is shown, for checks from outside. */
    look: () => {
      if (!state.playing) {
        return null;
      }
      const now = clock();
      return { ...position(now), clock: now, start: run.start, mark: shown.mark, spb: run.spb,
        seconds: run.seconds, silent: run.silent };
    },
    score,
    compose,
  };

  byId("drone").hidden = !score.drone;
  touchables();
  buttons();
  hand(score.rows[0], false);
  byId("where").textContent = score.rows.length + " avartanas"
    + (score.talas.length > 1 ? "" : " of " + score.cycle + " beats");
  byId("what").textContent = score.turns[0].words;
  requestAnimationFrame(follow);
})();
