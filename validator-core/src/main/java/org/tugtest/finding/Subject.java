package org.tugtest.finding;

import org.tugtest.text.NaturalOrder;

/**
 * A thing that a rule speaks of, as a place string: {@code wires/W1}, {@code connectors/R1:3},
 * {@code devices/ECU.supply}, {@code parts/wires/w1.0}.
 *
 * @param place the place string
 */
public record Subject(String place) implements Comparable<Subject> {
  private static final String PARTS = "parts/";

  /** The whole harness. */
  public static final Subject HARNESS = new Subject("harness");

  /** A thing with an id of its own, in {@code section}. */
  public static Subject of(String section, String id) {
    return new Subject(section + "/" + id);
  }

  /** A wire. */
  public static Subject wire(String id) {
    return of("wires", id);
  }

  /** A connector. */
  public static Subject connector(String id) {
    return of("connectors", id);
  }

  /** A cavity of a connector. */
  public static Subject cavity(String connector, String cavity) {
    return of("connectors", connector + ":" + cavity);
  }

  /** A device. */
  public static Subject device(String id) {
    return of("devices", id);
  }

  /** A pin of a device. */
  public static Subject pin(String device, String pin) {
    return of("devices", device + ":" + pin);
  }

  /** An element or a port of a device. */
  public static Subject element(String device, String element) {
    return of("devices", device + "." + element);
  }

  /** A splice. */
  public static Subject splice(String id) {
    return of("splices", id);
  }

  /** A loom. */
  public static Subject loom(String id) {
    return of("looms", id);
  }

  /** A part of a kind ({@code wires}, {@code housings}, ..). */
  public static Subject part(String kind, String id) {
    return of(PARTS + kind, id);
  }

  /** A file. */
  public static Subject file(String path) {
    return of("files", path);
  }

  /** The section it stands in: {@code wires}, {@code parts/wires}, {@code harness}, .. */
  public String section() {
    int from = place.startsWith(PARTS) ? PARTS.length() : 0;
    int slash = place.indexOf('/', from);
    return slash < 0 ? place : place.substring(0, slash);
  }

  /** The id in its section, with pin or element, as people say it. */
  public String id() {
    String section = section();
    return section.length() == place.length() ? place : place.substring(section.length() + 1);
  }

  @Override
  public int compareTo(Subject other) {
    return NaturalOrder.NATURAL.compare(place, other.place);
  }

  @Override
  public String toString() {
    return place;
  }
}
