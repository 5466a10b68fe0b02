package washbook.functions.portable;

import java.util.List;
import washbook.functions.Answer;

/** A formula that is one portable call and nothing else, so that its result can be worked out. */
public final class WholeCall {
  private final CompiledCall call;

  WholeCall(CompiledCall call) {
    this.call = call;
  }

  /** The texts of the cells and expressions that it takes. */
  public List<String> cells() {
    return List.copyOf(call.cells());
  }

  /**
   * What the portable formula gives for these values of {@link #cells}: Double, String, or null for
   * blank. The text "" where a cell is blank; a refusal stands for #N/A.
   */
  public Answer answer(List<?> values) {
    return call.answer(values);
  }
}
