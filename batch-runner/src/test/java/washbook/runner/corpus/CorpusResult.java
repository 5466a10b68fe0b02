package washbook.runner.corpus;

/**
 * What came of one file.
 *
 * @param text the reason of a refusal, the counts of a success or the trace of a failure
 */
record CorpusResult(String file, Kind kind, String text) {
  enum Kind {
    /** Refused with a reason when it was read. */
    REFUSED,
    /** Read, but refused with a reason when it was to be patched. */
    PATCH_REFUSED,
    /** Read, patched, and nothing else changed. */
    PATCHED,
    /** Anything else: a crash, a hang, a change that nobody asked for. */
    FAILED
  }

  String toLine() {
    return kind + "\t" + file + "\t" + text.replaceAll("[\\t\\r\\n]+", " | ");
  }

  static CorpusResult fromLine(String line) {
    String[] parts = line.split("\t", 3);
    return new CorpusResult(parts[1], Kind.valueOf(parts[0]), parts[2]);
  }
}
