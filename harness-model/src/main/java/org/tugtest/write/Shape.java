package org.tugtest.write;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.NaturalOrder;

/**
 * How the tidy form writes one sort of value: the order of its members and whether it is one line.
 *
 * @param layout one line, or a line for each member
 * @param order the known properties, first to last; empty for a map of ids
 * @param known what the known properties hold, where that is an object or list
 * @param entry what every other member of an object, or every item of a list, holds
 */
record Shape(Layout layout, List<String> order, Map<String, Shape> known, @Nullable Shape entry) {

  /** Where properties that the table does not name stand in an order. */
  static final String OTHERS = "*";

  /** Anything that the table does not name: inner objects open, what they hold is one line. */
  static final Shape OTHER =
      new Shape(
          Layout.BY_CONTENT,
          List.of(),
          Map.of(),
          new Shape(Layout.LINE, List.of(), Map.of(), null));

  /** When a value is broken into lines. */
  enum Layout {
    /** Each member has its own line, even the only one. */
    OPEN,
    /** All on one line. */
    LINE,
    /** One line, unless there is an object inside. */
    BY_CONTENT
  }

  /** A map of ids, a line for each entry. */
  static Shape map(Shape entry) {
    return new Shape(Layout.OPEN, List.of(), Map.of(), entry);
  }

  /** A map from ids to plain values, a line for each. */
  static Shape map() {
    return map(line(""));
  }

  /** A list, a line for each item. */
  static Shape list(Shape item) {
    return new Shape(Layout.OPEN, List.of(), Map.of(), item);
  }

  /** An object on one line; {@code order} has the names with blanks between. */
  static Shape line(String order) {
    return new Shape(Layout.LINE, split(order), Map.of(), null);
  }

  /** An object with a line for each property. */
  static Shape open(String order) {
    return new Shape(Layout.OPEN, split(order), Map.of(), null);
  }

  /** An object on one line unless it holds another. */
  static Shape byContent(String order) {
    return new Shape(Layout.BY_CONTENT, split(order), Map.of(), null);
  }

  /** The same, where property {@code name} holds values of that shape. */
  Shape with(String name, Shape shape) {
    Map<String, Shape> more = new HashMap<>(known);
    more.put(name, shape);
    return new Shape(layout, order, Map.copyOf(more), entry);
  }

  /** What a member of that name holds. */
  Shape of(String name) {
    Shape shape = known.get(name);
    if (shape != null) {
      return shape;
    }
    return entry != null ? entry : OTHER;
  }

  /** What the items of a list hold. */
  Shape item() {
    return entry != null ? entry : OTHER;
  }

  /** Whether a member named {@code left} stands before one named {@code right}. */
  int compare(String left, String right) {
    int byOrder = Integer.compare(rank(left), rank(right));
    return byOrder != 0 ? byOrder : NaturalOrder.NATURAL.compare(left, right);
  }

  /** Known properties as in the order; others at the mark, else before {@code note}, else last. */
  private int rank(String name) {
    int known = order.indexOf(name);
    if (known >= 0) {
      return 2 * known;
    }
    int mark = order.indexOf(OTHERS);
    if (mark >= 0) {
      return 2 * mark;
    }
    int note = order.indexOf("note");
    return note >= 0 ? 2 * note - 1 : 2 * order.size();
  }

  private static List<String> split(String order) {
    return order.isEmpty() ? List.of() : List.of(order.split(" "));
  }
}
