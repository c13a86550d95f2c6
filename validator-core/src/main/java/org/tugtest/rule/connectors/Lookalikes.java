package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.table.Cited;

/**
 * Which of the wires in one connector look the same and must not be exchanged.
 *
 * @param wires all wires there
 * @param coloured how many wire ends give a colour
 * @param onlyColour the colour of all wires, when every one gives it
 * @param groups wires of one colour and one size, two or more each
 * @param unsized whether wires of one colour could not be compared because one gives no area
 */
record Lookalikes(
    List<Wire> wires,
    int coloured,
    Optional<String> onlyColour,
    List<List<Look>> groups,
    boolean unsized) {
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  /** A wire end in a cavity, with what it looks like. */
  record Look(Point cavity, WireEnd end, String colour, Cited area) {
    Wire wire() {
      return end.wire();
    }

    String text() {
      return wire().id() + " in " + cavity.text();
    }
  }

  /**
   * Compares the wire ends of one connector.
   *
   * @param alike the greater area over the smaller up to which two sizes look the same; 1 or more
   */
  static Lookalikes among(Facts facts, List<WireEnd> ends, double alike) {
    Map<String, List<WireEnd>> byColour = new TreeMap<>();
    for (WireEnd end : ends) {
      colourOf(end.wire())
          .ifPresent(colour -> byColour.computeIfAbsent(colour, key -> new ArrayList<>()).add(end));
    }
    int coloured = byColour.values().stream().mapToInt(List::size).sum();
    List<List<Look>> groups = new ArrayList<>();
    boolean unsized = false;
    for (Map.Entry<String, List<WireEnd>> same : byColour.entrySet()) {
      if (same.getValue().size() < 2) {
        continue;
      }
      List<Look> sized = new ArrayList<>();
      for (WireEnd end : same.getValue()) {
        Cited area = facts.fitting().sizes().areaMm2(end.wire()).orElse(null);
        Point cavity = facts.wiring().pointOf(end.ref()).orElse(null);
        if (area != null && cavity != null) {
          sized.add(new Look(cavity, end, same.getKey(), area));
        }
      }
      groups.addAll(sameSize(facts, sized, alike));
      unsized |= sized.size() < same.getValue().size() && confusable(facts, same.getValue());
    }
    return new Lookalikes(
        ends.stream().map(WireEnd::wire).toList(),
        coloured,
        coloured == ends.size() && byColour.size() == 1
            ? Optional.of(byColour.keySet().iterator().next())
            : Optional.empty(),
        groups,
        unsized);
  }

  /** The colour of a wire as seen, else as drawn, in capitals and without blanks. */
  static Optional<String> colourOf(Wire wire) {
    String colour = wire.colour() == null ? wire.colourDrawn() : wire.colour();
    return colour == null || colour.isBlank()
        ? Optional.empty()
        : Optional.of(
            isPlain(colour)
                ? colour
                : BLANKS.matcher(colour).replaceAll("").toUpperCase(Locale.ROOT));
  }

  /** Whether a colour is in capitals without blanks already, as nearly all are. */
  private static boolean isPlain(String colour) {
    for (int i = 0; i < colour.length(); i++) {
      char c = colour.charAt(i);
      if (c != '/' && (c < 'A' || c > 'Z')) {
        return false;
      }
    }
    return true;
  }

  /** Whether each of these wires carries a label, and no two different wires the same. */
  static boolean labelsTellApart(List<Wire> wires) {
    Map<String, String> labels = new HashMap<>();
    for (Wire wire : wires) {
      String label = wire.labelText().strip().toLowerCase(Locale.ROOT);
      String present = labels.putIfAbsent(label, wire.id());
      if (label.isEmpty() || (present != null && !present.equals(wire.id()))) {
        return false;
      }
    }
    return true;
  }

  private static List<List<Look>> sameSize(Facts facts, List<Look> colour, double alike) {
    List<Look> sized = new ArrayList<>(colour);
    sized.sort(Comparator.comparingDouble(one -> one.area().value()));
    List<List<Look>> groups = new ArrayList<>();
    int from = 0;
    while (from < sized.size()) {
      double most = sized.get(from).area().value() * alike;
      int to = from + 1;
      while (to < sized.size() && sized.get(to).area().value() <= most) {
        to++;
      }
      List<Look> group = new ArrayList<>(sized.subList(from, to));
      if (group.size() > 1 && confusable(facts, group.stream().map(Look::end).toList())) {
        group.sort(Comparator.comparing(Look::cavity));
        groups.add(group);
      }
      from = to;
    }
    return groups;
  }

  /** Whether these sit in different cavities, are different wires and lead to different places. */
  private static boolean confusable(Facts facts, List<WireEnd> ends) {
    Set<Optional<Point>> cavities = new HashSet<>();
    Set<String> wires = new HashSet<>();
    Set<Optional<Point>> farEnds = new HashSet<>();
    boolean unknown = false;
    for (WireEnd end : ends) {
      Optional<Point> far = facts.wiring().pointOf(end.other().ref());
      cavities.add(facts.wiring().pointOf(end.ref()));
      wires.add(end.wire().id());
      farEnds.add(far);
      unknown |= far.isEmpty();
    }
    return cavities.size() > 1 && wires.size() > 1 && (unknown || farEnds.size() > 1);
  }
}
