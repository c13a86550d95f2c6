package org.tugtest.rule;

/**
 * What a finding can be that others follow from. A rule says which of these its findings are and
 * which of them its findings may follow from; the check finds out which of them do, and the reports
 * list those under their cause. Where several are the cause, the one named first here is taken.
 */
public enum Cause {
  /**
   * A wire end or a plug names what is not there. Loads and splices that lack the joint follow, and
   * contacts that are wired on one half alone.
   */
  JOINT_UNMADE("a wire end or plug that names what is not there"),

  /**
   * Contacts of a connector lead nowhere on the other half. Loads follow that lie dead behind them,
   * and as many contacts that are empty the other way round.
   */
  JOINT_ONE_SIDED("a contact that leads nowhere on the other half of its plug"),

  /**
   * A source gives volts that nothing here is made for. All that is held against volts follows, as
   * long as that is an error.
   */
  VOLTS_WRONG("a source of wrong volts"),

  /**
   * A source drives into a short. All that is said of solved states follows, as long as that is an
   * error.
   */
  SUPPLY_SHORTED("a short across a source"),

  /** Things lie on the way of a short: what is said of each of them follows. */
  ON_WAY_OF_SHORT("a short that leads through the same wire"),

  /** A wire is too thin for what flows: what is said of this wire follows. */
  WIRE_UNDER_LOAD("a wire that is too thin for what flows"),

  /** A wire is too thin for its fuse: what is said of this wire follows. */
  WIRE_UNDER_FUSE("a wire that is too thin for its fuse"),

  /** A wire burns before a fuse opens: what is said of this wire follows. */
  WIRE_BURNS("a wire that burns before its fuse opens"),

  /** A wire becomes too warm: what else is said of this wire follows. */
  WIRE_TOO_WARM("a wire that becomes too warm"),

  /**
   * A fuse lets more through than a wire stands. What is said of other wires behind the same fuses
   * follows from the one that is worst.
   */
  FUSE_TOO_GREAT("a fuse that is too great for a wire behind it"),

  /** A load lacks volts in a state: what the team expects of its volts there follows. */
  LOAD_STARVED("a load that lacks volts");

  private final String words;

  Cause(String words) {
    this.words = words;
  }

  /** What it is, as in: it follows from {@code a source of wrong volts}. */
  public String words() {
    return words;
  }
}
