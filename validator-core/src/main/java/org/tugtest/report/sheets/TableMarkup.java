package org.tugtest.report.sheets;

import java.util.List;
import org.tugtest.report.html.text.Swatch;

/** A table of a sheet as HTML. */
final class TableMarkup {
  private static final String GUESS =
      " <span class=\"guess\"><svg class=\"sign sign-guess\" aria-hidden=\"true\""
          + " focusable=\"false\"><use href=\"#i-guess\"/></svg>guess</span>";

  private TableMarkup() {}

  static void add(Markup html, Table table) {
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
    html.raw("\">\n<table>\n<thead><tr>");
    if (table.ticked()) {
      html.raw("<th scope=\"col\" class=\"tick\">Done</th>");
    }
    for (Column column : table.columns()) {
      if (column.printed()) {
        html.raw("<th scope=\"col\"" + style(column) + ">").text(column.title());
        if (!column.unit().isEmpty()) {
          html.raw(" <small>").text(column.unit()).raw("</small>");
        }
        html.raw("</th>");
      }
    }
    html.raw("</tr></thead>\n<tbody>\n");
    for (List<Cell> row : table.rows()) {
      html.raw("<tr>").raw(table.ticked() ? "<td class=\"tick\"><span></span></td>" : "");
      boolean first = true;
      for (int i = 0; i < row.size(); i++) {
        if (table.columns().get(i).printed()) {
          cell(html, table.columns().get(i), row.get(i), first);
          first = false;
        }
      }
      html.raw("</tr>\n");
    }
    html.raw("</tbody>\n</table>\n</div>\n</section>\n");
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
      html.swatch(swatch);
    } else {
      html.text(cell.text());
    }
    html.raw(cell.guessed() ? GUESS : "");
    if (!cell.below().isEmpty()) {
      html.raw("<small class=\"below\">").text(cell.below()).raw("</small>");
    }
    html.raw("</" + tag + ">");
  }
}
