package org.tugtest.text;

/**
 * Where each thing of a harness is written. Things are named by place strings, as waivers and
 * findings write them: {@code wires/W1}, {@code connectors/R1}, {@code connectors/R1:3}, {@code
 * devices/ECU.supply}, {@code segments/s1}, {@code nodes/n1}, {@code parts/wires/w1.0}, {@code
 * fitted/FB.f1}, {@code looms/front}, {@code waivers/x}, {@code files/PATH}, {@code harness} (the
 * root file).
 */
public interface Places {
  /**
   * The place of a thing: its entry in the map of ids, or the nearest thing around it that is
   * written (a cavity without an entry of its own: its connector; a pin: its device; anything not
   * written at all: the first character of the root file).
   */
  default Place of(String thing) {
    return of(thing, new String[0]);
  }

  /**
   * The place of a value inside a thing, by the names that lead to it ({@code "mates"}, or {@code
   * "elements", "f1", "a"}); where it is not written, the place of what is nearest around it.
   */
  Place of(String thing, String... names);
}
