package org.tugtest.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Metres and grams of all that the looms are made of, per loom and of the whole. Devices are not
 * counted, nor blanks, of which the format knows no mass.
 */
public final class Totals {
  private final Map<String, Sum> byLoom;
  private final Sum whole;
  private final Map<String, Ways> cavities;

  Totals(Map<String, Sum> byLoom, Sum whole, Map<String, Ways> cavities) {
    this.byLoom = Collections.unmodifiableMap(byLoom);
    this.whole = whole;
    this.cavities = Collections.unmodifiableMap(cavities);
  }

  /** What a line of a total is of. */
  public enum Kind {
    /** Single wires of one part or area. */
    WIRE("wires"),
    /** Wires of a group of kind cable, as one. */
    CABLE("cables"),
    /** Connector bodies. */
    HOUSING("housings"),
    /** Crimp contacts. */
    TERMINAL("terminals"),
    /** Wire seals. */
    SEAL("seals"),
    /** Splices and end caps. */
    SPLICE("splices"),
    /** Sleeves, conduits, shrink, tape. */
    COVERING("coverings"),
    /** Clips and ties. */
    SUPPORT("supports");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in reports, in the plural. */
    public String word() {
      return word;
    }
  }

  /**
   * One kind of part.
   *
   * @param part id of the part; a bare area or gauge for a wire without one; empty when not known
   * @param count how many there are
   * @param metres their length; 0 for what has none
   * @param grams their mass, as far as it is known
   * @param withoutLength how many have no length though they need one
   * @param withoutMass how many have no mass
   */
  public record Line(
      Kind kind,
      String part,
      int count,
      double metres,
      double grams,
      int withoutLength,
      int withoutMass) {}

  /**
   * A loom, or all of them.
   *
   * @param lines by kind, then by part in natural order
   */
  public record Sum(List<Line> lines) {
    public Sum {
      lines = List.copyOf(lines);
    }

    /** Metres of wire and cable, as far as lengths are known. */
    public double metres() {
      return lines.stream()
          .filter(line -> line.kind() == Kind.WIRE || line.kind() == Kind.CABLE)
          .mapToDouble(Line::metres)
          .sum();
    }

    /** Grams of everything, as far as lengths and masses are known. */
    public double grams() {
      return lines.stream().mapToDouble(Line::grams).sum();
    }

    /** Grams of one kind of part. */
    public double grams(Kind kind) {
      return lines.stream().filter(line -> line.kind() == kind).mapToDouble(Line::grams).sum();
    }

    /** How many there are of one kind of part. */
    public int count(Kind kind) {
      return lines.stream().filter(line -> line.kind() == kind).mapToInt(Line::count).sum();
    }

    /** Whether nothing is missing from the sums. */
    public boolean complete() {
      return lines.stream().allMatch(line -> line.withoutLength() + line.withoutMass() == 0);
    }

    /** What is missing from the sums, one line each: {@code 3 wires w1.0 have no length}. */
    public List<String> lacking() {
      List<String> lacking = new ArrayList<>();
      for (Line line : lines) {
        String part = line.part().isEmpty() ? "" : " " + line.part();
        if (line.withoutLength() > 0) {
          lacking.add(line.withoutLength() + " of " + line.kind().word() + part + ": no length");
        }
        if (line.withoutMass() > 0) {
          lacking.add(line.withoutMass() + " of " + line.kind().word() + part + ": no mass");
        }
      }
      return lacking;
    }
  }

  /**
   * The ways of a connector.
   *
   * @param all cavities of its housing
   * @param wired those in which a wire ends
   */
  public record Ways(int all, int wired) {
    /** Cavities without a wire. */
    public int spare() {
      return all - wired;
    }
  }

  /** Everything. */
  public Sum whole() {
    return whole;
  }

  /** Each loom by its id; under the empty id what is loose or shared by several looms. */
  public Map<String, Sum> byLoom() {
    return byLoom;
  }

  /** The ways of each connector whose housing is known, by its id, in natural order. */
  public Map<String, Ways> cavities() {
    return cavities;
  }
}
