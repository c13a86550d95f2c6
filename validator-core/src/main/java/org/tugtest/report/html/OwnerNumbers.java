package org.tugtest.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.network.Point;

/** Connectors, devices and splices, numbered as they come in. */
public final class OwnerNumbers {
  private final Map<Owner, Integer> numbers = new LinkedHashMap<>();

  /** A connector, device or splice. */
  public record Owner(Point.Kind kind, String id) {
    /** The word for its kind. */
    public String noun() {
      return switch (kind) {
        case CAVITY -> "connector";
        case PIN -> "device";
        case SPLICE -> "splice";
      };
    }
  }

  /** Gives an owner the next number, unless it has one. */
  public void add(Point.Kind kind, String id) {
    numbers.putIfAbsent(new Owner(kind, id), numbers.size());
  }

  /** All of them, by number. */
  public List<Owner> all() {
    return List.copyOf(numbers.keySet());
  }

  /** The number of an owner; -1 when there is none such. */
  public int of(Point.Kind kind, String id) {
    return numbers.getOrDefault(new Owner(kind, id), -1);
  }
}
