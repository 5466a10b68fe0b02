package washbook.samples.sheets;

import static washbook.samples.sheets.Form.plain;
import static washbook.samples.sheets.Form.when;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.functions.Numbers;
import washbook.functions.ferment.FermentHeat;
import washbook.functions.liquid.WashKind;
import washbook.functions.makeup.SugarKind;
import washbook.samples.sheets.Book.Look;

/**
 * A plan from the spirit wanted back to the sugar and water, and forwards with what was measured.
 */
final class StarterPlan {
  private static final int LAST_COLUMN = 3;
  private static final double LINE_POINTS = 14;
  private static final double BOTTOM_INCHES = 0.5;

  /** How many times the plain form comes nearer to the original gravity. */
  private static final int STEPS = 5;

  /** About how many % vol more a wash gives for each SG more. */
  private static final String RISE = "135";

  private final Book book = Book.forPaper("Plan");
  private final Form form;
  private final boolean portable;

  private StarterPlan(boolean portable) {
    this.portable = portable;
    form = new Form(book, "Plan", LAST_COLUMN, 1, portable);
  }

  static Book make(boolean portable) {
    StarterPlan plan = new StarterPlan(portable);
    plan.form.head(
        "From the spirit wanted back to the wash",
        "Type into the tinted cells. Volumes at 20 °C, gravities SG 20/20. A plan: what really"
            + " comes stands below it.",
        5);
    plan.backwardsAndForwards();
    plan.form.done();
    onOnePage(plan.form.sheet());
    plan.book.widths(plan.form.sheet(), 29, 10, 9, 45);
    return plan.book;
  }

  /** With letters of 9 points at least, in the languages that take more words too. */
  private static void onOnePage(XSSFSheet sheet) {
    Form.onPaper(sheet, 1);
    sheet.setMargin(PageMargin.BOTTOM, BOTTOM_INCHES);
    for (Row row : sheet) {
      if (row.getHeightInPoints() == Form.LINE_POINTS) {
        row.setHeightInPoints((float) LINE_POINTS);
      }
    }
  }

  private void backwardsAndForwards() {
    form.section("The spirit");
    String litres = form.input("Spirit wanted", 5, "0.00", "L", "as it goes into the bottle");
    String strength = form.input("Its strength", 42, "0.0", "% vol", "");
    String share =
        form.input("Share that gets there", 65, "0", "%", "of the wash's alcohol; from own runs");
    form.between(litres, 0, 100000, "Litres at 20 °C");
    form.between(strength, 1, 96, "% vol at 20 °C");
    form.between(share, 1, 100, "Per cent of the alcohol in the wash");
    String pure =
        form.result(
            "Pure alcohol in it",
            when("PUREALCOHOL(" + litres + "," + strength + ")", litres, strength),
            "0.000",
            "L",
            "");
    String charge =
        form.result(
            "Pure alcohol to charge",
            plain(pure + "*100/" + share, pure, share),
            "0.000",
            "L",
            "heads, tails and losses are in it");
    form.section("The wash");
    String kind = form.input("What ferments", "SUGAR", "General", "", "choose from the list");
    String abv = form.input("Alcohol in the wash", 10, "0.0", "% vol", "what the yeast can do");
    String end = form.input("Gravity at the end", 0.994, "0.000", "SG", "where it usually stops");
    form.choose(kind, WashKind.words().toArray(String[]::new));
    form.between(abv, 0.5, 20, "% vol, 0.5 to 20");
    form.between(end, 0.98, 1.1, "Gravity, 0.980 to 1.100");
    String wash =
        form.result(
            "Wash",
            plain(charge + "*100/" + abv, charge, abv),
            "0.00",
            "L",
            "at the end; about the same at the start");
    String original = original(abv, end, kind);
    String head = form.input("Room for foam", 20, "0", "%", "of the vessel");
    form.between(head, 0, 60, "Per cent of the vessel, 0 to 60");
    form.result(
        "Vessel at least",
        plain(wash + "/(1-" + head + "/100)", wash, head),
        "0.0",
        "L",
        "with a valve: never closed tight");
    sugar(wash, original);
    String gas = gas(wash, original, end, abv, kind);
    form.section("Time and heat");
    String pace =
        form.input("Fall in a day", 8, "0.0", "points", "thousandths of SG; from own logs");
    form.between(pace, 0.5, 60, "Thousandths of SG in a day");
    form.result(
        "Days about",
        plain("1000*(" + original + "-" + end + ")/" + pace, original, end, pace),
        "0",
        "days",
        "slow at both ends: its log tells when it is done");
    form.result("Carbon dioxide", gas, "0.00", "kg", "kills in closed rooms: air the room");
    form.result(
        "Heat of the ferment",
        plain(heat("$B$" + form.row()), "$B$" + form.row()),
        "0.00",
        "kWh",
        "a large vessel can grow too warm by itself");
    measured(litres, strength, charge, kind, wash);
  }

  /** One function, or the same by plain formulas that come nearer step by step. */
  private String original(String abv, String end, String kind) {
    if (!portable) {
      return form.result(
          "Gravity to start with",
          when("ORIGINALFORABV(" + abv + "," + end + "," + kind + ")", abv, end),
          "0.0000",
          "SG",
          "");
    }
    int row = form.row();
    String before = null;
    for (int step = 0; step < STEPS; step++) {
      int column = LAST_COLUMN + 2 + step;
      String near = before == null ? "(" + end + "+" + abv + "/" + RISE + ")" : before;
      String next =
          before == null ? near : near + "+(" + abv + "-" + alcohol(near, end, kind) + ")/" + RISE;
      book.put(form.sheet(), row, column, null, Look.number("0.000000"))
          .setCellFormula(plain(next, abv, end));
      before = "$" + (char) ('A' + column) + "$" + (row + 1);
    }
    return form.result(
        "Gravity to start with",
        plain(before, before),
        "0.0000",
        "SG",
        "found step by step in the columns F to J");
  }

  /** % vol by the kind of wash that a cell names. */
  private String alcohol(String original, String gravity, String kind) {
    String both = "WASHBOOK.ABV(" + original + "," + gravity + ",";
    return portable
        ? "CHOOSE("
            + place(kind)
            + ","
            + WashKind.words().stream()
                .map(word -> both + "\"" + word + "\")")
                .collect(Collectors.joining(","))
            + ")"
        : both + kind + ")";
  }

  private static String place(String kind) {
    return WashKind.words().stream()
        .map(word -> "\"" + word + "\"")
        .collect(Collectors.joining(",", "MATCH(" + kind + ",{", "},0)"));
  }

  private static String choose(String kind, ToDoubleFunction<WashKind> value) {
    return WashKind.words().stream()
        .map(word -> Numbers.show(value.applyAsDouble(WashKind.of(word))))
        .collect(Collectors.joining(",", "CHOOSE(" + place(kind) + ",", ")"));
  }

  /** By mass: what extract the fruit does not bring is sugar, what is missing then is water. */
  private void sugar(String wash, String original) {
    form.section("What goes in");
    String fruit = form.input("Fruit", 0, "0.0", "kg", "0 for a wash of sugar alone");
    String yield =
        form.input(
            "Juice from a kilogram", 0.6, "0.00", "L", "common practice, no source: weigh it");
    String juice = form.input("Gravity of the juice", 1.05, "0.000", "SG", "corrected to 20 °C");
    String sort = form.input("Kind of sugar", "SUCROSE", "General", "", "choose from the list");
    form.between(fruit, 0, 100000, "Kilograms");
    form.between(yield, 0.01, 1, "Litres from a kilogram, 0.01 to 1");
    form.between(juice, 1, 1.15, "Gravity, 1.000 to 1.150");
    form.choose(sort, Arrays.stream(SugarKind.values()).map(Enum::name).toArray(String[]::new));
    String pressed =
        form.result("Juice", plain(fruit + "*" + yield, fruit, yield), "0.00", "L", "");
    String wanted = StarterMakeUp.mass(wash, original);
    String given = StarterMakeUp.mass(pressed, juice);
    String extract = wanted + "*" + StarterMakeUp.extract(original) + "/100";
    String brought = given + "*" + StarterMakeUp.extract(juice) + "/100";
    String[] cells = {wash, original, pressed, juice};
    String sugar =
        form.result(
            "Sugar",
            plain("(" + extract + "-" + brought + ")/" + StarterMakeUp.solids(sort), cells),
            "0.00",
            "kg",
            "less than 0: the juice alone is stronger");
    form.result(
        "Water",
        plain(
            "(" + wanted + "-" + given + "-" + sugar + ")/" + StarterMakeUp.WATER,
            wash,
            original,
            pressed,
            juice,
            sugar),
        "0.00",
        "L",
        "less than 0: no room for it beside the juice");
  }

  /** Kilograms: the pack's function, or its balance in plain formulas. */
  private String gas(String wash, String original, String end, String abv, String kind) {
    if (!portable) {
      return when(
          "CARBONDIOXIDE(" + original + "," + end + "," + wash + "," + kind + ")/1000",
          original,
          end,
          wash);
    }
    String share = "(" + abv + "*0.0078924/" + StarterMakeUp.density(end) + ")";
    return plain(
        StarterMakeUp.mass(wash, original)
            + "*"
            + share
            + "/(1+"
            + choose(kind, k -> k.fall() * 100)
            + "*"
            + share
            + ")*"
            + choose(kind, WashKind::co2PerExtract),
        wash,
        original,
        end,
        abv);
  }

  private static String heat(String kilograms) {
    return kilograms + "*" + Numbers.show(FermentHeat.kilowattHours(1000));
  }

  private void measured(String litres, String strength, String planned, String kind, String wash) {
    form.section("What really came");
    String filled = form.input("Wash measured", 33, "0.0", "L", "when it was done");
    String first = form.input("First gravity", 1.072, "0.0000", "SG", "corrected to 20 °C");
    String last = form.input("Last gravity", 0.996, "0.0000", "SG", "corrected to 20 °C");
    form.between(filled, 0, 100000, "Litres at 20 °C");
    form.between(first, 1.001, 1.19, "Gravity, 1.001 to 1.190");
    form.between(last, 0.97, 1.19, "Gravity, 0.970 to 1.190");
    String abv =
        form.result(
            "Alcohol in the wash",
            plain(alcohol(first, last, kind), first, last),
            "0.00",
            "% vol",
            "by the balance of what ferments");
    String charged =
        form.result(
            "Pure alcohol charged",
            plain(filled + "*" + abv + "/100", filled, abv),
            "0.000",
            "L",
            "");
    form.result(
        "More than planned",
        plain(charged + "-" + planned, charged, planned),
        "+0.000;-0.000;0.000",
        "L",
        "less where it stands below 0");
    String got = form.input("Spirit kept", 4.6, "0.00", "L", "hearts alone");
    String true20 = form.input("Its true strength", 46, "0.0", "% vol", "corrected to 20 °C");
    form.between(got, 0, 100000, "Litres at 20 °C");
    form.between(true20, 1, 97, "% vol at 20 °C");
    String kept =
        form.result(
            "Pure alcohol in it",
            when("PUREALCOHOL(" + got + "," + true20 + ")", got, true20),
            "0.000",
            "L",
            "");
    form.result(
        "Share that got there",
        plain("100*" + kept + "/" + charged, kept, charged),
        "0.0",
        "%",
        "for the next plan");
    form.result(
        "At the strength wanted that is",
        plain(kept + "*100/" + strength, kept, strength),
        "0.00",
        "L",
        "no figure here says that it is safe to drink");
    form.result(
        "Of what was wanted",
        plain("10000*" + kept + "/(" + strength + "*" + litres + ")", kept, strength, litres),
        "0",
        "%",
        "");
    form.result("Wash of the plan", plain(wash, wash), "0.0", "L", "beside the wash measured");
  }
}
