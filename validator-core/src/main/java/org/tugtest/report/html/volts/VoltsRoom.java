package org.tugtest.report.html.volts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;
import org.tugtest.rule.load.Feed;
import org.tugtest.rule.load.VoltageDropExcessive;

/**
 * What arrives at each load, and what each state takes from the sources.
 *
 * @param states every state
 * @param loads that a state wants and feeds, the worst first
 * @param unfed loads that a state wants and none feeds
 */
public record VoltsRoom(Few<StateRow> states, Few<Row> loads, Few<String> unfed) {
  private static final int STRETCH = 150;
  private static final int MOST = 400;
  private static final int MOST_NAMED = 40;
  private static final int MOST_STATES = 60;
  private static final int MOST_OTHERS = 12;

  /**
   * One state.
   *
   * @param sources what each source gives or takes
   * @param pulled relays that are pulled
   * @param troubles how the computing went, where it did not settle
   */
  public record StateRow(
      String state,
      String kind,
      Few<String> sources,
      int wanted,
      int working,
      Few<String> pulled,
      int troubles) {}

  /**
   * One load in the state in which it loses most of what it may.
   *
   * @param share what is lost, as a share of the limit, in words
   * @param tenths the same in tenths, 0 to 10, for the bar
   * @param over whether more is lost than allowed
   * @param unknown what is not known on the way and left out; empty when nothing is
   * @param others the other states, each in a line
   */
  public record Row(
      String load,
      int circuit,
      String state,
      String volts,
      String supply,
      String back,
      String limit,
      String share,
      int tenths,
      boolean over,
      String basis,
      String unknown,
      Few<String> others) {}

  private record Held(Feed feed, double limit) {
    double share() {
      return feed.drop() / limit;
    }
  }

  private record Placed(double share, Row row) {}

  /** The room of a harness. */
  public static VoltsRoom of(Facts facts, List<Circuit> circuits) {
    Map<String, Integer> numbers = new HashMap<>();
    circuits.forEach(circuit -> numbers.put(circuit.load(), circuit.number()));
    List<Placed> placed = new ArrayList<>();
    List<String> unfed = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement load && load.element() instanceof Element.Load) {
        boolean wanted = false;
        List<Held> held = new ArrayList<>();
        for (OperatingPoint point : facts.operating().all()) {
          if (point.wanted(load)) {
            wanted = true;
            Optional<Feed> feed = Feed.of(facts, point, load);
            feed.ifPresent(its -> held.add(new Held(its, VoltageDropExcessive.limitV(facts, its))));
          }
        }
        if (wanted && held.isEmpty()) {
          unfed.add(load.text());
        } else if (wanted) {
          placed.add(placed(load, held, numbers));
        }
      }
    }
    placed.sort(Comparator.comparingDouble((Placed one) -> -one.share()));
    return new VoltsRoom(
        Few.of(states(facts), MOST_STATES),
        Few.of(placed.stream().map(Placed::row).toList(), MOST),
        Few.of(unfed, MOST_NAMED));
  }

  private static Placed placed(Edge.OfElement load, List<Held> held, Map<String, Integer> numbers) {
    Held worst = held.get(0);
    for (Held one : held) {
      worst = one.share() > worst.share() + 1e-9 ? one : worst;
    }
    List<String> others = new ArrayList<>();
    for (Held one : held) {
      if (!one.equals(worst)) {
        others.add(
            one.feed().state().state()
                + ": "
                + Figures.volts(one.feed().volts())
                + ", lost "
                + Figures.drop(one.feed().drop())
                + " of "
                + Figures.drop(one.limit()));
      }
    }
    Feed feed = worst.feed();
    double share = worst.share();
    return new Placed(
        share,
        new Row(
            load.text(),
            numbers.getOrDefault(load.text(), 0),
            feed.state().state(),
            Figures.volts(feed.volts()),
            Figures.drop(feed.supplyDrop()),
            Figures.drop(feed.returnDrop()),
            Figures.drop(worst.limit()),
            Figures.fixed(100 * share, 0) + " %",
            (int) Math.max(0, Math.min(10, Math.round(10 * share))),
            share > 1,
            feed.basis() == Basis.GIVEN ? "" : feed.basis().word(),
            feed.unknown().map(Edge::text).orElse(""),
            Few.of(others, MOST_OTHERS)));
  }

  private static List<StateRow> states(Facts facts) {
    List<StateRow> rows = new ArrayList<>();
    List<Edge.OfElement> users = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Load
              || inside.element() instanceof Element.Coil)) {
        users.add(inside);
      }
    }
    for (OperatingPoint point : facts.operating().all()) {
      List<String> sources = new ArrayList<>();
      for (Edge.OfElement source : facts.network().sources()) {
        double given = -point.amps(source);
        sources.add(
            source.text()
                + (Math.abs(given) < 1e-6
                    ? " gives nothing"
                    : (given < 0 ? " takes " : " gives ")
                        + Figures.amps(given)
                        + " at "
                        + Figures.volts(Math.abs(point.across(source)))));
      }
      List<Edge.OfElement> wanted = users.stream().filter(point::wanted).toList();
      rows.add(
          new StateRow(
              point.state(),
              (point.brief() ? "brief" : "lasting")
                  + point.from().map(from -> ", from " + from).orElse(""),
              Few.of(sources, MOST_OTHERS),
              wanted.size(),
              (int) wanted.stream().filter(point::draws).count(),
              Few.of(
                  users.stream()
                      .filter(user -> user.element() instanceof Element.Coil && point.pulled(user))
                      .map(Edge::text)
                      .toList(),
                  MOST_NAMED),
              point.troubles().size()));
    }
    return List.copyOf(rows);
  }

  /** The loads, in stretches that a browser lays out one by one. */
  public List<List<Row>> stretches() {
    return loads.stretches(STRETCH);
  }
}
