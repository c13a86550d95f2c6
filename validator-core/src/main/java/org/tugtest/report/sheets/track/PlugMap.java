package org.tugtest.report.sheets.track;

import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.report.html.OwnerNumbers;
import org.tugtest.report.sheets.Markup;

/** Where each connector is and what it meets. */
final class PlugMap {
  private PlugMap() {}

  static void add(Markup html, Facts facts) {
    html.raw("<section id=\"plugs\" class=\"room\" data-tab=\"Plugs\">\n<h2>Connector map</h2>\n");
    List<String> connectors = List.copyOf(facts.wiring().connectors());
    if (connectors.isEmpty()) {
      html.raw("<p>The files name no connectors.</p>\n</section>\n");
      return;
    }
    html.raw("<p class=\"no-print\">Tap one for both its sides and all its wires.</p>\n");
    Owners owners = new Owners(facts);
    html.raw("<div class=\"scroll\"><table class=\"stack\">\n<thead><tr><th>Connector</th>");
    html.raw("<th>What it is</th><th>Cavities used</th></tr></thead>\n<tbody>\n");
    for (String id : connectors) {
      List<String> cavities = facts.wiring().cavitiesOf(id);
      long used =
          cavities.stream()
              .filter(cavity -> !facts.wiring().endsAt(Point.cavity(id, cavity)).isEmpty())
              .count();
      html.raw("<tr><th scope=\"row\"><span data-ask=\"").text(id).raw("\">").text(id);
      html.raw("</span></th><td>");
      html.text(String.join(" · ", owners.said(new OwnerNumbers.Owner(Point.Kind.CAVITY, id))));
      html.raw("</td><td data-head=\"cavities used\">" + used + " of " + cavities.size());
      html.raw("</td></tr>\n");
    }
    html.raw("</tbody></table></div>\n</section>\n");
  }
}
