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
import org.tugtest.report.html.text.Figures;
import org.tugtest.text.Quoted;

/**
 * Every fuse way, and what goes dead when its fuse opens.
 *
 * @param chunks in stretches that a browser lays out one by one
 * @param empty ways without a fuse
 */
public record FusesRoom(List<List<Row>> chunks, List<String> empty) {
  private static final int CHUNK = 100;
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
   * @param moreUsers how many more
   * @param wires the first of the wires that go dead
   * @param moreWires how many more
   */
  public record Row(
      String fuse,
      String rating,
      String part,
      String carries,
      boolean near,
      List<User> users,
      int moreUsers,
      List<String> wires,
      int moreWires) {
    public Row {
      users = List.copyOf(users);
      wires = List.copyOf(wires);
    }
  }

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
    List<List<Row>> chunks = new ArrayList<>();
    List<Row> chunk = new ArrayList<>();
    List<String> empty = new ArrayList<>();
    boolean many = facts.network().edges().stream().filter(Sides::isFuse).count() > MANY;
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement fuse && Sides.isFuse(edge)) {
        if (fuse.fitted()) {
          chunk.add(row(facts, fuse, outages.without(List.of(fuse)), numbers, many));
        } else {
          empty.add(fuse.text());
        }
        if (chunk.size() == CHUNK) {
          chunks.add(List.copyOf(chunk));
          chunk.clear();
        }
      }
    }
    if (!chunk.isEmpty()) {
      chunks.add(List.copyOf(chunk));
    }
    return new FusesRoom(List.copyOf(chunks), List.copyOf(empty));
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
        users.stream()
            .limit(mostUsers)
            .map(user -> new User(user.text(), numbers.getOrDefault(user.text(), 0)))
            .toList(),
        Math.max(0, users.size() - mostUsers),
        wires.stream().limit(mostWires).map(Edge::text).toList(),
        Math.max(0, wires.size() - mostWires));
  }

  /** How many fuses there are. */
  public int count() {
    return chunks.stream().mapToInt(List::size).sum();
  }
}
