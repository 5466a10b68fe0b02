package washbook.runner.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

/** The one JSON library set-up of the runner. */
public final class Json {
  /** Unknown values stand as null, and text as it is, not escaped for web pages. */
  public static final Gson GSON = new GsonBuilder().serializeNulls().disableHtmlEscaping().create();

  private Json() {}
}
