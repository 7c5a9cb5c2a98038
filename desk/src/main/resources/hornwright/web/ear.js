// Runs beside the sound: hands every piece of what the microphone hears to the page.
registerProcessor("ear", class extends AudioWorkletProcessor {
  process(inputs) {
    if (inputs[0][0]) this.port.postMessage(inputs[0][0].slice());
    return true;
  }
});
