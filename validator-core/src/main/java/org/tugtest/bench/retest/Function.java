package org.tugtest.bench.retest;

import java.util.List;

/**
 * Something of a device that is tried again.
 *
 * @param element {@code LAMP.bulb}
 * @param why the touched wires on its way, or the touched thing that switches it
 * @param states in which it is meant to work; empty: no state tells
 */
public record Function(String element, List<String> why, List<String> states) {
  public Function {
    why = List.copyOf(why);
    states = List.copyOf(states);
  }
}
