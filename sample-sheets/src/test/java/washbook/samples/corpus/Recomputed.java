package washbook.samples.corpus;

import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;

/**
 * The figures of one row, computed from the raw reading by the catalogue's functions and by nothing
 * else of the program.
 */
record Recomputed(double originalGravity, double gravity) {

  static Recomputed of(Expected.Table table, Expected.Row row) {
    Expected.Ferment batch =
        table.batches().stream()
            .filter(b -> b.name().equals(row.batch()))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no batch " + row.batch()));
    double original = batch.stated();
    if (Double.isNaN(original)) {
      Expected.Row first =
          table.rows().stream().filter(r -> r.row() == batch.firstRow()).findFirst().orElseThrow();
      original = corrected(batch, first, Double.NaN);
    }
    boolean isOriginal = Double.isNaN(batch.stated()) && row.row() == batch.firstRow();
    return new Recomputed(original, isOriginal ? original : corrected(batch, row, original));
  }

  private static double corrected(Expected.Ferment batch, Expected.Row row, double original) {
    if (Double.isNaN(row.temperatureC())) {
      return row.reading();
    }
    Answer answer =
        Catalogue.get("CORRECTEDGRAVITY")
            .call(
                row.reading(),
                row.temperatureC(),
                batch.calibrationC(),
                Double.isNaN(original) ? null : original,
                batch.offset());
    if (answer instanceof Answer.Number number) {
      return number.value();
    }
    throw new IllegalStateException("refused: " + answer);
  }

  /** A figure of the catalogue from the two gravities; NaN when it is refused. */
  double figure(String name) {
    Answer answer = Catalogue.get(name).call(originalGravity, gravity);
    return answer instanceof Answer.Number number ? number.value() : Double.NaN;
  }
}
