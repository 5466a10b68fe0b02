package washbook.functions.portable.form;

import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.sum;

import java.util.List;
import washbook.functions.quantity.Quantity;

/** The functions that correct a reading. */
final class ReadingForms {
  private static final Expression TEMPERATURE = argument(1);
  private static final Expression CALIBRATION = argument(2);
  private static final Expression WARMER = difference(TEMPERATURE, 20);

  static final List<Form> ALL = List.of(GravityForm.FORM, brix());

  private ReadingForms() {}

  private static Form brix() {
    Expression shown = difference(argument(0), argument(3));
    Expression core =
        sum(
            shown,
            product(
                difference(TEMPERATURE, CALIBRATION),
                fitted("CORRECTEDBRIX", shown, WARMER, difference(CALIBRATION, 20))));
    Domain domain =
        new Domain(
            3,
            unit -> {
              double[] at =
                  Domain.box(
                          Quantity.BRIX.min() + Quantity.BRIX_OFFSET.min(),
                          Quantity.BRIX.max() + Quantity.BRIX_OFFSET.max(),
                          Quantity.SUGAR_TEMPERATURE.min(),
                          Quantity.SUGAR_TEMPERATURE.max(),
                          Quantity.CALIBRATION_TEMPERATURE.min(),
                          Quantity.CALIBRATION_TEMPERATURE.max())
                      .arguments()
                      .apply(unit);
              double reading = Math.max(Quantity.BRIX.min(), Math.min(Quantity.BRIX.max(), at[0]));
              return new double[] {reading, at[1], at[2], reading - at[0]};
            });
    return Form.of("CORRECTEDBRIX", domain, 0.01, core).fitCore("CORRECTEDBRIX", 5, 6, 3);
  }
}
