package org.tugtest.protect;

/** Which of the currents that a fault may draw is wanted. */
public enum FaultCorner {
  /**
   * The least: the least open volts of any lasting state, batteries alone where there is one,
   * conductors at their class temperature, joints at twice their figure (common practice: worn).
   */
  LEAST,
  /**
   * The greatest: the greatest open volts, all sources, conductors at 20 °C, joints without
   * resistance.
   */
  GREATEST
}
