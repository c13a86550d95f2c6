package org.tugtest.report.html.fuses;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Sides;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.protect.Outages;
import org.tugtest.protect.Ratings;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;
import org.tugtest.text.Quoted;

/**
 * Every fuse way, and what goes dead when its fuse opens.
 *
 * @param fuses those that are fitted
 * @param empty ways without a fuse
 */
public record FusesRoom(Few<Row> fuses, Few<String> empty) {
  private static final int MOST = 400;
  private static final int MOST_EMPTY = 60;
  private static final int STRETCH = 100;
  private static final int MANY = 150;
  private static final int MOST_USERS = 24;
  private static final int MOST_WIRES = 12;
  private static final int USERS_OF_MANY = 6;
  private static final int WIRES_OF_MANY = 4;

  /**
   * One fuse.
   *
   * @param rating in words
   * @param part the fitted part and its style; empty when there is none
   * @param carries the most it carries in any state; empty when that is not known
   * @param near whether that is over three quarters of its rating
   * @param users what goes dead
   * @param wires the wires that go dead
   */
  public record Row(
      String fuse,
      String rating,
      String part,
      String carries,
      boolean near,
      Few<User> users,
      Few<String> wires) {}

  /**
   * A load or coil.
   *
   * @param circuit number of its circuit on this page; 0 when it is not shown
   */
  public record User(String name, int circuit) {}

  /** The fuse map of a harness. */
  public static FusesRoom of(Facts facts, List<Circuit> circuits) {
    Map<String, Integer> numbers = new HashMap<>();
    circuits.forEach(circuit -> numbers.put(circuit.load(), circuit.number()));
    Outages outages = Outages.of(facts.network());
    List<Edge.OfElement> fitted = new ArrayList<>();
    List<String> empty = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge)) {
        if (fuse.fitted()) {
          fitted.add(fuse);
        } else {
          empty.add(fuse.text());
        }
      }
    }
    boolean many = fitted.size() + empty.size() > MANY;
    Few<Edge.OfElement> few = Few.of(fitted, MOST);
    List<Row> rows =
        few.shown().stream()
            .map(fuse -> row(facts, fuse, outages.without(List.of(fuse)), numbers, many))
            .toList();
    return new FusesRoom(new Few<>(rows, few.more()), Few.of(empty, MOST_EMPTY));
  }

  private static Row row(
      Facts facts,
      Edge.OfElement fuse,
      Outages.Outage outage,
      Map<String, Integer> numbers,
      boolean many) {
    int mostUsers = many ? USERS_OF_MANY : MOST_USERS;
    int mostWires = many ? WIRES_OF_MANY : MOST_WIRES;
    Ratings ratings = facts.protection().ratings();
    Double rating = ratings.ofFuse(fuse).orElse(null);
    double most = 0;
    String state = "";
    for (OperatingPoint point : facts.operating().all()) {
      double amps = Math.abs(point.amps(fuse));
      if (amps > most + 1e-9) {
        most = amps;
        state = point.state();
      }
    }
    boolean electronic =
        fuse.element() instanceof org.tugtest.model.Element.Fuse place && place.electronic();
    String part = ratings.part(fuse).map(org.tugtest.model.FusePart::id).orElse("");
    String style = ratings.style(fuse).orElse("");
    String share =
        rating == null || rating <= 0
            ? ""
            : " (" + Figures.fixed(100 * most / rating, 0) + " % of its rating)";
    List<Edge.OfElement> users = outage.users();
    List<Edge.OfWire> wires = outage.wires();
    return new Row(
        fuse.text(),
        (rating == null ? "not known" : Quoted.number(rating) + " A")
            + (electronic ? ", electronic" : ""),
        part.isEmpty() || style.isEmpty() ? part + style : part + ", " + style,
        state.isEmpty() ? "" : Figures.amps(most) + " in " + state + share,
        rating != null && most > 0.75 * rating,
        Few.of(
            users.stream()
                .map(user -> new User(user.text(), numbers.getOrDefault(user.text(), 0)))
                .toList(),
            mostUsers),
        Few.of(wires.stream().map(Edge::text).toList(), mostWires));
  }

  /** How many fuses there are. */
  public int count() {
    return fuses.count();
  }

  /** The fuses, in stretches that a browser lays out one by one. */
  public List<List<Row>> stretches() {
    return fuses.stretches(STRETCH);
  }
}
