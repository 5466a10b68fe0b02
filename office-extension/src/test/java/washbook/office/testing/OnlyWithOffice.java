package washbook.office.testing;

import static org.junit.jupiter.api.extension.ConditionEvaluationResult.disabled;
import static org.junit.jupiter.api.extension.ConditionEvaluationResult.enabled;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Leaves the tests with a real office out, whole, where there is none; where all tests must run
 * (CI) its lack is a failure. JUnit finds this by itself, in every module that has it.
 */
public final class OnlyWithOffice implements ExecutionCondition {
  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    boolean withOffice =
        context.getTestClass().map(of -> of.getSimpleName().endsWith("IT")).orElse(false);
    boolean runs = !withOffice || System.getenv("CI") != null || OfficeProcess.isThere();
    return runs ? enabled("") : disabled(OfficeProcess.LACKS);
  }
}
