package washbook.runner;

import java.util.List;
import java.util.Optional;
import washbook.log.language.Message;
import washbook.runner.chart.ChartWriter;
import washbook.runner.sheet.PortableWriter;
import washbook.runner.sheet.SheetReader;
import washbook.runner.sheet.SheetWriter;

/**
 * One file format: one reader and one writer.
 *
 * @param name as shown in messages
 * @param extensions lower case, without the point
 * @param holdsFormulas whether formulas can be written into it
 * @param charts adds the sheet with charts; empty when the format has no place for one
 * @param portable makes pack formulas portable; empty when the format holds none
 */
public record FileFormat(
    Message name,
    List<String> extensions,
    boolean holdsFormulas,
    SheetReader reader,
    SheetWriter writer,
    Optional<ChartWriter> charts,
    Optional<PortableWriter> portable) {}
