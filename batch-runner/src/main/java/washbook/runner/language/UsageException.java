package washbook.runner.language;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import washbook.log.language.Language;
import washbook.log.language.Message;

/** A command line that makes no sense; says why, in the language of whoever reads it. */
public final class UsageException extends CommandLine.ParameterException {
  private static final long serialVersionUID = 1L;

  private final transient Message told;

  private UsageException(CommandSpec spec, Message told) {
    super(spec.commandLine(), told.in(Language.EN));
    this.told = told;
  }

  /** One of the texts about command lines. */
  public static UsageException of(CommandSpec spec, String key, Object... arguments) {
    return new UsageException(spec, Wording.message(key, arguments));
  }

  /** What is wrong. */
  public Message told() {
    return told;
  }
}
