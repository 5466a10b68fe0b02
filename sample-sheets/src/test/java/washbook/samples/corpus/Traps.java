package washbook.samples.corpus;

import java.time.LocalDate;
import java.util.List;

/** Sheets with gravities, temperatures or dates that are no log of a ferment. Invented data. */
final class Traps {
  private static final LocalDate FIRST = LocalDate.of(2024, 11, 4);

  private Traps() {}

  static List<Log> all() {
    return List.of(
        battery(),
        milk(),
        urine(),
        weather(),
        recipe(),
        invoice(),
        aquarium(),
        coolant(),
        wood(),
        prices(),
        ripeness(),
        scores());
  }

  private static Log trap(String file, String about, Object[][] lines) {
    Log log = new Log(file, about).verdict(Expected.Verdict.NOTHING);
    Page page = log.page("Sheet1");
    for (int i = 0; i < lines.length; i++) {
      page.line(i, 0, lines[i]);
    }
    return log;
  }

  private static Log battery() {
    Object[][] lines = new Object[14][];
    lines[0] = new Object[] {"Fork lift battery, cell check"};
    lines[1] = new Object[] {"Date", "Cell", "SG", "Temp °C", "Volts"};
    for (int i = 2; i < 14; i++) {
      lines[i] =
          new Object[] {
            FIRST.plusDays((i - 2) / 6),
            1 + (i - 2) % 6,
            1.265 - 0.004 * (i % 5),
            22,
            2.08 + i % 3 / 100.0
          };
    }
    return trap("trap-battery.xlsx", "Acid of a battery, cell by cell", lines);
  }

  private static Log milk() {
    Object[][] lines = new Object[10][];
    lines[0] = new Object[] {"Date", "Churn", "Lactometer", "Temp C", "Fat %"};
    for (int i = 1; i < 10; i++) {
      lines[i] =
          new Object[] {
            FIRST.plusDays(i), "Churn " + i, 1.029 + i % 4 / 1000.0, 15 + i % 6, 3.8 + i % 3 / 10.0
          };
    }
    return trap("trap-milk.csv", "Density of milk", lines);
  }

  private static Log urine() {
    Object[][] lines = new Object[9][];
    lines[0] =
        new Object[] {"Date", "Patient no.", "Specific gravity", "pH", "Glucose", "Body temp (C)"};
    for (int i = 1; i < 9; i++) {
      lines[i] = new Object[] {FIRST.plusDays(i), 100 + i, 1.025 - i / 1000.0, 6, "neg", 36.8};
    }
    return trap("trap-urine.xls", "Specific gravity of urine", lines);
  }

  private static Log weather() {
    Object[][] lines = new Object[13][];
    lines[0] = new Object[] {"Weather station"};
    lines[1] =
        new Object[] {"Date", "Time", "Temp (°C)", "Humidity %", "Pressure (hPa)", "Rain mm"};
    for (int i = 2; i < 13; i++) {
      lines[i] =
          new Object[] {FIRST.plusDays(i), "07:00", 4 + i % 5, 80 + i % 7, 1021 - 2 * i, i % 3};
    }
    return trap("trap-weather.xlsx", "Air pressure of 1021 hPa falls as a gravity would", lines);
  }

  private static Log recipe() {
    return trap(
        "trap-recipe.ods",
        "A recipe with target gravities, no readings",
        new Object[][] {
          {"Plum wash, 60 L"},
          {"What", "Amount", "Unit", "When"},
          {"Plums", 45, "kg", "Day 0"},
          {"Sugar", 8, "kg", "Day 0"},
          {"Water", 20, "L", "Day 0"},
          {"Yeast", 20, "g", "Day 0"},
          {"Target OG", 1.085, "SG", null},
          {"Target FG", 1.000, "SG", null},
          {"Keep at", 20, "C", null},
        });
  }

  private static Log invoice() {
    return trap(
        "trap-invoice.csv",
        "An invoice",
        new Object[][] {
          {"Invoice", 1085},
          {"Date", LocalDate.of(2025, 1, 20)},
          {"Item", "Quantity", "Price", "Amount"},
          {"Hydrometer, 1.000 to 1.100", 2, 9.5, 19},
          {"Demijohn 10 L", 6, 18.25, 109.5},
          {"Thermometer 0 to 60 C", 1, 7, 7},
          {"Total", null, null, 135.5},
        });
  }

  private static Log aquarium() {
    Object[][] lines = new Object[11][];
    lines[0] = new Object[] {"Reef tank"};
    lines[1] = new Object[] {"Date", "Salinity (SG)", "Temp F", "Nitrate", "pH"};
    for (int i = 2; i < 11; i++) {
      lines[i] = new Object[] {FIRST.plusDays(7L * i), 1.026 - i % 2 / 1000.0, 78, 5, 8.2};
    }
    return trap("trap-aquarium.xlsx", "Salt water", lines);
  }

  private static Log coolant() {
    Object[][] lines = new Object[8][];
    lines[0] = new Object[] {"Vehicle", "Coolant SG", "Coolant temp C", "Protects to C"};
    for (int i = 1; i < 8; i++) {
      lines[i] = new Object[] {"Tractor " + i, 1.07 - i / 500.0, 20 + i, -30 + 2 * i};
    }
    return trap("trap-coolant.csv", "Antifreeze in tractors", lines);
  }

  private static Log wood() {
    return trap(
        "trap-wood.xlsx",
        "Density of woods",
        new Object[][] {
          {"Wood", "Density (kg/m3)", "Moisture %"},
          {"Oak", 720, 12},
          {"Ash", 690, 12},
          {"Lignum vitae", 1230, 12},
          {"Ebony", 1050, 11},
          {"Snakewood", 1210, 11},
          {"Plum", 750, 13},
        });
  }

  private static Log prices() {
    Object[][] lines = new Object[15][];
    lines[0] = new Object[] {"Date", "Rate", "Change"};
    for (int i = 1; i < 15; i++) {
      lines[i] = new Object[] {FIRST.plusDays(i), 1.085 - i / 200.0, -0.005};
    }
    return trap("trap-rate.xlsx", "An exchange rate that falls from 1.080 to 1.015", lines);
  }

  private static Log ripeness() {
    Object[][] lines = new Object[11][];
    lines[0] = new Object[] {"Orchard ripeness check"};
    lines[1] = new Object[] {"Date", "Row", "Tree", "Brix", "Firmness", "Starch index"};
    for (int i = 2; i < 11; i++) {
      lines[i] = new Object[] {FIRST.minusDays(60L - 3 * i), i % 3, i, 9.5 + i / 3.0, 7.5, 4};
    }
    return trap("trap-ripeness.xlsx", "Brix of fruit on the tree, rising", lines);
  }

  private static Log scores() {
    return trap(
        "trap-tasting.xls",
        "A tasting sheet with batch, date and ABV but no readings",
        new Object[][] {
          {"Tasting evening"},
          {"Batch", "Date", "ABV", "Colour", "Nose", "Taste", "Notes"},
          {"Plum 3", LocalDate.of(2025, 3, 1), 11.4, 7, 8, 7, "stone fruit"},
          {"Apple 7", LocalDate.of(2025, 3, 1), 6.9, 6, 7, 8, "sharp"},
          {"Molasses 2", LocalDate.of(2025, 3, 1), 10.2, 8, 5, 6, "heavy"},
        });
  }
}
