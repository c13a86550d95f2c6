package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.compare.Comparison;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.report.Tally;
import org.tugtest.report.html.text.Few;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;

/**
 * The looms as pictures and as a list.
 *
 * @param skeleton of the whole harness
 * @param figures the pictures
 * @param list the same in words
 * @param notes what is not drawn, and why
 * @param thickness what the thickness of a line means
 * @param shades what the segments can be shaded by
 * @param touched what changes against an older revision
 */
public record LoomRoom(
    Skeleton skeleton,
    Runs runs,
    List<Figure> figures,
    Few<Row> list,
    List<String> notes,
    String thickness,
    List<Shade> shades,
    Touched touched) {
  private static final int MOST_KNOTS = 140;
  private static final int MOST_IN_ALL = 500;
  private static final int MOST_ROWS = 400;
  private static final int STRETCH = 200;
  private static final int MOST_UNPLACED = 40;
  private static final int MOST_WIRES = 12;
  private static final int MOST_CHANGES = 3;

  /**
   * A picture.
   *
   * @param number from 1, for its anchors
   */
  public record Figure(int number, String title, String note, Drawing drawing) {}

  /**
   * An arm in words.
   *
   * @param wires the first of its wires
   * @param more how many more there are
   */
  public record Row(
      int arm,
      String id,
      String from,
      String to,
      String mm,
      int count,
      List<String> wires,
      int more,
      List<String> facts) {}

  /** The room of a harness that is held against nothing. */
  public static LoomRoom of(Facts facts) {
    FoundSkeleton found = FoundSkeleton.of(facts);
    return new Builder(facts, found, Touched.NOTHING).build();
  }

  /** The room of a harness with what changes against an older revision, so called. */
  public static LoomRoom of(Facts facts, String against, Comparison comparison) {
    FoundSkeleton found = FoundSkeleton.of(facts);
    return new Builder(facts, found, Touched.of(against, comparison, found)).build();
  }

  /** The list, in stretches that a browser lays out one by one. */
  public List<List<Row>> stretches() {
    return list.stretches(STRETCH);
  }

  /** How many arms there are. */
  public int arms() {
    return skeleton.arms().size();
  }

  private static final class Builder {
    private final Facts facts;
    private final FoundSkeleton found;
    private final Skeleton whole;
    private final List<Figure> figures = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Touched touched;
    private final Look look;
    private int drawn;

    Builder(Facts facts, FoundSkeleton found, Touched touched) {
      this.facts = facts;
      this.found = found;
      this.whole = found.skeleton();
      this.touched = touched;
      this.look = Look.of(facts, whole, touched);
    }

    LoomRoom build() {
      if (!whole.arms().isEmpty()) {
        Skeleton all = whole.part(whole.arms());
        if (all.knots().size() <= MOST_KNOTS) {
          figure(whole.ofLayout() ? "On the board" : "What is wired to what", all, "");
          Vehicle.of(all).ifPresent(places -> inVehicle(all, places));
        } else {
          byLoom();
        }
      }
      if (!found.unplaced().isEmpty()) {
        notes.add("Not drawn, as an end of it is not given: " + listed(found.unplaced()) + ".");
      }
      return new LoomRoom(
          whole,
          found.runs(),
          List.copyOf(figures),
          list(),
          List.copyOf(notes),
          look.thickness(),
          look.shades(),
          touched);
    }

    private static String listed(List<String> ids) {
      Few<String> few = Few.of(ids, MOST_UNPLACED);
      return (String.join(", ", few.shown()) + " " + few.said()).strip();
    }

    private void figure(String title, Skeleton part, String capped) {
      Places places = Board.of(part);
      String lengths =
          !whole.ofLayout()
              ? (facts.unread().isEmpty() ? "The harness has no layout" : "No layout could be read")
                  + ": what stands here says what is wired to what, not where it is or how far."
              : places.bent().isEmpty()
                  ? "Every segment is drawn to length."
                  : "Segments drawn as solid lines are to length; those with long dashes are not:"
                      + " they close a loop, have no length, or are far shorter or longer than"
                      + " most.";
      add(title, (lengths + " " + capped).strip(), part, places);
    }

    private void inVehicle(Skeleton all, Places places) {
      add(
          "In the vehicle",
          "Seen obliquely from where the nodes are said to be; segments are drawn straight.",
          all,
          places);
    }

    private void add(String title, String note, Skeleton part, Places places) {
      String says =
          Tally.counted(part.arms().size(), whole.ofLayout() ? "segment" : "pair")
              + (whole.ofLayout() ? " between " : " among ")
              + Tally.counted(part.knots().size(), whole.ofLayout() ? "node" : "thing")
              + part.arms().stream()
                  .max(Comparator.comparingInt(Skeleton.Arm::wires))
                  .map(
                      arm ->
                          "; the thickest is "
                              + arm.id()
                              + " with "
                              + Tally.counted(arm.wires(), "wire"))
                  .orElse("")
              + ". The list below says the same in words.";
      figures.add(
          new Figure(figures.size() + 1, title, note, Sketcher.draw(part, places, look, says)));
      drawn += part.knots().size();
    }

    private void byLoom() {
      Map<String, TreeSet<Integer>> byLoom = new TreeMap<>(NaturalOrder.NATURAL);
      for (Wire wire : facts.harness().wires().values()) {
        Integer run = found.runs().of().get(wire.id());
        if (run != null) {
          byLoom
              .computeIfAbsent(Objects.requireNonNullElse(wire.loom(), ""), none -> new TreeSet<>())
              .addAll(found.runs().all().get(run));
        }
      }
      List<String> left = new ArrayList<>();
      byLoom.forEach(
          (loom, arms) -> {
            String title = loom.isEmpty() ? "In no loom" : "Loom " + loom;
            if (drawn >= MOST_IN_ALL) {
              left.add(loom.isEmpty() ? "what is in no loom" : loom);
            } else {
              List<Skeleton.Arm> some = thickest(arms.stream().map(whole.arms()::get).toList());
              String capped =
                  some.size() == arms.size()
                      ? ""
                      : "Only the "
                          + some.size()
                          + " of "
                          + arms.size()
                          + " with most wires "
                          + (some.size() == 1 ? "is drawn." : "are drawn.");
              figure(title, whole.part(some), capped);
            }
          });
      if (!left.isEmpty()) {
        notes.add("A page with more pictures would be slow; not drawn are: " + listed(left) + ".");
      }
    }

    /** Those with most wires, as many as a picture takes. */
    private List<Skeleton.Arm> thickest(List<Skeleton.Arm> arms) {
      List<Skeleton.Arm> sorted = new ArrayList<>(arms);
      sorted.sort(
          Comparator.comparingInt((Skeleton.Arm arm) -> -arm.wires())
              .thenComparingInt(Skeleton.Arm::number));
      TreeSet<Integer> knots = new TreeSet<>();
      List<Skeleton.Arm> some = new ArrayList<>();
      for (Skeleton.Arm arm : sorted) {
        knots.add(arm.a());
        knots.add(arm.b());
        if (knots.size() > MOST_KNOTS || some.size() >= 2 * MOST_KNOTS) {
          break;
        }
        some.add(arm);
      }
      some.sort(Comparator.comparingInt(Skeleton.Arm::number));
      return some;
    }

    private Few<Row> list() {
      Map<Integer, List<String>> wires = found.runs().wires();
      Few<Skeleton.Arm> arms = Few.of(whole.arms(), MOST_ROWS);
      return new Few<>(
          arms.shown().stream()
              .map(arm -> row(arm, wires.getOrDefault(arm.number(), List.of())))
              .toList(),
          arms.more());
    }

    private Row row(Skeleton.Arm arm, List<String> wires) {
      Map<String, String> said = new LinkedHashMap<>();
      Layout.Segment segment = facts.harness().layout().segments().get(arm.id());
      if (whole.ofLayout() && segment != null) {
        said.put("coverings", String.join(", ", segment.coverings()));
        said.put("zone", segment.zone() == null ? "" : segment.zone());
        said.put(
            "splices",
            String.join(", ", arm.splices().stream().map(Skeleton.Along::splice).toList()));
      }
      Few<String> changes = Few.of(List.copyOf(look.changes(arm)), MOST_CHANGES);
      List<String> given = new ArrayList<>(look.facts(arm));
      said.entrySet().stream()
          .filter(entry -> !entry.getValue().isEmpty())
          .map(entry -> entry.getKey() + " " + entry.getValue())
          .forEach(given::add);
      changes.shown().forEach(change -> given.add("changes: " + change));
      if (changes.cut()) {
        given.add(changes.said() + " changes");
      }
      List<String> shown = wires.subList(0, Math.min(MOST_WIRES, wires.size()));
      return new Row(
          arm.number(),
          whole.ofLayout() ? arm.id() : "",
          whole.knots().get(arm.a()).id(),
          whole.knots().get(arm.b()).id(),
          arm.measured() ? Quoted.number(arm.mm()) + " mm" : "",
          wires.size(),
          List.copyOf(shown),
          wires.size() - shown.size(),
          List.copyOf(given));
    }
  }
}
