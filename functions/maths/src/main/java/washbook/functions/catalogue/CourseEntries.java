package washbook.functions.catalogue;

import static washbook.functions.catalogue.FermentEntries.gravity;
import static washbook.functions.catalogue.FermentEntries.kind;
import static washbook.functions.catalogue.FermentEntries.originalGravity;
import static washbook.functions.catalogue.FermentEntries.wash;
import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.numbers;
import static washbook.functions.catalogue.Parameter.wordOrNumber;

import java.util.List;
import washbook.functions.Sentence;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.ferment.CarbonDioxide;
import washbook.functions.ferment.ExpectedEnd;
import washbook.functions.ferment.Feeding;
import washbook.functions.ferment.Finish;
import washbook.functions.ferment.Forecast;
import washbook.functions.ferment.PlusMinus;
import washbook.functions.ferment.Progress;
import washbook.functions.ferment.WeighedGas;
import washbook.functions.liquid.WashKind;
import washbook.functions.makeup.SugarKind;
import washbook.functions.quantity.Quantity;

/** Functions on the course of a ferment: doubt, gas, feeds, forecast and progress. */
final class CourseEntries {
  private static final String GAS =
      "Carbon dioxide is heavier than air and kills in closed rooms and cellars: air the room.";

  private static final String GAS_SOURCE =
      "MALT: Balling's balance, 0.9565 g of carbon dioxide with 1 g of ethanol from 2.0665 g of"
          + " extract; others as in ABV, 0.9553 g by the molar masses.";

  private static final String END_SOURCE =
      "The balance and by-products as in ABV. Shares: honey by White's means of US honeys, molasses"
          + " by the means of a handbook on fuel ethanol and the grades of 24 FR 8365 (1959); malt"
          + " common practice, no source.";

  private static final String THRESHOLDS = "Least squares; thresholds common practice, no source.";

  private static final String FIT =
      "Generalised logistic law (Tsoularis and Wallace, Math. Biosci. 179 (2002) 21) by weighted"
          + " least squares (Marquardt, J. SIAM 11 (1963) 431), averaged by evidence (Kass and"
          + " Raftery, J. Am. Stat. Assoc. 90 (1995) 773); what is usual of ferments and"
          + " thresholds common practice, no source.";

  /** Fermentable share that a user states may be off by so much. */
  private static final double STATED_SHARE_ERROR = 0.02;

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("ABVPLUSMINUS", Group.FERMENT)
              .summary("Plus-or-minus of ABV in % vol, one standard deviation.")
              .details(
                  "From the error of each of the two readings, of the temperature each was"
                      + " corrected with, and of the balance of that kind of wash, as a share of the"
                      + " alcohol: MALT 3.5 %, FRUIT 5, SUGAR 3, HONEY 4, MOLASSES 5, a stated yield"
                      + " 1.5. Refuses what ABV refuses.")
              .takes(
                  originalGravity(),
                  gravity(),
                  number(
                          "readingError",
                          Quantity.READING_ERROR,
                          "Standard deviation of one reading.")
                      .orElse(0.001),
                  number(
                          "temperatureErrorC",
                          Quantity.TEMPERATURE_ERROR,
                          "Standard deviation of a temperature.")
                      .orElse(1.0),
                  wash())
              .source(
                  "First-order propagation, JCGM 100:2008, 5.1.2, over ABV and the hydrometer. The"
                      + " balance: MALT by 34 measured pairs (Tolman and Riley 1917), the others by"
                      + " the spread of published yields.")
              .example("1.085", "0.998")
              .gives(
                  "% vol",
                  a ->
                      PlusMinus.percentVolume(
                          a.number(0), a.number(1), a.number(2), a.number(3), kind(a, 4))),
          CatalogueFunction.named("ABVFROMWEIGHTLOSS", Group.FERMENT)
              .summary("Alcohol in % vol from the mass that the wash has lost as gas.")
              .details(
                  "Weigh the vessel with its airlock. Without a temperature what goes off is taken"
                      + " to be carbon dioxide alone, and all of it. With one, the gas that stays"
                      + " dissolved (1.5 g/L at 20 °C and 10 % vol, worth 0.2 % vol) and the vapours"
                      + " of water and alcohol that go off with it are counted; an airlock in the"
                      + " cold gives some of those back. Refuses a loss that the sugar cannot give.")
              .takes(
                  originalGravity(),
                  number("grams", Quantity.GRAMS, "Grams lost since the start.").told("gramsLost"),
                  number("litres", Quantity.LITRES, "Litres at 20 °C at the start."),
                  number(
                          "temperatureC",
                          Quantity.FERMENT_TEMPERATURE,
                          "Temperature of the ferment; leave out to take only the gas into"
                              + " account.")
                      .orNothing(),
                  wash())
              .source(
                  GAS_SOURCE
                      + " Dissolved gas: CRC Handbook of Chemistry and Physics after Carroll, Slupsky"
                      + " and Mather (1991); alcohol's part: Commission Regulation (EEC) No 2676/90,"
                      + " annex. Vapours: van Laar and Antoine as in BOILINGPOINT.")
              .caution(GAS)
              .example("1.085", "1900", "23")
              .gives(
                  "% vol",
                  a ->
                      a.given(3)
                          ? WeighedGas.percentVolume(
                              a.number(0), a.number(1), a.number(2), a.number(3), kind(a, 4))
                          : CarbonDioxide.percentVolume(
                              a.number(0), a.number(1), a.number(2), kind(a, 4))),
          CatalogueFunction.named("CARBONDIOXIDE", Group.FERMENT)
              .summary("Grams of carbon dioxide that a wash has made.")
              .details(
                  "The other way round of ABVFROMWEIGHTLOSS without a temperature. At room"
                      + " temperature a gram fills about half a litre. Refuses what ABV refuses.")
              .takes(
                  originalGravity(),
                  gravity(),
                  number("litres", Quantity.LITRES, "Litres at 20 °C at the start."),
                  wash())
              .source(GAS_SOURCE)
              .caution(GAS)
              .example("1.085", "0.998", "23")
              .gives(
                  "g", a -> CarbonDioxide.grams(a.number(0), a.number(1), a.number(2), kind(a, 3))),
          CatalogueFunction.named("FEDORIGINAL", Group.FERMENT)
              .summary("The original gravity that a wash fed in steps amounts to.")
              .details(
                  "Everything put in, taken as if it had gone in at once, mixed by mass at 20 °C:"
                      + " use it as original gravity of the whole. Parts may be syrups up to SG"
                      + " 1.400. Rows where litres and gravities are blank are passed over. Refuses"
                      + " litres without a gravity and more than SG 1.190 in all.")
              .takes(
                  MakeupEntries.litresOfParts(),
                  MakeupEntries.gravitiesOfParts(),
                  numbers("kilograms", Quantity.KILOGRAMS_OR_NONE, "Sugar fed, kg each time.")
                      .orNothing(),
                  MakeupEntries.kind())
              .source("Mass balance over ICUMSA SPS-4 (1998); solids as in SUGARFORGRAVITY.")
              .example("20", "1.060", "1,1")
              .gives(
                  "SG",
                  a ->
                      Feeding.original(
                          a.numbers(0),
                          a.numbers(1),
                          a.given(2) ? a.numbers(2) : new double[0],
                          MakeupEntries.solids(a, 3),
                          Quantity.ORIGINAL_GRAVITY.max())),
          CatalogueFunction.named("GRAVITYATABV", Group.FERMENT)
              .summary("SG 20/20 at which a wash will hold a given alcohol.")
              .details(
                  "ABV the other way round: where to look for the target while it ferments. Refuses"
                      + " more alcohol than the original gravity can give.")
              .takes(
                  originalGravity(),
                  number("percentVolume", Quantity.FERMENTED_STRENGTH, "Alcohol wanted."),
                  wash())
              .source("The balance as in ABV.")
              .example("1.085", "10")
              .gives("SG", a -> Forecast.gravityAt(a.number(0), a.number(1), kind(a, 2))),
          CatalogueFunction.named("ORIGINALFORABV", Group.FERMENT)
              .summary("Original gravity that gives a wanted alcohol at a final gravity.")
              .details(
                  "ABV the other way round, for planning. Refuses what needs more than SG 1.190"
                      + " or a final gravity lower than such a wash can ferment to.")
              .takes(
                  number("percentVolume", Quantity.FERMENTED_STRENGTH, "Alcohol wanted."),
                  number("finalGravity", Quantity.GRAVITY, "SG 20/20 where it will end."),
                  wash())
              .source("The balance as in ABV.")
              .example("10", "0.998")
              .gives("SG", a -> Forecast.originalFor(a.number(0), a.number(1), kind(a, 2))),
          CatalogueFunction.named("FINALGRAVITY", Group.FERMENT)
              .summary("SG 20/20 at which a wash ends when all that is fermentable is gone.")
              .details(
                  "By the share of the extract that yeast can ferment; the glycerol and acids that"
                      + " it makes stay and are included, except for MALT, whose balance has no"
                      + " such term."
                      + " Nutrients, strength and yeast may stop it earlier. Refuses an end below SG"
                      + " 0.970, where no yeast comes to."
                      + " FINALGRAVITYPLUSMINUS says how sure it is. Use it as expectedFinal of"
                      + " FERMENTSTATE and DAYSTOFINISH.")
              .takes(originalGravity(), fermentable(), washOfKind())
              .source(END_SOURCE)
              .example("1.085", "MOLASSES")
              .gives(
                  "SG",
                  a ->
                      Quantity.GRAVITY.check(
                          Sentence.of("name.finalGravity"),
                          ExpectedEnd.gravity(a.number(0), share(a), washOfKind(a)))),
          CatalogueFunction.named("FINALGRAVITYPLUSMINUS", Group.FERMENT)
              .summary("Plus-or-minus of FINALGRAVITY in SG, one standard deviation.")
              .details(
                  "From the fermentable share (honey 0.05, molasses 0.07, malt 0.05; a stated one"
                      + " 0.02), the balance as in ABVPLUSMINUS and 0.001 SG for sugars that yeast"
                      + " leaves.")
              .takes(originalGravity(), fermentable(), washOfKind())
              .source(END_SOURCE)
              .example("1.085", "MOLASSES")
              .gives(
                  "SG",
                  a ->
                      ExpectedEnd.plusMinus(
                          a.number(0),
                          share(a),
                          a.word(1) == null
                              ? STATED_SHARE_ERROR
                              : SugarKind.valueOf(a.word(1)).fermentableError(),
                          washOfKind(a))),
          CatalogueFunction.named("FERMENTRATE", Group.FERMENT)
              .summary("Points of gravity per day that a wash is falling now.")
              .details(
                  "The straight line through the readings of the last two days, or through the"
                      + " last three readings if they are fewer; a point is 0.001 SG. Negative when"
                      + " the gravity rises. A rise of more than 5 points is taken for a feed, and"
                      + " only what came after counts. Refuses fewer than two readings.")
              .takes(times(), gravities())
              .source(THRESHOLDS)
              .example("0,1,2,3,4", "1.085,1.080,1.066,1.052,1.040")
              .gives("points/day", a -> Progress.rate(a.numbers(0), a.numbers(1))),
          CatalogueFunction.named("FERMENTSTATE", Group.FERMENT)
              .summary("Whether a wash is in lag, working, slowing, stuck, done or restarted.")
              .details(
                  "By the same fit as DAYSTOFINISH. lag: fallen by less than 4 points, within three"
                      + " days. working: falling. slowing: falling at less than half its fastest."
                      + " stuck: below one point per day and not at its end, or not begun after three"
                      + " days. done: below one point per day and within 3 points of the expected"
                      + " final gravity or under it, or at SG 1.000 or under it. restarted: falling"
                      + " after it had stood still, by 4 points or more. With fewer than three"
                      + " readings or less than a day it says: too few readings. Done means that the"
                      + " gravity stands still; it does not mean that a closed vessel is safe from"
                      + " pressure.")
              .takes(times(), gravities(), expectedFinal())
              .source(FIT)
              .caution(GAS)
              .example("0,1,2,3,4", "1.085,1.080,1.066,1.052,1.040")
              .givesText(a -> Progress.state(a.numbers(0), a.numbers(1), a.number(2))),
          CatalogueFunction.named("DAYSTOFINISH", Group.FERMENT)
              .summary("Days from the last reading until the expected final gravity.")
              .details(
                  "Curves of growing yeast and vanishing sugar are fitted to the readings, the last"
                      + " ones counting most, with a reading error of 0.001 SG; what is usual of"
                      + " ferments counts too: that it ends within 0.003 SG of the expected end,"
                      + " takes some days and tails off. They are averaged by how probable the"
                      + " readings make them; the days given are those most likely right within 30 %"
                      + " or a day, and the end is where at most 2 points are left. On generated"
                      + " ferments between their first fall and 95 % of it, four of five were"
                      + " right so; three of four in the early half; of kinds of courses that the"
                      + " fit was not chosen on six to nine of ten by kind. Two-phase, exponential"
                      + " and long-tailed"
                      + " ones take longer than it says: look at DAYSTOFINISHPLUSMINUS. 0 when"
                      + " it is done. Refuses what has not begun or is stuck, fewer than three"
                      + " readings, and readings that do not tell to within 4 days or four fifths.")
              .takes(times(), gravities(), expectedFinal())
              .source(FIT)
              .example("0,1,2,3,4,5", "1.085,1.080,1.066,1.052,1.036,1.024")
              .gives("days", a -> Finish.of(a.numbers(0), a.numbers(1), a.number(2)).days()),
          CatalogueFunction.named("DAYSTOFINISHPLUSMINUS", Group.FERMENT)
              .summary("Plus-or-minus of DAYSTOFINISH in days, one standard deviation.")
              .details(
                  "From the reading error, how far the end may be off, and what the shape of the"
                      + " curve leaves open. On"
                      + " generated ferments it held the truth in 65 to 80 of 100. 0 when the ferment"
                      + " is done. Refuses what DAYSTOFINISH refuses.")
              .takes(times(), gravities(), expectedFinal())
              .source(FIT)
              .example("0,1,2,3,4,5", "1.085,1.080,1.066,1.052,1.036,1.024")
              .gives("days", a -> Finish.of(a.numbers(0), a.numbers(1), a.number(2)).plusMinus()));

  private CourseEntries() {}

  private static Parameter fermentable() {
    return wordOrNumber(
            "kind",
            MakeupEntries.KINDS,
            Quantity.SHARE,
            "Kind of sugar, or the fermentable share of the extract (sucrose, dextrose and invert"
                + " 1, honey 0.95, molasses and malt 0.65; molasses of 0.58 to 0.80 are"
                + " published).")
        .orElse("SUCROSE");
  }

  private static double share(Arguments a) {
    return a.word(1) == null ? a.number(1) : SugarKind.valueOf(a.word(1)).fermentable();
  }

  private static Parameter washOfKind() {
    return wordOrNumber(
            "wash",
            WashKind.words(),
            Quantity.YIELD,
            "What ferments, as in ABV; left out: what goes with the kind of sugar, MALT with a"
                + " share.")
        .orNothing();
  }

  private static WashKind washOfKind(Arguments a) {
    if (a.given(2)) {
      return kind(a, 2);
    }
    return a.word(1) == null ? WashKind.MALT : SugarKind.valueOf(a.word(1)).wash();
  }

  private static Parameter times() {
    return numbers("times", Quantity.DAYS, "Days or dates of the readings, in order.");
  }

  private static Parameter gravities() {
    return numbers("gravities", Quantity.GRAVITY, "Corrected SG 20/20 of the readings.");
  }

  private static Parameter expectedFinal() {
    return number(
            "expectedFinal", Quantity.GRAVITY, "SG 20/20 where it should end; see FINALGRAVITY.")
        .orElse(1.0);
  }
}
