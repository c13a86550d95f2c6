package org.tugtest.write;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What came of merging an edited sheet.
 *
 * @param files new texts by path, only of files that change, without a byte-order mark; a file with
 *     a problem is not among them
 * @param changed things of which fields changed: place strings, in the order of the sheet
 * @param added things that are new
 * @param missing things that are written, but no longer in the sheet; they stay unless their
 *     removal was asked for
 * @param problems what stood in the way, in the order of the sheet
 */
public record SheetMergeResult(
    Map<String, String> files,
    List<String> changed,
    List<String> added,
    List<String> missing,
    List<CellProblem> problems) {
  public SheetMergeResult {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
    changed = List.copyOf(changed);
    added = List.copyOf(added);
    missing = List.copyOf(missing);
    problems = List.copyOf(problems);
  }
}
