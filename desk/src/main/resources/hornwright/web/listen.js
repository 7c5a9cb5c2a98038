// Records with the microphone and sends a WAV file by the form that takes one from the disk. Without this file the form
// works all the same.
const form = document.querySelector("form.play");
const mic = form?.querySelector(".mic");
const LONGEST_S = 120, FULL = .98, FAINT = .01;

if (mic && navigator.mediaDevices?.getUserMedia && window.AudioWorkletNode) {
  const button = mic.querySelector("button"), said = mic.querySelector(".mic-said");
  let finish = null;
  mic.hidden = false;
  button.addEventListener("click", async () => {
    if (finish) { finish(); return; }
    button.disabled = true;
    try {
      const sound = await record();
      button.disabled = true;
      await send(sound);
    } catch (why) {
      said.textContent = why.name === "NotAllowedError" || why.name === "NotFoundError"
        ? "The microphone is not to be had. Allow it for this page, or choose a WAV file."
        : "That did not work; try again, or choose a WAV file.";
    }
    button.disabled = false;
    button.textContent = "Record a scale";
    finish = null;
  });

  async function record() {
    // What a browser does for speech would bend the tuning of a horn.
    const stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false } });
    const air = new AudioContext();
    await air.audioWorklet.addModule(button.dataset.ear);
    const ear = new AudioWorkletNode(air, "ear"), mute = new GainNode(air, { gain: 0 });
    air.createMediaStreamSource(stream).connect(ear).connect(mute).connect(air.destination);
    const pieces = [];
    let heard = 0, loudest = 0, told = -1;
    button.disabled = false;
    button.textContent = "Stop and listen";
    await new Promise(done => {
      finish = done;
      ear.port.onmessage = event => {
        pieces.push(event.data);
        heard += event.data.length;
        for (const x of event.data) loudest = Math.max(loudest, Math.abs(x));
        const seconds = Math.floor(heard / air.sampleRate);
        if (seconds === told) return;
        told = seconds;
        const level = loudest > FULL ? "too loud, step back" : loudest < FAINT ? "hardly anything to hear" : "loud enough";
        said.textContent = `${seconds} s: ${level}. Hold each note for a second, then the next.`;
        loudest = 0;
        if (seconds >= LONGEST_S) done();
      };
    });
    stream.getTracks().forEach(track => track.stop());
    await air.close();
    said.textContent = "Listening…";
    return wav(pieces, heard, air.sampleRate);
  }

  function wav(pieces, length, rate) {
    const bytes = new DataView(new ArrayBuffer(44 + 2 * length));
    const word = (at, text) => [...text].forEach((letter, i) => bytes.setUint8(at + i, letter.charCodeAt(0)));
    word(0, "RIFF"); bytes.setUint32(4, 36 + 2 * length, true); word(8, "WAVEfmt ");
    bytes.setUint32(16, 16, true); bytes.setUint16(20, 1, true); bytes.setUint16(22, 1, true);
    bytes.setUint32(24, rate, true); bytes.setUint32(28, 2 * rate, true); bytes.setUint16(32, 2, true); bytes.setUint16(34, 16, true);
    word(36, "data"); bytes.setUint32(40, 2 * length, true);
    let at = 44;
    for (const piece of pieces) for (const x of piece) { bytes.setInt16(at, Math.max(-1, Math.min(1, x)) * 32767, true); at += 2; }
    return new File([bytes.buffer], "scale.wav", { type: "audio/wav" });
  }

  async function send(sound) {
    const data = new FormData(form);
    data.set("by", "microphone");
    data.set("sound", sound);
    const answer = await fetch(form.action, { method: "POST", body: data });
    if (answer.ok) { location.assign(answer.url); return; }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const troubles = page.querySelector("form.play")?.previousElementSibling;
    said.textContent = troubles?.matches(".troubles") ? troubles.querySelector("li").textContent : page.querySelector("main").innerText.trim().split("\n").pop();
    form.elements.key.value = crypto.randomUUID();
  }
}
