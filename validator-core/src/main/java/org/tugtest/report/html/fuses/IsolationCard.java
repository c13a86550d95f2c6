package org.tugtest.report.html.fuses;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.protect.Isolation;
import org.tugtest.report.html.text.Few;

/**
 * What stays joined to a source with every isolator contact open.
 *
 * @param isolators the contacts that count as isolator
 * @param sources what stays joined to each source
 */
public record IsolationCard(List<String> isolators, List<OfSource> sources) {
  private static final int MOST = 60;

  /**
   * What stays joined to the plus of one source.
   *
   * @param generator whether it gives only while it turns
   * @param points contacts, pins and splices that stay live, its own plus left out
   * @param wires that stay live
   * @param users loads and coils that stay fed, there and back
   * @param free those that the files call free, which draw whenever they can and shall
   */
  public record OfSource(
      String source,
      boolean generator,
      Few<String> points,
      Few<String> wires,
      Few<String> users,
      Few<String> free) {}

  private static Few<String> some(Stream<String> things) {
    return Few.of(things.toList(), MOST);
  }

  /** The card of a harness. */
  public static IsolationCard of(Facts facts) {
    Network network = facts.network();
    Isolation isolation = facts.isolation();
    List<String> isolators = isolation.isolators().stream().map(Edge::text).toList();
    List<OfSource> sources = new ArrayList<>();
    for (Edge.OfElement source : network.sources()) {
      Reach live = isolation.live(source);
      sources.add(
          new OfSource(
              source.text(),
              source.element() instanceof Element.Source its && its.generator(),
              some(
                  live.points().stream()
                      .filter(point -> !point.equals(source.a()))
                      .map(Point::text)),
              some(
                  network.edges().stream()
                      .filter(edge -> edge instanceof Edge.OfWire && live.reaches(edge.a()))
                      .map(Edge::text)),
              some(
                  network.edges().stream()
                      .filter(edge -> !isFree(edge) && staysFed(edge, live, isolation.home()))
                      .map(Edge::text)),
              some(
                  network.edges().stream()
                      .filter(edge -> isFree(edge) && staysFed(edge, live, isolation.home()))
                      .map(Edge::text))));
    }
    return new IsolationCard(isolators, List.copyOf(sources));
  }

  private static boolean isFree(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && inside.element() instanceof Element.Load load
        && load.use() == Element.Load.Use.FREE;
  }

  private static boolean staysFed(Edge edge, Reach live, Reach back) {
    boolean user =
        edge instanceof Edge.OfElement inside
            && (inside.element() instanceof Element.Load
                || inside.element() instanceof Element.Coil);
    return user
        && ((live.reaches(edge.a()) && back.reaches(edge.b()))
            || (live.reaches(edge.b()) && back.reaches(edge.a())));
  }
}
