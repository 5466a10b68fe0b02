package washbook.functions.portable.form;

import java.util.function.ToDoubleFunction;

/**
 * One polynomial to be fitted.
 *
 * @param key names the polynomial in expressions and in the list of fitted ones
 * @param whole an expression that holds the polynomial once, and others only when fitted before
 * @param exact what {@code whole} has to give; NaN where the arguments are refused
 * @param domain where it has to hold
 * @param wanted the largest error allowed, in the unit of {@code exact}
 * @param mostDegrees the highest degree to try in each variable
 */
record Fit(
    String key,
    Expression whole,
    ToDoubleFunction<double[]> exact,
    Domain domain,
    double wanted,
    int... mostDegrees) {}
