package washbook.samples.sheets;

import static washbook.samples.sheets.Form.plain;
import static washbook.samples.sheets.Form.when;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import washbook.samples.sheets.Book.Look;

/**
 * Two sheets for a class: what each scale shows of one ferment, and what mixing does to volumes.
 */
final class StarterClass {
  private static final int LAST_COLUMN = 5;
  private static final String KIND = "\"FRUIT\"";

  /** The plain form's are good to 0.003 % vol, which a second place would often show. */
  private static final String STRENGTH = "0.0";

  private static final double[] STRENGTHS = {90, 80, 70, 60, 50, 40, 30, 20, 10};

  private StarterClass() {}

  static Book make(boolean portable) {
    Book book = Book.forPaper("For a class");
    samples(book, portable).done();
    mixing(book, portable).done();
    book.widths(book.workbook().getSheetAt(0), 37, 11, 11, 11, 11, 8);
    book.widths(book.workbook().getSheetAt(1), 16, 14, 14, 14, 14, 17);
    return book;
  }

  /** Invented: Plum 3 before, halfway and done; the last column is for a sample of one's own. */
  private static Form samples(Book book, boolean portable) {
    Form form = new Form(book, "Three samples", LAST_COLUMN, 1, portable);
    form.head(
        "One ferment on all scales",
        "Three samples of Plum 3, a plum wash, read with a hydrometer calibrated at 20 °C. Type"
            + " another ferment into the tinted cells; the last column is for a sample of your"
            + " own.",
        5);
    form.section("What the hydrometer shows");
    heads(book, form, "", "before", "halfway", "done", "your own", "");
    List<String> read =
        form.series("Reading", Arrays.asList(1.084, 1.041, 0.993, null), "0.000", "SG", true);
    List<String> warm =
        form.series("Temperature", Arrays.asList(20, 26, 22, null), "0.0", "°C", true);
    form.between(read.get(0) + ":" + read.get(3), 0.97, 1.19, "Gravity, 0.970 to 1.190");
    form.between(warm.get(0) + ":" + warm.get(3), 0, 40, "°C, 0 to 40");
    List<Object> corrected = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      String both = read.get(i) + "," + warm.get(i) + ",20";
      String first = i == 0 ? "" : ",$B$" + (form.row() + 1);
      corrected.add(when("CORRECTEDGRAVITY(" + both + first + ")", read.get(i), warm.get(i)));
    }
    List<String> gravity = form.series("Gravity at 20 °C", corrected, "0.0000", "SG", false);
    form.section("What each scale shows of it");
    scale(form, gravity, "°Brix, °Plato, °Balling", "BRIX", "0.0", "°Bx");
    scale(form, gravity, "°Baumé", "BAUME", "0.0", "°Bé");
    scale(form, gravity, "°Oechsle", "OECHSLE", "0", "°Oe");
    List<String> rule =
        each(form, gravity, "Potential by rule: g/L over 17", g -> "POTENTIALABV(" + g + ",17)");
    List<String> drawn =
        each(
            form,
            gravity,
            "Potential as the balance draws it",
            g -> "POTENTIALABV(" + g + ",\"MODEL\"," + KIND + ")");
    form.section("How much alcohol is there?");
    difference(form, "Difference of potentials, rule", rule);
    difference(form, "Difference of potentials, balance", drawn);
    List<String> truth = new ArrayList<>();
    List<Object> extract = new ArrayList<>();
    for (String g : gravity) {
      String call = gravity.get(0) + "," + g + "," + KIND + ")";
      truth.add(when("ABV(" + call, gravity.get(0), g));
      extract.add(when("TRUEEXTRACT(" + call, gravity.get(0), g));
    }
    List<String> abv = form.series("The balance itself", truth, STRENGTH, "% vol", false);
    List<Object> over = new ArrayList<>();
    for (int i = 0; i < rule.size(); i++) {
      over.add(
          plain(
              rule.get(0) + "-" + rule.get(i) + "-" + abv.get(i),
              rule.get(0),
              rule.get(i),
              abv.get(i)));
    }
    form.series("The rule says too much by", over, STRENGTH, "% vol", false);
    form.series("Sugar and extract really left", extract, "0.0", "% mass", false);
    form.section("Why they differ");
    form.across(
        "Alcohol is lighter than water, so every sugar scale takes it for sugar that is gone, and a"
            + " rule that turns all of that fall into alcohol says too much. The balance asks how"
            + " much sugar is really left beside the alcohol and counts what escaped as gas and what"
            + " went into yeast.",
        3);
    form.across(
        "Potential alcohol is a promise, not a measurement. Read at the bottom of the curve of the"
            + " liquid, with your eye at its height. No number here says that a spirit is safe to"
            + " drink.",
        2);
    return form;
  }

  private static void heads(Book book, Form form, String... heads) {
    for (int column = 0; column < heads.length; column++) {
      boolean number = column > 0 && column < heads.length - 1;
      String head = Form.headText(heads[column]);
      book.put(form.sheet(), form.row(), column, head, Form.head(number ? "0" : "General"));
    }
    form.next();
  }

  private static void scale(
      Form form, List<String> gravity, String label, String scale, String format, String unit) {
    List<Object> values = new ArrayList<>();
    for (String g : gravity) {
      values.add(when("CONVERT(" + g + ",\"SG\",\"" + scale + "\")", g));
    }
    form.series(label, values, format, unit, false);
  }

  private static List<String> each(
      Form form, List<String> gravity, String label, UnaryOperator<String> call) {
    List<Object> values = new ArrayList<>();
    for (String g : gravity) {
      values.add(when(call.apply(g), g));
    }
    return form.series(label, values, STRENGTH, "% vol", false);
  }

  private static void difference(Form form, String label, List<String> potentials) {
    List<Object> values = new ArrayList<>();
    for (String p : potentials) {
      values.add(plain(potentials.get(0) + "-" + p, potentials.get(0), p));
    }
    form.series(label, values, STRENGTH, "% vol", false);
  }

  private static Form mixing(Book book, boolean portable) {
    Form form = new Form(book, "Mixing", LAST_COLUMN, 1, portable);
    form.head(
        "A litre and a litre are less than two",
        "Spirit and water shrink when they mix. Type into the tinted cells; all volumes at 20 °C.",
        5);
    form.section("The spirit");
    String litres = form.input("Spirit", 1, "0.000", "L", "");
    String strength = form.input("Its strength", 95, "0.0", "% vol", "");
    form.between(litres, 0, 100000, "Litres at 20 °C");
    form.between(strength, 1, 97, "% vol at 20 °C");
    form.section("Watered");
    heads(
        book,
        form,
        "Wanted (% vol)",
        "Water (L)",
        "Sum (L)",
        "Real volume (L)",
        "Shrinks by (mL)",
        "");
    String bySum = Form.headText("By the sum (% vol)");
    book.put(form.sheet(), form.row() - 1, 5, bySum, Form.head("0"));
    form.sheet().getRow(form.row() - 1).setHeightInPoints(34);
    for (double wanted : STRENGTHS) {
      row(book, form, litres, strength, wanted);
    }
    form.section("Why");
    form.across(
        "The molecules of water and alcohol find room between each other, so the mixture is smaller"
            + " than the sum. Weights add up, volumes do not: who goes by the sum adds too little"
            + " water, and the spirit comes out stronger than wanted. The last column is what such"
            + " a person would think of the right mixture.",
        3);
    form.across(
        "Add water slowly: the mixture warms. Alcohol vapour burns: no flame, no sparks. No number"
            + " here says that a spirit is safe to drink.",
        2);
    return form;
  }

  private static void row(Book book, Form form, String litres, String strength, double wanted) {
    int row = form.row();
    String n = Integer.toString(row + 1);
    String target = "$A" + n;
    String possible =
        "IF(COUNT(" + litres + "," + strength + "," + target + ")<3,\"\",IF(" + target;
    String over = ">=" + strength + ",\"\",";
    book.put(form.sheet(), row, 0, wanted, Look.input("0.0", Form.PAPER));
    String water = "WASHBOOK.DILUTIONWATER(" + litres + "," + strength + "," + target + ")";
    String[] formulas = {
      possible + over + water + "))",
      plain(litres + "+$B" + n, "$B" + n),
      plain(litres + "*" + strength + "/" + target, "$B" + n),
      plain("1000*($C" + n + "-$D" + n + ")", "$B" + n),
      plain(litres + "*" + strength + "/$C" + n, "$B" + n)
    };
    String[] formats = {"0.000", "0.000", "0.000", "0", "0.0"};
    for (int i = 0; i < formulas.length; i++) {
      book.put(form.sheet(), row, i + 1, null, Look.cell(formats[i])).setCellFormula(formulas[i]);
    }
    form.next();
  }
}
