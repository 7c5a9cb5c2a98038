package hornwright.bench.archive;

import hornwright.bench.horn.Voice;

/** A paper, a book or a person speaking of many horns at once: evidence on a claim over a range of serials. */
public record Statement(Voice voice, String place, String material, Evidence evidence) {}
