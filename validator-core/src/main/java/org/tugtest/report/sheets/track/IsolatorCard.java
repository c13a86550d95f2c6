package org.tugtest.report.sheets.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.protect.Isolation;
import org.tugtest.report.sheets.Markup;

/** What stays live with every isolator contact open. */
final class IsolatorCard {
  private static final int MOST = 200;

  private IsolatorCard() {}

  static void add(Markup html, Facts facts) {
    html.raw("<section id=\"isolator\" class=\"room\" data-tab=\"Isolator\">\n");
    html.raw("<h2>Isolation card</h2>\n");
    Isolation isolation = facts.isolation();
    if (facts.network().sources().isEmpty()) {
      html.raw("<p>The files give no source: what stays live is not known.</p></section>\n");
      return;
    }
    if (isolation.isolators().isEmpty()) {
      html.raw("<p><b>Not judged:</b> no contact is marked as isolator, so nothing says what the");
      html.raw(" general circuit breaker opens.</p></section>\n");
      return;
    }
    html.raw("<p>With ").raw(ids(isolation.isolators())).raw(" open, however all other switches");
    html.raw(" and relays stand:</p>\n");
    loads(html, facts, isolation);
    wires(html, isolation.liveWires());
    html.raw("<p class=\"soft\">A running alternator is a source too. Open the isolator with the");
    html.raw(" engine at a fast idle and see that it stops; then measure that nothing is live.");
    html.raw("</p>\n</section>\n");
  }

  private static void loads(Markup html, Facts facts, Isolation isolation) {
    List<Edge.OfElement> fed = new ArrayList<>();
    List<Edge.OfElement> free = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Load load
          && isolation.liveWay(inside).isPresent()) {
        (load.use() == Element.Load.Use.FREE ? free : fed).add(inside);
      }
    }
    if (fed.isEmpty()) {
      html.raw("<p class=\"big\"><svg class=\"sign sign-ok\" aria-hidden=\"true\"><use");
      html.raw(" href=\"#i-ok\"/></svg><b>No load stays fed");
      html.raw(free.isEmpty() ? ".</b></p>\n" : " that should not be.</b></p>\n");
    } else {
      html.raw("<p class=\"big\"><svg class=\"sign sign-error\" aria-hidden=\"true\"><use");
      html.raw(" href=\"#i-error\"/></svg><b>Still fed:</b></p>\n<ul>");
      fed.stream().limit(MOST).forEach(load -> way(html, load, isolation.liveWay(load)));
      more(html, fed.size());
      html.raw("</ul>\n");
    }
    if (!free.isEmpty()) {
      html.raw("<p>Fed all the time by intent:</p>\n<ul>");
      free.stream().limit(MOST).forEach(load -> way(html, load, isolation.liveWay(load)));
      more(html, free.size());
      html.raw("</ul>\n");
    }
  }

  private static void way(Markup html, Edge.OfElement load, Optional<Path> way) {
    html.raw("<li>").element("b", load.text());
    way.ifPresent(path -> html.raw(" by ").text(path.text()));
    html.raw("</li>\n");
  }

  private static void more(Markup html, int count) {
    if (count > MOST) {
      html.raw("<li>and " + (count - MOST) + " more</li>\n");
    }
  }

  private static void wires(Markup html, List<Edge.OfWire> wires) {
    if (wires.isEmpty()) {
      html.raw("<p>No wire stays live.</p>\n");
      return;
    }
    html.raw("<p>" + wires.size() + (wires.size() == 1 ? " wire stays" : " wires stay"));
    html.raw(" live: ").raw(ids(wires)).raw("</p>\n");
  }

  private static String ids(List<? extends Edge> edges) {
    Markup html = new Markup().raw("<span class=\"ids\">");
    edges.stream()
        .limit(MOST)
        .forEach(edge -> html.raw("<span>").text(edge.text()).raw("</span> "));
    html.raw(edges.size() > MOST ? "and " + (edges.size() - MOST) + " more" : "");
    return html.raw("</span>").toString();
  }
}
