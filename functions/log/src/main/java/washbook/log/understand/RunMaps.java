package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import washbook.log.Doubt;
import washbook.log.LeftAlone;
import washbook.log.Understanding;
import washbook.log.layout.Header;
import washbook.log.run.RunMap;
import washbook.log.run.StillRuns;
import washbook.log.sheet.Grid;

/** What a map says about still runs, and a sheet's runs joined with its ferments. */
final class RunMaps {
  private RunMaps() {}

  /** Finds what a map says about tables of a sheet. */
  static RunMap.Finder of(Grid grid, LogMap map) {
    if (map.tables().isEmpty()) {
      return (top, bottom, first, last) -> RunMap.none();
    }
    return (top, bottom, first, last) -> {
      List<Header.HeaderCell> cells = new ArrayList<>();
      for (int column : new int[] {first, last}) {
        cells.add(new Header.HeaderCell(column, "", Set.of(), null));
      }
      return map.about(grid.name(), new Header(top, bottom, cells))
          .map(RunMaps::said)
          .orElse(RunMap.none());
    };
  }

  private static RunMap said(TableMap table) {
    Map<Integer, RunMap.Use> columns = new TreeMap<>();
    table.columns().forEach((c, use) -> columns.put(c, new RunMap.Use(use.role(), use.unit())));
    TableMap.RunPart run = table.run();
    boolean other = table.ignored() || table.isFerment();
    return new RunMap(
        other ? Boolean.FALSE : run.isRun(),
        columns,
        table.temperatureC(),
        table.corrected(),
        table.calibrationC(),
        run.volumesAt20(),
        run.chargeLitres(),
        run.chargePercentVolume(),
        run.pressureHPa(),
        table.batch(),
        table.feeds().batches(),
        table.writing());
  }

  static Understanding joined(Understanding ferments, StillRuns runs) {
    List<Doubt> doubts = new ArrayList<>(runs.doubts().all());
    doubts.addAll(ferments.doubts());
    List<LeftAlone> leftAlone = new ArrayList<>(runs.leftAlone());
    leftAlone.addAll(ferments.leftAlone());
    return new Understanding(
        ferments.sheet(),
        ferments.tables(),
        List.copyOf(doubts),
        List.copyOf(leftAlone),
        runs.runs(),
        ferments.across());
  }
}
