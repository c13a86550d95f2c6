package org.tugtest.write;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.text.Problem;

/** What came of reading a wire list from a spreadsheet. */
public sealed interface WireListResult {

  /**
   * A sketch harness.
   *
   * @param files tidy texts by path, the root first
   * @param wires how many wires they hold
   * @param encoding the encoding of the list, and whether that was assumed
   * @param separator what stood between its cells
   * @param columns what each column was taken for, in order
   * @param unclear everything that was not plain, sorted by row and column
   */
  record Imported(
      Map<String, String> files,
      int wires,
      String encoding,
      char separator,
      List<String> columns,
      List<Unclear> unclear)
      implements WireListResult {
    public Imported {
      files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
      columns = List.copyOf(columns);
      unclear = List.copyOf(unclear);
    }
  }

  /**
   * Nothing could be made of it.
   *
   * @param problems why; never empty
   */
  record Refused(List<Problem> problems) implements WireListResult {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
