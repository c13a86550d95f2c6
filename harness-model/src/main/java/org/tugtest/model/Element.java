package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is inside a device between its pins. Ends are names of pins of the same device; an end is
 * null only when the file does not say it rightly.
 */
public sealed interface Element {
  /** The word of the format for its kind. */
  String kind();

  /** The pins it joins or uses, in the order of the format; those not given are left out. */
  List<String> ends();

  private static List<String> given(@Nullable String first, @Nullable String second) {
    if (first == null) {
      return second == null ? List.of() : List.of(second);
    }
    return second == null ? List.of(first) : List.of(first, second);
  }

  /**
   * A battery, alternator or converter.
   *
   * @param volts open volts
   * @param ohms inner resistance when giving
   * @param maxA greatest current
   * @param chargeOhms inner resistance when taking
   * @param generator gives only where a state says it runs, never takes
   * @param selfLimiting {@code maxA} counts like a fuse's rating
   * @param fedBy load of the same device without which it gives nothing: the input of a converter
   */
  record Source(
      @Nullable String plus,
      @Nullable String minus,
      @Nullable Double volts,
      @Nullable Double ohms,
      @Nullable Double maxA,
      @Nullable Double chargeOhms,
      boolean generator,
      boolean selfLimiting,
      @Nullable String fedBy)
      implements Element {
    @Override
    public String kind() {
      return "source";
    }

    @Override
    public List<String> ends() {
      return given(plus, minus);
    }
  }

  /**
   * Something that draws power. One of {@code amps}, {@code ohms}, {@code watts}, or {@code watts}
   * with {@code atVolts} (then a resistance).
   *
   * @param inrushA greatest current when switched on, for {@code inrushS} seconds
   * @param dutyPercent share of the time it draws
   * @param minV it stops working below
   * @param maxV it stands no more
   * @param maxDropPercent allowed drop, per cent of nominal
   */
  record Load(
      @Nullable String a,
      @Nullable String b,
      @Nullable Double amps,
      @Nullable Double ohms,
      @Nullable Double watts,
      @Nullable Double atVolts,
      Use use,
      @Nullable Double inrushA,
      @Nullable Double inrushS,
      double dutyPercent,
      boolean intermittent,
      boolean critical,
      @Nullable Double minV,
      @Nullable Double maxV,
      @Nullable Double capacitanceUf,
      @Nullable Double maxDropPercent)
      implements Element {
    @Override
    public String kind() {
      return "load";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }

    /** When a load draws. */
    public enum Use implements Word {
      /** Whenever it has volts; wrong in a state that does not list it. */
      SWITCHED,
      /** Only where a state lists it. */
      INTERNAL,
      /** Always; nothing is expected of it. */
      FREE
    }
  }

  /**
   * A place for a fuse, or a control unit's electronic trip.
   *
   * @param ratingA when the rating is fixed; else the fitted part gives it
   */
  record Fuse(
      @Nullable String a,
      @Nullable String b,
      @Nullable Double ratingA,
      @Nullable String style,
      boolean electronic)
      implements Element {
    @Override
    public String kind() {
      return "fuse";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }
  }

  /**
   * A contact of a switch or relay.
   *
   * @param coil element of this device that moves it; null for a switch
   * @param restClosed closed while its coil is released
   * @param closedIn positions of the device in which a switch contact is closed
   * @param milliohm when closed
   */
  record Contact(
      @Nullable String a,
      @Nullable String b,
      @Nullable String coil,
      boolean restClosed,
      List<String> closedIn,
      boolean isolator,
      @Nullable Double ratingA,
      double milliohm)
      implements Element {
    public Contact {
      closedIn = List.copyOf(closedIn);
    }

    @Override
    public String kind() {
      return "contact";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }
  }

  /**
   * A relay coil.
   *
   * @param maxV it stands no more
   */
  record Coil(
      @Nullable String a,
      @Nullable String b,
      @Nullable Double ohms,
      @Nullable Double pullInV,
      @Nullable Double dropOutV,
      @Nullable Double maxV)
      implements Element {
    @Override
    public String kind() {
      return "coil";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }
  }

  /**
   * A diode from {@code a} (anode) to {@code b} (cathode).
   *
   * @param volts forward volts
   */
  record Diode(@Nullable String a, @Nullable String b, double volts, @Nullable Double maxA)
      implements Element {
    @Override
    public String kind() {
      return "diode";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }
  }

  /** A bus bar, body, strap or header. */
  record Link(@Nullable String a, @Nullable String b, double milliohm) implements Element {
    @Override
    public String kind() {
      return "link";
    }

    @Override
    public List<String> ends() {
      return given(a, b);
    }
  }

  /**
   * A pin that carries a signal and no power.
   *
   * @param reference the pin its level is measured against
   */
  record Signal(@Nullable String pin, @Nullable Type type, @Nullable String reference)
      implements Element {
    @Override
    public String kind() {
      return "signal";
    }

    @Override
    public List<String> ends() {
      return given(pin, reference);
    }

    /** The sort of signal. */
    public enum Type implements Word {
      ANALOG,
      DIGITAL,
      PULSE,
      PWM,
      CAN_HIGH,
      CAN_LOW,
      LIN,
      SUPPLY_5V
    }
  }
}
