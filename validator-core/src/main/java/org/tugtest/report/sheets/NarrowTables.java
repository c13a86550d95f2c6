package org.tugtest.report.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.report.html.PageMargins;

/**
 * How the tables of a sheet stand on a telephone: each row a block, each of its cells behind the
 * head of its column and before the unit. Tables with the same heads share a style, so that no cell
 * carries any of it.
 */
final class NarrowTables {
  private final Map<List<String>, Integer> numbers = new LinkedHashMap<>();

  /** The class of a table with these columns printed. */
  String name(List<Column> printed, boolean ticked) {
    List<String> rules = new ArrayList<>();
    for (int i = 1; i < printed.size(); i++) {
      Column column = printed.get(i);
      String cell = "td:nth-child(" + (i + (ticked ? 2 : 1)) + ")";
      rules.add(cell + "::before{content:" + PageMargins.quoted(column.title() + ": ") + "}");
      if (!column.unit().isEmpty()) {
        String unit = PageMargins.quoted(" " + column.unit());
        rules.add(cell + ":not(.unknown):not(:has(.below))::after{content:" + unit + "}");
        rules.add(cell + ":not(.unknown) .below::before{content:" + unit + "\"\\00a0 \"}");
      }
    }
    return "heads" + numbers.computeIfAbsent(rules, none -> numbers.size() + 1);
  }

  /** The style of the tables that were named; empty without one. */
  String style() {
    StringBuilder style = new StringBuilder();
    numbers.forEach(
        (rules, number) ->
            rules.forEach(rule -> style.append(".heads" + number + " ").append(rule).append('\n')));
    return style.length() == 0 ? "" : "@media screen and (max-width:40rem){\n" + style + "}\n";
  }
}
