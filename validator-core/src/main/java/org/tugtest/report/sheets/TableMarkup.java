package org.tugtest.report.sheets;

import java.util.List;
import java.util.stream.IntStream;
import org.tugtest.report.html.text.Swatch;

/** A table of a sheet as HTML. */
final class TableMarkup {
  private static final String GUESS =
      " <span class=\"guess\"><svg class=\"sign sign-guess\" aria-hidden=\"true\""
          + " focusable=\"false\"><use href=\"#i-guess\"/></svg>guess</span>";

  private static final int LONGEST_WORD = 16;

  private TableMarkup() {}

  /** Adds a table; one of which every column is for the CSV file alone adds nothing. */
  static void add(Markup html, Table table, NarrowTables narrow) {
    if (table.columns().stream().noneMatch(Column::printed)) {
      return;
    }
    html.raw("<section class=\"block\">\n");
    if (!table.caption().isEmpty()) {
      html.element("h2", table.caption()).raw("\n");
    }
    if (table.rows().isEmpty()) {
      html.raw("<p class=\"none\">").text(table.empty()).raw("</p>\n</section>\n");
      return;
    }
    html.raw("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"");
    html.text(table.caption().isEmpty() ? "table" : table.caption());
    boolean[] printed = printed(table);
    List<Column> columns =
        IntStream.range(0, printed.length)
            .filter(i -> printed[i])
            .mapToObj(table.columns()::get)
            .toList();
    html.raw("\">\n<table class=\"" + narrow.name(columns, table.ticked()) + "\">\n<thead><tr>");
    if (table.ticked()) {
      html.raw("<th scope=\"col\" class=\"tick\">Done</th>");
    }
    for (Column column : columns) {
      html.raw("<th scope=\"col\"" + style(column) + ">").text(column.title());
      if (!column.unit().isEmpty()) {
        html.raw(" <small>").text(column.unit()).raw("</small>");
      }
      html.raw("</th>");
    }
    html.raw("</tr></thead>\n<tbody>\n");
    for (List<Cell> row : table.rows()) {
      html.raw("<tr>").raw(table.ticked() ? "<td class=\"tick\"><span></span></td>" : "");
      boolean first = true;
      for (int i = 0; i < row.size(); i++) {
        if (printed[i]) {
          cell(html, table.columns().get(i), row.get(i), first);
          first = false;
        }
      }
      html.raw("</tr>\n");
    }
    html.raw("</tbody>\n</table>\n</div>\n</section>\n");
  }

  /** Which columns are printed; one in which no row says anything is not, unless it is room. */
  private static boolean[] printed(Table table) {
    boolean[] printed = new boolean[table.columns().size()];
    for (int i = 0; i < printed.length; i++) {
      Column column = table.columns().get(i);
      int at = i;
      printed[i] =
          column.where() == Column.Where.PAPER
              || (column.printed()
                  && table.rows().stream().anyMatch(row -> !row.get(at).isEmpty()));
    }
    return printed;
  }

  private static String style(Column column) {
    return column.number() ? " class=\"num\"" : "";
  }

  private static void cell(Markup html, Column column, Cell cell, boolean heads) {
    String tag = heads ? "th" : "td";
    html.raw("<" + tag + (heads ? " scope=\"row\"" : ""));
    html.raw(cell.known() ? style(column) : " class=\"unknown\"").raw(">");
    Swatch swatch = cell.swatch();
    if (swatch != null) {
      html.raw("<span class=\"whole\">").swatch(swatch).raw("</span>");
    } else if (isWord(cell.text())) {
      html.raw("<span class=\"whole\">").text(cell.text()).raw("</span>");
    } else {
      html.text(cell.text());
    }
    html.raw(cell.guessed() ? GUESS : "");
    if (!cell.below().isEmpty()) {
      html.raw("<small class=\"below\">").text(cell.below()).raw("</small>");
    }
    html.raw("</" + tag + ">");
  }

  /** Whether it is an id or the like, which a browser must not break at its hyphens. */
  private static boolean isWord(String text) {
    return text.length() <= LONGEST_WORD && text.indexOf('-') > 0 && text.indexOf(' ') < 0;
  }
}
