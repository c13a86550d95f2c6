package org.tugtest.network;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;

/** Something that lies between two points and that current can take. */
public sealed interface Edge {
  /** One end; of an element, the end that is named first ({@code plus} of a source). */
  Point a();

  /** The other end. */
  Point b();

  /** Where it stands in {@link Network#edges}; it makes no difference to what is equal. */
  int number();

  /** What it is called in a path: {@code W1}, {@code X1:3-LAMP:3}, {@code FB.f1}. */
  String text();

  /** The thing a person would look at. */
  Subject subject();

  /** The end that is not {@code end}. */
  default Point across(Point end) {
    return end.equals(a()) ? b() : a();
  }

  /** A wire; {@code a} is its {@code from}. */
  record OfWire(Wire wire, Point a, Point b, int number) implements Edge {
    @Override
    public String text() {
      return wire.id();
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return this == other
          || (other instanceof OfWire that
              && wire.equals(that.wire)
              && a.equals(that.a)
              && b.equals(that.b));
    }

    /** Of the id alone, which is enough to tell edges of a network apart, and quick. */
    @Override
    public int hashCode() {
      return wire.id().hashCode();
    }

    @Override
    public Subject subject() {
      return Subject.wire(wire.id());
    }
  }

  /** Two contacts that are plugged together; {@code a} is a cavity. */
  record OfMating(Point a, Point b, int number) implements Edge {
    @Override
    public boolean equals(@Nullable Object other) {
      return this == other
          || (other instanceof OfMating that && a.equals(that.a) && b.equals(that.b));
    }

    @Override
    public int hashCode() {
      return 31 * a.hashCode() + b.hashCode();
    }

    @Override
    public String text() {
      return a + "-" + b;
    }

    @Override
    public Subject subject() {
      return a.subject();
    }
  }

  /** Metal bolted to metal; {@code a} is the pin of the device that says so. */
  record OfBolt(Point a, Point b, int number) implements Edge {
    @Override
    public boolean equals(@Nullable Object other) {
      return this == other
          || (other instanceof OfBolt that && a.equals(that.a) && b.equals(that.b));
    }

    @Override
    public int hashCode() {
      return 31 * a.hashCode() + b.hashCode();
    }

    @Override
    public String text() {
      return a + "-" + b;
    }

    @Override
    public Subject subject() {
      return a.subject();
    }
  }

  /**
   * What is inside a device between two of its pins. Signals are no edges: they carry no power.
   *
   * @param fitted false for a way without a fuse, which is open; true for everything else
   */
  record OfElement(
      String device, String name, Element element, boolean fitted, Point a, Point b, int number)
      implements Edge {
    @Override
    public String text() {
      return device + "." + name;
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return this == other
          || (other instanceof OfElement that
              && device.equals(that.device)
              && name.equals(that.name)
              && element.equals(that.element)
              && fitted == that.fitted
              && a.equals(that.a)
              && b.equals(that.b));
    }

    /** Of the names alone, which are enough to tell edges of a network apart, and quick. */
    @Override
    public int hashCode() {
      return 31 * device.hashCode() + name.hashCode();
    }

    @Override
    public Subject subject() {
      return Subject.element(device, name);
    }
  }
}
