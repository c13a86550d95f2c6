package org.tugtest.solve;

/**
 * What lies between two nodes of a circuit. Ohms are never negative; those under {@link
 * #LEAST_OHMS} count as none.
 */
public sealed interface Branch {
  /** A resistance below this, in ohms, makes two nodes one. */
  double LEAST_OHMS = 1e-9;

  /** One end; plus of a source, anode of a diode. */
  int a();

  /** The other end. */
  int b();

  private static double sane(double value, String what) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " of " + value);
    }
    return value;
  }

  private static double some(double value, String what) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " of " + value);
    }
    return value;
  }

  /** Nothing that conducts. */
  record Open(int a, int b) implements Branch {}

  /** A resistance in ohms; 0 makes both nodes one. */
  record Resistor(int a, int b, double ohms) implements Branch {
    public Resistor {
      sane(ohms, "ohms");
    }
  }

  /**
   * A source.
   *
   * @param volts open volts
   * @param ohms inner resistance when giving, above 0
   * @param chargeOhms inner resistance when taking, above 0; of no effect for a generator
   * @param maxA greatest current it gives; infinite when it has no such limit
   * @param generator whether it never takes
   */
  record Source(
      int a, int b, double volts, double ohms, double chargeOhms, double maxA, boolean generator)
      implements Branch {
    public Source {
      some(ohms, "ohms");
      some(chargeOhms, "chargeOhms");
      if (!(maxA > 0) || !Double.isFinite(volts)) {
        throw new IllegalArgumentException("source of " + volts + " V, " + maxA + " A");
      }
    }

    /** The same source, able to give any current. */
    public Source unlimited() {
      return new Source(a, b, volts, ohms, chargeOhms, Double.POSITIVE_INFINITY, generator);
    }
  }

  /**
   * A load that draws the same current, or the same power, at any volts from its floor upwards, and
   * is a resistance below.
   *
   * @param amount amperes, or watts
   * @param watts whether the amount is watts
   * @param floorV volts below which it is a resistance, above 0
   */
  record Load(int a, int b, double amount, boolean watts, double floorV) implements Branch {
    public Load {
      sane(amount, "amount");
      some(floorV, "floor");
    }

    /** The current at some volts; negative volts give a negative current. */
    public double amps(double volts) {
      double size = Math.abs(volts);
      double conductance = siemens(size);
      return Math.copySign(conductance * size, volts);
    }

    /** The current per volt at some volts. */
    public double siemens(double volts) {
      double at = Math.max(Math.abs(volts), floorV);
      return watts ? amount / (at * at) : amount / at;
    }

    /** How the current grows with the volts; negative for watts above the floor. */
    double slope(double volts) {
      if (Math.abs(volts) < floorV) {
        return siemens(volts);
      }
      return watts ? -siemens(volts) : 0;
    }
  }

  /**
   * A diode from {@code a} to {@code b}.
   *
   * @param volts forward volts, at which it begins to conduct
   * @param ohms resistance when it conducts, above 0
   */
  record Diode(int a, int b, double volts, double ohms) implements Branch {
    public Diode {
      some(ohms, "ohms");
      if (!Double.isFinite(volts)) {
        throw new IllegalArgumentException("diode of " + volts + " V");
      }
    }
  }

  /**
   * A relay coil.
   *
   * @param ohms resistance, above 0
   * @param pullInV it pulls at these volts, either way round
   * @param dropOutV once pulled it lets go below these; never over {@code pullInV}
   */
  record Coil(int a, int b, double ohms, double pullInV, double dropOutV) implements Branch {
    public Coil {
      some(ohms, "ohms");
      sane(pullInV, "pull-in volts");
      dropOutV = Math.min(sane(dropOutV, "drop-out volts"), pullInV);
    }

    /** Whether it is pulled at these volts, having been pulled before or not. */
    public boolean pulled(double volts, boolean before) {
      double size = Math.abs(volts);
      return before ? size >= dropOutV : size >= pullInV;
    }
  }

  /**
   * A contact that a coil moves.
   *
   * @param ohms when closed
   * @param coil number of the branch that is its coil
   * @param restClosed whether it is closed while the coil is released
   */
  record Contact(int a, int b, double ohms, int coil, boolean restClosed) implements Branch {
    public Contact {
      sane(ohms, "ohms");
    }

    /** Whether it is closed. */
    public boolean closed(boolean pulled) {
      return pulled != restClosed;
    }
  }
}
