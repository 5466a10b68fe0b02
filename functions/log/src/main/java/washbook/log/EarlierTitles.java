package washbook.log;

import java.util.Map;

/** Titles of computed columns that earlier versions have written in some languages. */
final class EarlierTitles {
  /** The titles whose words have changed since. */
  static final Map<String, ComputedColumn> ALL =
      Map.ofEntries(
          Map.entry("Ware sterkte (% vol, 20 \u00b0C)", ComputedColumn.TRUE_STRENGTH),
          Map.entry("Teor real (% vol)", ComputedColumn.TRUE_STRENGTH),
          Map.entry("Suiwer alkohol tot nou toe (L)", ComputedColumn.PURE_SUM),
          Map.entry("\u00c1lcool puro at\u00e9 \u00e0 data (L)", ComputedColumn.PURE_SUM),
          Map.entry("Part de l'alcool de la charge (%)", ComputedColumn.CHARGE_SHARE),
          Map.entry("Aandeel in de alcohol van de lading (%)", ComputedColumn.CHARGE_SHARE),
          Map.entry("Gemiddelde sterkte van die snit (% vol)", ComputedColumn.CUT_STRENGTH),
          Map.entry("Titre moyen de la coupe (% vol)", ComputedColumn.CUT_STRENGTH),
          Map.entry("Teor m\u00e9dio do corte (% vol)", ComputedColumn.CUT_STRENGTH),
          Map.entry(
              "Titre d'apr\u00e8s la temp\u00e9rature de t\u00eate (% vol)",
              ComputedColumn.HEAD_STRENGTH),
          Map.entry("Teor pela temperatura de cabe\u00e7a (% vol)", ComputedColumn.HEAD_STRENGTH),
          Map.entry("Resterend extract (g/L)", ComputedColumn.SUGAR_LEFT),
          Map.entry("Onzekerheid van de alcohol (% vol)", ComputedColumn.PLUS_MINUS));

  /** What stood for the scale of potential alcohol in the title of the corrected reading. */
  static final Map<String, String> POTENTIAL =
      Map.of(
          "m\u00f6gliche % vol", "DE",
          "mogelijke % vol", "NL",
          "moontlike % vol", "AF",
          "% vol em pot\u00eancia", "PT");

  private EarlierTitles() {}
}
