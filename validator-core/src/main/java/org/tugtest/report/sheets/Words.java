package org.tugtest.report.sheets;

import java.util.List;

/**
 * A heading with sentences or steps below it.
 *
 * @param heading empty: none
 * @param numbered whether the lines are steps, one after the other
 */
public record Words(String heading, boolean numbered, List<String> lines) implements Block {
  public Words {
    lines = List.copyOf(lines);
  }
}
